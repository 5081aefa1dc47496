using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Finds roundings, blends and reliefs that their bodies cannot bear.</summary>
internal static class RoundingCheck
{
    private const double Grain = 1e-6;

    /// <summary>Checks the radii and the relief.</summary>
    /// <param name="unit">The description.</param>
    /// <param name="pitch">Distance between needle positions, metres.</param>
    /// <param name="findings">Where findings go.</param>
    public static void Check(ReefUnit unit, double pitch, DiagnosticBag findings)
    {
        Rounding("the outer box", unit.Rounding, Smallest(unit.OuterBox), UnitKeys.Top("rounding"), findings);
        for (int i = 0; i < unit.Tunnels.Count; i++) { Tunnel(unit, i, findings); }
        for (int i = 0; i < unit.Cavities.Count; i++)
        {
            KeyPath key = UnitKeys.Cavity(i);
            if (unit.Cavities[i] is FormedCavity formed)
            {
                Block($"the cavity \"{formed.Name}\"", formed.Form, key, findings);
                Blend(unit, $"the cavity \"{formed.Name}\"", Narrowest(formed.Form), findings);
            }
            else if (unit.Cavities[i] is ScatteredCavities scatter)
            {
                Blend(unit, $"the scatter \"{scatter.Name}\"", scatter.LeastDiameter.Metres, findings);
            }
        }
        for (int i = 0; i < unit.Keep.Count; i++) { Block($"the keep zone \"{unit.Keep[i].Name}\"", unit.Keep[i].Form, UnitKeys.Keep(i), findings); }
        if (unit.Relief is Relief relief) { Waves(relief, pitch, findings); }
    }

    private static void Tunnel(ReefUnit unit, int index, DiagnosticBag findings)
    {
        string says = $"the tunnel \"{unit.Tunnels[index].Name}\"";
        if (unit.Tunnels[index].Section is RectangularSection r)
        {
            double smaller = Math.Min(r.Width.Metres, r.Height.Metres);
            Rounding(says, r.Rounding, smaller, UnitKeys.Tunnel(index).Key("section").Key("rounding"), findings);
            Blend(unit, says, smaller, findings);
        }
        else if (unit.Tunnels[index].Section is RoundSection round)
        {
            Blend(unit, says, round.Diameter.Metres, findings);
        }
    }

    private static void Block(string says, SolidForm form, KeyPath key, DiagnosticBag findings)
    {
        if (form is BlockForm block) { Rounding(says, block.Rounding, Smallest(block.Size), key.Key("block").Key("rounding"), findings); }
    }

    private static double Smallest(Size3 size) => Math.Min(size.X, Math.Min(size.Y, size.Z));

    private static double Narrowest(SolidForm form) => form switch
    {
        SphereForm sphere => sphere.Diameter.Metres,
        EllipsoidForm ellipsoid => Smallest(ellipsoid.Size),
        BlockForm block => Smallest(block.Size),
        _ => double.PositiveInfinity,
    };

    private static void Rounding(string says, Length rounding, double smallest, KeyPath key, DiagnosticBag findings)
    {
        if (rounding.Metres <= smallest / 2.0 + Grain) { return; }
        findings.Add(ShapeFindings.RoundingTooLarge.At(
            $"{says} has a rounding of {UnitKeys.Millimetres(rounding.Metres)} but a smallest edge of {UnitKeys.Millimetres(smallest)}",
            $"make the rounding at most {UnitKeys.Millimetres(smallest / 2.0)}",
            key));
    }

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
        if (relief.Amplitude.Metres > relief.ShortestLength.Metres / 2.0 + Grain)
        {
            findings.Add(ShapeFindings.ReliefTooSteep.At(
                $"the relief is {UnitKeys.Millimetres(relief.Amplitude.Metres)} deep with waves as short as {UnitKeys.Millimetres(relief.ShortestLength.Metres)}",
                $"make the amplitude at most {UnitKeys.Millimetres(relief.ShortestLength.Metres / 2.0)}, or the waves longer",
                UnitKeys.Top("relief").Key("amplitude")));
        }
        if (relief.ShortestLength.Metres < 2.0 * pitch - Grain)
        {
            findings.Add(ShapeFindings.ReliefTooFine.At(
                $"waves of {UnitKeys.Millimetres(relief.ShortestLength.Metres)} are under two pitches ({UnitKeys.Millimetres(2.0 * pitch)}): they come out weaker or not at all",
                "nothing, if the longer waves matter; else lengthen the shortest to two pitches",
                UnitKeys.Top("relief").Key("length")));
        }
    }
}
