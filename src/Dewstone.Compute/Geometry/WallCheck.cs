using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Finds thin walls between openings that do not meet, and between an opening and a face it does not break.</summary>
internal static class WallCheck
{
    private static readonly string[] FaceNames = ["the west face", "the east face", "the south face", "the north face", "the bottom face",
        "the top face"];

    /// <summary>Checks the walls; of several between the same two features the thinnest is told.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="gaps">Its gaps.</param>
    /// <param name="least">Least thickness, metres.</param>
    /// <param name="findings">Where findings go.</param>
    public static void Check(ReefShape shape, OpeningGaps gaps, double least, DiagnosticBag findings)
    {
        Dictionary<(KeyPath, KeyPath?), Wall> thinnest = [];
        List<(KeyPath, KeyPath?)> order = [];
        for (int i = 0; i < shape.Named.Count; i++)
        {
            ShapeOpening opening = shape.Named[i];
            for (int face = 0; face < 6; face++)
            {
                (double gap, Point3 middle) = gaps.Faces[i][face];
                Take(new Wall(opening, FaceNames[face], gap, middle), (UnitKeys.Of(opening), null));
            }
            for (int j = i + 1; j < shape.Named.Count; j++)
            {
                (double gap, Point3 middle) = gaps.Between(i, j);
                Take(new Wall(opening, UnitKeys.Says(shape.Named[j]), gap, middle), (UnitKeys.Of(opening), UnitKeys.Of(shape.Named[j])));
            }
        }
        foreach ((KeyPath, KeyPath?) pair in order) { findings.Add(Tell(thinnest[pair], pair.Item1, pair.Item2, least)); }

        void Take(Wall wall, (KeyPath, KeyPath?) pair)
        {
            if (wall.Metres < OpeningGaps.Meeting || wall.Metres >= least - 1e-6) { return; }
            if (shape.Body.Plain(wall.Middle.X, wall.Middle.Y, wall.Middle.Z) >= 0.0) { return; }
            if (!thinnest.TryGetValue(pair, out Wall? known)) { order.Add(pair); }
            if (known is null || wall.Metres < known.Metres) { thinnest[pair] = wall; }
        }
    }

    private static Diagnostic Tell(Wall wall, KeyPath key, KeyPath? other, double least) =>
        ShapeFindings.WallUnderTwoPitches.At(
            $"the wall between {UnitKeys.Says(wall.Opening)} and {wall.Other} is {UnitKeys.Millimetres(wall.Metres)} thick, under two pitches ({UnitKeys.Millimetres(least)})",
            "move them apart or make one smaller",
            key) with
        {
            Where = wall.Middle,
            Related = other is null || other == key ? [] : [new RelatedPlace(null, other, "the other side of the wall")],
        };

    private sealed record Wall(ShapeOpening Opening, string Other, double Metres, Point3 Middle);
}
