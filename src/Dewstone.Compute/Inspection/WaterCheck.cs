using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Checks where the water went: doses the pores refused, and water at the edge of the computed window.</summary>
public static class WaterCheck
{
    /// <summary>Refused share of all water below which nothing is said, 1: a thousandth.</summary>
    private const double RefusedWorthSaying = 1e-3;

    /// <summary>Water/cement that counts as water at the edge, 1: a twentieth of what sets a lean mix; less cannot move on.</summary>
    private const double WetWaterCement = 0.01;

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

        int wet = WetEdgeCells(lattice, moisture);
        if (wet > 0)
        {
            findings.Add(WettingFindings.WindowTouched.At(
                $"Water reached {wet} of the outermost cells around the unit, where the bin goes on.",
                "Move the unit away from the last needle positions, or use a larger bin.",
                new KeyPath(DescriptionKind.Unit, "box")));
        }

        return findings;
    }

    private static Diagnostic Refused(UnitPlacement placement, Lattice lattice, MoistureResult moisture)
    {
        RefusedDose worst = default;
        foreach (RefusedDose dose in moisture.Refused)
        {
            worst = dose.CubicMetres > worst.CubicMetres ? dose : worst;
        }

        int i = worst.Index % lattice.Columns;
        int j = worst.Index / lattice.Columns % lattice.Rows;
        int k = worst.Index / (lattice.Columns * lattice.Rows);
        Diagnostic finding = WettingFindings.WaterRefused.At(
            $"The bed did not take {moisture.RefusedCubicMetres * 1e6:0.#} mL of {moisture.InjectedCubicMetres * 1e6:0.#} mL, at {moisture.Refused.Count} positions; the most in layer {k + 1}.",
            "Lower the dose or the needle's flow, or use a mix with more pore space.",
            new KeyPath(DescriptionKind.Printer, "needle.flow"));
        return finding with { Where = placement.ToUnit(lattice.Tip(i, j, k)) };
    }

    private static int WetEdgeCells(Lattice lattice, MoistureResult moisture)
    {
        CellGrid grid = moisture.Grid;
        // A side is a bin wall when less than half a cell of bed lies beyond it.
        double near = grid.CellMetres / 2.0;
        bool west = grid.Origin.X > near;
        bool south = grid.Origin.Y > near;
        bool east = lattice.BinXMetres - (grid.Origin.X + grid.Nx * grid.CellMetres) > near;
        bool north = lattice.BinYMetres - (grid.Origin.Y + grid.Ny * grid.CellMetres) > near;
        double wet = WetWaterCement * moisture.BinderKilogramsPerCubicMetre / moisture.LiquidKilogramsPerCubicMetre;
        int count = 0;
        for (int z = 0; z < grid.Nz; z++)
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                ReadOnlySpan<float> row = moisture.VolumetricWaterContent.AsSpan((z * grid.Ny + y) * grid.Nx, grid.Nx);
                if ((south && y == 0) || (north && y == grid.Ny - 1))
                {
                    count += CountAbove(row, wet);
                    continue;
                }

                count += west && row[0] > wet ? 1 : 0;
                count += east && row[^1] > wet ? 1 : 0;
            }
        }

        return count;
    }

    private static int CountAbove(ReadOnlySpan<float> row, double least)
    {
        int count = 0;
        foreach (float content in row)
        {
            count += content > least ? 1 : 0;
        }

        return count;
    }
}
