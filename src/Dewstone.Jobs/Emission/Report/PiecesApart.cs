using System.Numerics;
using System.Runtime.InteropServices;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>
/// Finds the skins of pieces that hang on nothing. A thinned surface knows no cells any more: its closed skins are told apart by their corners, and
/// each piece takes the skin around its centre whose size is nearest to its own.
/// </summary>
internal static class PiecesApart
{
    /// <summary>Marks the corners of such pieces.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="pieces">The pieces, unit frame.</param>
    /// <returns>True on a piece apart, by corner; empty when there are no pieces.</returns>
    public static bool[] Of(UnitSurface surface, IReadOnlyList<SolidPiece> pieces)
    {
        if (pieces.Count == 0)
        {
            return [];
        }

        int[] skins = Skins(surface);
        Dictionary<int, (Vector3 Low, Vector3 High)> boxes = Boxes(surface, skins);
        HashSet<int> apart = [];
        foreach (SolidPiece piece in pieces)
        {
            Vector3 centre = new((float)piece.Centre.X, (float)piece.Centre.Y, (float)piece.Centre.Z);
            Vector3 size = new((float)piece.Size.X, (float)piece.Size.Y, (float)piece.Size.Z);
            (int skin, _) = boxes.Where(box => Vector3.Clamp(centre, box.Value.Low, box.Value.High) == centre)
                .Select(box => (box.Key, Off: Vector3.Distance(box.Value.High - box.Value.Low, size)))
                .OrderBy(box => box.Off).ThenBy(box => box.Key).FirstOrDefault((-1, 0f));
            apart.Add(skin);
        }

        return Array.ConvertAll(skins, apart.Contains);
    }

    // The lowest corner of each corner's skin.
    private static int[] Skins(UnitSurface surface)
    {
        int[] towards = [.. Enumerable.Range(0, surface.Corners)];
        int Root(int corner)
        {
            while (towards[corner] != corner)
            {
                corner = towards[corner] = towards[towards[corner]];
            }

            return corner;
        }

        for (int i = 0; i < surface.Triangles.Length; i++)
        {
            int a = Root(surface.Triangles[i]), b = Root(surface.Triangles[i - i % 3]);
            towards[Math.Max(a, b)] = Math.Min(a, b);
        }

        return [.. Enumerable.Range(0, surface.Corners).Select(Root)];
    }

    private static Dictionary<int, (Vector3 Low, Vector3 High)> Boxes(UnitSurface surface, int[] skins)
    {
        ReadOnlySpan<Vector3> corners = MemoryMarshal.Cast<float, Vector3>(surface.Positions);
        Dictionary<int, (Vector3 Low, Vector3 High)> boxes = [];
        for (int i = 0; i < corners.Length; i++)
        {
            ref (Vector3 Low, Vector3 High) box = ref CollectionsMarshal.GetValueRefOrAddDefault(boxes, skins[i], out bool known);
            box = known ? (Vector3.Min(box.Low, corners[i]), Vector3.Max(box.High, corners[i])) : (corners[i], corners[i]);
        }

        return boxes;
    }
}
