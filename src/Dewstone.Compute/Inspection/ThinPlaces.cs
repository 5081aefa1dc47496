using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Places of the predicted solid thinner than a wall.</summary>
/// <remarks>
/// The solid is opened by a ball of the wall's diameter: first the cells in which the ball's centre can stand, by the distance to the surface between
/// the cells and the most it gets within a cell (<see cref="RidgePeak"/>), then what the ball covers from there. A neck is where one piece of the solid
/// holds together what the opened solid does not; a thin part lies more than half a wall from the opened solid. Thickness reads within a quarter of a
/// cell (slabs in random directions, by test), and so much is allowed. Pieces and thin parts of the size of crumbs, the
/// scallops and lips between doses, are passed over.
/// </remarks>
internal static class ThinPlaces
{
    /// <summary>How far a thickness may read off, cells.</summary>
    public const double ReadingCells = 0.25;

    /// <summary>Cells a thin part has at least; fewer are the grid's own stair.</summary>
    private const int LeastCells = 8;

    private const int CellsTogether = 1 << 14;

    /// <summary>Finds them.</summary>
    /// <param name="solid">Predicted solid.</param>
    /// <param name="wallMetres">Wall, metres.</param>
    /// <param name="crumbCubicMetres">Volume below which a piece is a crumb, cubic metres.</param>
    /// <returns>The places, thinnest first; none when the wall holds.</returns>
    public static IReadOnlyList<ThinPlace> Of(PredictedSolid solid, double wallMetres, double crumbCubicMetres)
    {
        SolidField field = solid.Field;
        double half = field.Size.HalfMeanEdge, reading = ReadingCells * 2.0 * half, radius = 0.5 * wallMetres;
        float most = (float)Square(wallMetres + half);
        byte[] centres = Centres(field, radius - 0.5 * reading, solid.Threads);
        float[] squared = DistanceTransform.SquaredWithin(
            centres, field.Cells, field.Size, MathF.BitIncrement(most), Phase.Set, OutsideCells.Ignored, solid.Threads);
        float covered = (float)Square(radius + half);
        byte[] opened = new byte[squared.Length], thin = new byte[squared.Length];
        Chunks.Run(squared.Length, CellsTogether, solid.Threads, (first, end) =>
        {
            for (int cell = first; cell < end; cell++)
            {
                int piece = solid.Pieces.Labels[cell];
                if (piece > 0 && solid.Pieces.Pieces[piece - 1].Cells * field.Grid.CellCubicMetres >= crumbCubicMetres)
                {
                    opened[cell] = squared[cell] <= covered ? (byte)1 : (byte)0;
                    thin[cell] = squared[cell] > most ? (byte)1 : (byte)0;
                }
            }
        });
        List<ThinPlace> places = [.. HangingPieces(solid, opened), .. ThinParts(solid, thin, crumbCubicMetres)];
        places.RemoveAll(place => place.ThicknessMetres >= wallMetres - reading);
        return [.. places.OrderBy(place => place.ThicknessMetres)];
    }

    // 1 where the centre of a ball can stand somewhere in the cell.
    private static byte[] Centres(SolidField field, double radius, Parallelism threads)
    {
        byte[] centres = new byte[field.Distances.Length];
        float least = (float)radius, within = (float)(Math.Sqrt(3.0) * field.Size.HalfLongerEdge);
        Chunks.Run(centres.Length, CellsTogether, threads, (first, end) =>
        {
            for (int cell = first; cell < end; cell++)
            {
                float depth = -field.Distances[cell];
                bool fits = depth >= least
                    || (depth > 0f && depth > least - within && depth + RidgePeak.Gain(field.Distances, -1f, field.Cells, field.Size, cell) >= least);
                centres[cell] = fits ? (byte)1 : (byte)0;
            }
        });
        return centres;
    }

    private static IEnumerable<ThinPlace> HangingPieces(PredictedSolid solid, byte[] opened)
    {
        SolidField field = solid.Field;
        ComponentMap regions = Components.Label(opened, field.Cells, Phase.Set, Connectivity.FacesEdgesCorners, solid.Threads);
        HashSet<int> hosts = [.. regions.Pieces.Select(region => solid.Pieces.Labels[region.FirstCell])];
        if (hosts.Count == regions.Pieces.Count)
        {
            return [];
        }

        float[] depths = new float[field.Distances.Length];
        for (int cell = 0; cell < depths.Length; cell++)
        {
            depths[cell] = solid.Moisture.Hardened[cell] != 0 ? Math.Max(float.Epsilon, -field.Distances[cell]) : 0f;
        }

        int[] necks = Necks.Of(depths, regions, field.Cells);
        SolidPiece?[] pieces = solid.Describe(regions, [.. necks.Select(neck => neck >= 0)]);
        return pieces.Zip(necks).Where(pair => pair.First is not null).Select(pair => new ThinPlace(
            true, Thickness(field, pair.Second), solid.ToUnit(pair.Second), pair.First!));
    }

    private static IEnumerable<ThinPlace> ThinParts(PredictedSolid solid, byte[] thin, double crumb)
    {
        SolidField field = solid.Field;
        ComponentMap parts = Components.Label(thin, field.Cells, Phase.Set, Connectivity.FacesEdgesCorners, solid.Threads);
        SolidPiece?[] pieces = solid.Describe(
            parts, [.. parts.Pieces.Select(part => part.Cells >= LeastCells && part.Cells * field.Grid.CellCubicMetres >= crumb)]);
        int[] deepest = new int[pieces.Length];
        Array.Fill(deepest, -1);
        for (int cell = 0; cell < thin.Length && pieces.Length > 0; cell++)
        {
            int part = parts.Labels[cell] - 1;
            if (part >= 0 && (deepest[part] < 0 || field.Distances[cell] < field.Distances[deepest[part]]))
            {
                deepest[part] = cell;
            }
        }

        return pieces.Zip(deepest).Where(pair => pair.First is not null).Select(pair => new ThinPlace(
            false, Thickness(field, pair.Second), solid.ToUnit(pair.Second), pair.First!));
    }

    private static double Thickness(SolidField field, int cell) => 2.0 * Math.Max(
        0f, -field.Distances[cell] + RidgePeak.Gain(field.Distances, -1f, field.Cells, field.Size, cell));

    private static double Square(double x) => x * x;
}
