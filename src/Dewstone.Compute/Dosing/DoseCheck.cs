using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Says where doses differ from what was wanted, and why; for any dosing rule.</summary>
public static class DoseCheck
{
    /// <summary>Needles named in one finding; more are counted.</summary>
    private const int NeedlesNamed = 8;

    private static readonly KeyPath BandKey = new(DescriptionKind.Unit, "require.water_cement");

    /// <summary>Compares wanted with rounded doses.</summary>
    /// <param name="job">Unit, mix, printer and needles.</param>
    /// <param name="rounder">The rounder used.</param>
    /// <param name="nominal">Dose of a full voxel.</param>
    /// <param name="wantedMillilitres">Wanted volume, mL; index order of the lattice.</param>
    /// <param name="doses">The doses as rounded.</param>
    /// <returns>Findings DW3001 to DW3006, DW4008 and DW4009, in order.</returns>
    public static IReadOnlyList<Diagnostic> Check(
        JobDescription job, DoseRounder rounder, NominalDose nominal, ReadOnlySpan<double> wantedMillilitres, DosePlan doses)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(rounder);
        ArgumentNullException.ThrowIfNull(doses);
        var findings = new List<Diagnostic>();
        CheckSaturation(job, findings);
        CheckLean(nominal, findings);
        CheckLimits(rounder, wantedMillilitres, doses, findings);
        CheckNeedles(rounder, wantedMillilitres, findings);
        if (doses.TotalCentiMillilitres == 0)
        {
            findings.Add(WettingFindings.NoDoses.At(
                "no position of the job gets any water",
                "check the shape: openings may have removed all of it, or it is smaller than a pitch",
                new KeyPath(DescriptionKind.Unit, "box")));
        }

        return findings;
    }

    // The ratio at full pores, porosity x liquid density / (loose density x binder share), follows from the densities alone (exact).
    private static void CheckSaturation(JobDescription job, List<Diagnostic> findings)
    {
        double saturated = job.Mix.Porosity(job.LooseDensity) * job.Mix.Liquid.Density.KilogramsPerCubicMetre
            / job.Mix.BinderKilogramsPerCubicMetre(job.LooseDensity);
        if (job.Unit.Require.WaterCement is { } band && band.Min > saturated)
        {
            findings.Add(WettingFindings.AboveSaturation.At(
                $"water/cement of at least {band.Min:0.###} is asked for; with all pores full this bed holds {saturated:0.###}",
                $"ask for less than {saturated:0.##}, or use a mix with less binder or more pore space",
                BandKey.Key("min")));
        }
    }

    private static void CheckLean(NominalDose nominal, List<Diagnostic> findings)
    {
        double closing = nominal.ClosingMillilitres;
        if (nominal.Millilitres < closing)
        {
            double closingWaterCement = nominal.WaterCement * closing / nominal.Millilitres;
            findings.Add(WettingFindings.LeanDose.At(
                $"the band keeps a full voxel at water/cement {nominal.WaterCement:0.###} ({nominal.Millilitres:0.#} mL); pockets between needles close at {closing:0.#} mL",
                $"raise water_cement.max to {closingWaterCement + NominalDose.BandMargin:0.##} or more, or look at the deep pockets in the plates before printing",
                BandKey.Key("max")));
        }
    }

    private static void CheckLimits(DoseRounder rounder, ReadOnlySpan<double> wanted, DosePlan doses, List<Diagnostic> findings)
    {
        DoseLimits limits = rounder.Limits;
        int aboveMost = 0, abovePores = 0, dropped = 0, raised = 0;
        double shortMillilitres = 0.0, droppedMillilitres = 0.0, raisedMillilitres = 0.0, largest = 0.0;
        for (int index = 0; index < wanted.Length; index++)
        {
            double want = wanted[index];
            if (want <= 0.0 || rounder.IsBlocked(index))
            {
                continue;
            }

            double given = doses.Millilitres(index);
            largest = Math.Max(largest, want);
            if (want > limits.UpperMillilitres)
            {
                shortMillilitres += want - given;
                aboveMost += want > limits.MostMillilitres ? 1 : 0;
                abovePores += want > limits.PoreMillilitres ? 1 : 0;
            }
            else if (want < limits.LeastMillilitres || given <= 0.0)
            {
                dropped += given > 0.0 ? 0 : 1;
                droppedMillilitres += given > 0.0 ? 0.0 : want;
                raised += given > 0.0 ? 1 : 0;
                raisedMillilitres += given > 0.0 ? given - want : 0.0;
            }
        }

        if (aboveMost > 0)
        {
            findings.Add(WettingFindings.AboveMost.At(
                $"{aboveMost} voxels want up to {largest:0.##} mL; a needle gives at most {limits.MostMillilitres:0.##} mL ({shortMillilitres:0.#} mL missing in all)",
                "use a smaller pitch or layer height, a lower water_cement, or raise needle.most",
                new KeyPath(DescriptionKind.Printer, "needle.most")));
        }

        if (abovePores > 0)
        {
            findings.Add(WettingFindings.AbovePores.At(
                $"{abovePores} voxels want up to {largest:0.##} mL; densely packed, the pores of a voxel hold {limits.PoreMillilitres:0.##} mL ({shortMillilitres:0.#} mL missing in all)",
                "ask for a lower water_cement, or use a mix with more pore space",
                BandKey));
        }

        if (dropped + raised > 0)
        {
            findings.Add(WettingFindings.BelowLeast.At(
                $"{dropped + raised} voxels want less than a needle gives (least {limits.LeastMillilitres:0.##} mL): {dropped} get none ({droppedMillilitres:0.#} mL left out), {raised} get the least ({raisedMillilitres:0.#} mL added)",
                "nothing to do; a lower needle.least gives finer edges",
                new KeyPath(DescriptionKind.Printer, "needle.least")));
        }
    }

    private static void CheckNeedles(DoseRounder rounder, ReadOnlySpan<double> wanted, List<Diagnostic> findings)
    {
        var blocked = new SortedDictionary<(int Row, int Column), int>();
        var limited = new SortedDictionary<(int Row, int Column), int>();
        for (int index = 0; index < wanted.Length; index++)
        {
            if (wanted[index] > 0.0 && rounder.Condition(index) is not NeedleCondition.Ok and var condition)
            {
                (int column, int row) = rounder.Needle(index);
                SortedDictionary<(int Row, int Column), int> list = condition == NeedleCondition.Blocked ? blocked : limited;
                list[(row, column)] = list.GetValueOrDefault((row, column)) + 1;
            }
        }

        var key = new KeyPath(DescriptionKind.Printer, "needles");
        if (blocked.Count > 0)
        {
            findings.Add(PrinterFindings.BlockedNeedles.At(
                $"blocked needles over the unit (column,row): {Named(blocked)}; their neighbours give more in their place",
                "clear and calibrate them, or turn or shift the unit so that they do not matter", key));
        }

        if (limited.Count > 0)
        {
            findings.Add(PrinterFindings.LimitedNeedles.At(
                $"limited needles over the unit (column,row): {Named(limited)}; used as calibrated",
                "calibrate them before a unit that matters", key));
        }
    }

    private static string Named(SortedDictionary<(int Row, int Column), int> needles)
    {
        string named = string.Join("; ", needles.Take(NeedlesNamed).Select(n => $"{n.Key.Column},{n.Key.Row} waters {n.Value} voxels"));
        return needles.Count > NeedlesNamed ? $"{named}; and {needles.Count - NeedlesNamed} more" : named;
    }
}
