using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Finds blends that openings cannot bear, and reliefs too steep or too fine.</summary>
internal static class BlendCheck
{
    // The grain of lengths in files, so that "exactly half" does not fail by rounding.
    private const double Grain = 1e-6;

    /// <summary>Checks the blend and the relief.</summary>
    /// <param name="unit">The description.</param>
    /// <param name="pitch">Distance between needle positions, metres.</param>
    /// <param name="findings">Where findings go.</param>
    public static void Check(ReefUnit unit, double pitch, DiagnosticBag findings)
    {
        foreach (Tunnel tunnel in unit.Tunnels) { Blend(unit, $"the tunnel \"{tunnel.Name}\"", Narrowest(tunnel.Section), findings); }
        foreach (Cavity cavity in unit.Cavities)
        {
            if (cavity is FormedCavity formed) { Blend(unit, $"the cavity \"{formed.Name}\"", Narrowest(formed.Form), findings); }
            else if (cavity is ScatteredCavities scatter) { Blend(unit, $"the scatter \"{scatter.Name}\"", scatter.LeastDiameter.Metres, findings); }
        }
        if (unit.Relief is Relief relief) { Waves(relief, pitch, findings); }
    }

    private static double Narrowest(Section section) => section switch
    {
        RoundSection round => round.Diameter.Metres,
        RectangularSection r => Math.Min(r.Width.Metres, r.Height.Metres),
        _ => double.PositiveInfinity,
    };

    private static double Narrowest(SolidForm form) => form switch
    {
        SphereForm sphere => sphere.Diameter.Metres,
        EllipsoidForm ellipsoid => Smallest(ellipsoid.Size),
        BlockForm block => Smallest(block.Size),
        _ => double.PositiveInfinity,
    };

    private static double Smallest(Size3 size) => Math.Min(size.X, Math.Min(size.Y, size.Z));

    private static void Blend(ReefUnit unit, string says, double narrowest, DiagnosticBag findings)
    {
        if (unit.Blend.Metres <= narrowest / 2.0 + Grain) { return; }
        findings.Add(ShapeFindings.BlendTooLarge.At(
            $"the blend of {UnitKeys.Millimetres(unit.Blend.Metres)} is more than half of the narrowest side of {says} ({UnitKeys.Millimetres(narrowest)})",
            $"make the blend at most {UnitKeys.Millimetres(narrowest / 2.0)}, or the opening wider",
            UnitKeys.Top("blend")));
    }

    private static void Waves(Relief relief, double pitch, DiagnosticBag findings)
    {
        double amplitude = relief.Amplitude.Metres, shortest = relief.ShortestLength.Metres;
        if (amplitude > shortest / 2.0 + Grain)
        {
            findings.Add(ShapeFindings.ReliefTooSteep.At(
                $"the relief is {UnitKeys.Millimetres(amplitude)} deep with waves as short as {UnitKeys.Millimetres(shortest)}",
                $"make the amplitude at most {UnitKeys.Millimetres(shortest / 2.0)}, or the waves longer",
                UnitKeys.Top("relief").Key("amplitude")));
        }
        if (shortest < 2.0 * pitch - Grain)
        {
            findings.Add(ShapeFindings.ReliefTooFine.At(
                $"waves of {UnitKeys.Millimetres(shortest)} are under two pitches ({UnitKeys.Millimetres(2.0 * pitch)}): they come out weaker or not at all",
                "nothing, if the longer waves matter; else lengthen the shortest to two pitches",
                UnitKeys.Top("relief").Key("length")));
        }
    }
}
