using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>A wall between two openings, or between an opening and a face it does not break.</summary>
/// <param name="Key">The opening in its description.</param>
/// <param name="Other">The other opening; null for a face.</param>
/// <param name="Says">Both sides for a message, e.g. <c>"drain" and the top face</c>.</param>
/// <param name="Metres">Thickness, metres.</param>
/// <param name="Middle">Middle of its thinnest place, unit frame, metres.</param>
/// <param name="Normal">Axis nearest to its normal there.</param>
internal sealed record ThinWall(KeyPath Key, KeyPath? Other, string Says, double Metres, Point3 Middle, Axis Normal)
{
    private const double Nearby = 1e-4;

    private static readonly string[] FaceNames = ["the west face", "the east face", "the south face", "the north face", "the bottom face",
        "the top face"];

    /// <summary>The walls thinner than a thickness; of several between the same two features the thinnest.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="gaps">Its gaps.</param>
    /// <param name="under">Thickness, metres.</param>
    /// <returns>In the order of the description.</returns>
    public static IReadOnlyList<ThinWall> Under(ReefShape shape, OpeningGaps gaps, double under)
    {
        Dictionary<(KeyPath, KeyPath?), int> known = [];
        List<ThinWall> walls = [];
        for (int i = 0; i < shape.Named.Count; i++)
        {
            ShapeOpening opening = shape.Named[i];
            for (int face = 0; face < 6; face++)
            {
                Take(gaps.Faces[i][face], i, FaceNames[face], null, (Axis)(face / 2));
            }
            for (int j = i + 1; j < shape.Named.Count; j++)
            {
                Take(gaps.Between(i, j), i, UnitKeys.Says(shape.Named[j]), UnitKeys.Of(shape.Named[j]), null);
            }
        }
        return walls;

        void Take((double Gap, Point3 Middle) gap, int first, string other, KeyPath? otherKey, Axis? normal)
        {
            if (gap.Gap < OpeningGaps.Meeting || gap.Gap >= under - 1e-6) { return; }
            if (shape.Body.Plain(gap.Middle.X, gap.Middle.Y, gap.Middle.Z) >= 0.0) { return; }
            KeyPath key = UnitKeys.Of(shape.Named[first]);
            bool seen = known.TryGetValue((key, otherKey), out int place);
            if (seen && gap.Gap >= walls[place].Metres) { return; }
            ThinWall wall = new(
                key, otherKey, $"{UnitKeys.Says(shape.Named[first])} and {other}", gap.Gap, gap.Middle, normal ?? Across(shape, first, gap.Middle));
            if (seen) { walls[place] = wall; }
            else
            {
                known[(key, otherKey)] = walls.Count;
                walls.Add(wall);
            }
        }
    }

    /// <summary>The other side, for findings about the wall.</summary>
    /// <returns>A related place; none for a face or the same feature.</returns>
    public IReadOnlyList<RelatedPlace> Related() => Other is null || Other == Key ? [] : [new RelatedPlace(null, Other, "the other side of the wall")];

    // The way in which the distance to the opening changes most.
    private static Axis Across(ReefShape shape, int opening, Point3 p)
    {
        double Slope(Point3 step) => Math.Abs(shape.OpeningDistance(opening, p + step) - shape.OpeningDistance(opening, p - step));
        double x = Slope(new Point3(Nearby, 0.0, 0.0)), y = Slope(new Point3(0.0, Nearby, 0.0)), z = Slope(new Point3(0.0, 0.0, Nearby));
        return z >= Math.Max(x, y) ? Axis.Z : x >= y ? Axis.X : Axis.Y;
    }
}
