using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Geometry;

/// <summary>Finds thin walls between openings that do not meet, and between an opening and a face it does not break.</summary>
internal static class WallCheck
{
    /// <summary>Checks the walls; of several between the same two features the thinnest is told.</summary>
    /// <param name="shape">The shape.</param>
    /// <param name="gaps">Its gaps.</param>
    /// <param name="least">Least thickness, metres.</param>
    /// <param name="findings">Where findings go.</param>
    public static void Check(ReefShape shape, OpeningGaps gaps, double least, DiagnosticBag findings)
    {
        foreach (ThinWall wall in ThinWall.Under(shape, gaps, least)) { findings.Add(Tell(wall, least)); }
    }

    private static Diagnostic Tell(ThinWall wall, double least) =>
        ShapeFindings.WallUnderTwoPitches.At(
            $"the wall between {wall.Says} is {UnitKeys.Millimetres(wall.Metres)} thick, under two pitches ({UnitKeys.Millimetres(least)})",
            "move them apart or make one smaller",
            wall.Key) with
        {
            Where = wall.Middle,
            Related = wall.Related(),
        };
}
