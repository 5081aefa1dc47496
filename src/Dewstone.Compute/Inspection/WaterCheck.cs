using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Checks where the water went: doses the pores refused, and water at the edge of the computed window.</summary>
public static class WaterCheck
{
    /// <summary>Refused share of all water below which nothing is said, 1: a thousandth.</summary>
    private const double RefusedWorthSaying = 1e-3;

    /// <summary>Checks the water of a job.</summary>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="moisture">What the water did.</param>
    /// <returns>Findings DW3007 and DW3008.</returns>
    public static IReadOnlyList<Diagnostic> Check(UnitPlacement placement, Lattice lattice, MoistureResult moisture)
    {
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(moisture);
        var findings = new List<Diagnostic>();
        if (moisture.RefusedCubicMetres > RefusedWorthSaying * moisture.InjectedCubicMetres)
        {
            findings.Add(Refused(placement, lattice, moisture));
        }

        if (moisture.TouchedWindowEdge)
        {
            findings.Add(WettingFindings.WindowTouched.At(
                "water reached the outermost cells around the unit, where the bin goes on",
                "move the unit away from the last needle positions, or use a larger bin",
                new KeyPath(DescriptionKind.Unit, "box")));
        }

        return findings;
    }

    private static Diagnostic Refused(UnitPlacement placement, Lattice lattice, MoistureResult moisture)
    {
        RefusedDose worst = moisture.Refused.MaxBy(dose => dose.CubicMetres)!;
        int i = worst.Index % lattice.Columns;
        int j = worst.Index / lattice.Columns % lattice.Rows;
        int k = worst.Index / (lattice.Columns * lattice.Rows);
        Diagnostic finding = WettingFindings.WaterRefused.At(
            $"the bed did not take {moisture.RefusedCubicMetres * 1e6:0.#} mL of {moisture.InjectedCubicMetres * 1e6:0.#} mL, at {moisture.Refused.Count} positions; the most in layer {k + 1}",
            "lower the dose or the needle's flow, or use a mix with more pore space",
            new KeyPath(DescriptionKind.Printer, "needle.flow"));
        return finding with { Where = placement.ToUnit(lattice.Tip(i, j, k)) };
    }
}
