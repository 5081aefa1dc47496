using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Holds the figures of the predicted solid against what the description requires (<see cref="Inspector"/> judges the rest), and against the printer's lift.</summary>
public static class RequirementCheck
{
    private static readonly KeyPath Require = new(DescriptionKind.Unit, "require");

    /// <summary>Judges the requirements.</summary>
    /// <param name="job">Unit and printer.</param>
    /// <param name="solid">Figures of the predicted solid.</param>
    /// <param name="estimate">Its masses.</param>
    /// <returns>Results, and findings DW3009, DW3011, DW3012, DW5001 and DW5002.</returns>
    public static RequirementReport Check(JobDescription job, SolidSummary solid, Estimate estimate)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(solid);
        ArgumentNullException.ThrowIfNull(estimate);
        var results = new List<RequirementResult>();
        var findings = new List<Diagnostic>();
        Requirements require = job.Unit.Require;
        if (solid.HardenedCubicMetres <= 0.0)
        {
            findings.Add(WettingFindings.NothingHardened.At(
                $"no cell reaches water/cement {job.Mix.Hardening.WaterCement:0.###}, where the mix sets",
                "check hardening.water_cement, the wetting law and the doses",
                new KeyPath(DescriptionKind.Mix, "hardening.water_cement")));
        }

        JudgeMass(require, estimate, results, findings);
        JudgeWaterCement(require, solid, results, findings);
        JudgeShapeMatch(require, solid, results, findings);
        if (job.Printer.MaxLift is { } lift && estimate.LiftKilograms > lift.Kilograms)
        {
            findings.Add(StrengthFindings.LiftAbove.At(
                $"{estimate.LiftKilograms:0.#} kg on the hook at dig-out; the yard lifts {lift.Kilograms:0.#} kg",
                "open the unit further, make it smaller, or print it where a stronger lift stands",
                new KeyPath(DescriptionKind.Printer, "lift.max_mass")));
        }

        return new RequirementReport(results, findings);
    }

    private static void JudgeMass(Requirements require, Estimate estimate, List<RequirementResult> results, List<Diagnostic> findings)
    {
        if (require.MaxMass is not { } most)
        {
            return;
        }

        RequirementResult result = Add(
            results, RequirementIds.MaxMass, Require.Key("mass.max"), "mass on the hook at dig-out", "<=", most.Kilograms, estimate.LiftKilograms, "kg");
        if (!result.Met)
        {
            findings.Add(StrengthFindings.MassAbove.At(
                $"{result.Value:0.#} kg on the hook at dig-out; at most {result.Limit:0.#} kg is required",
                "open the unit further, make it smaller, or raise mass.max if everything that lifts it can bear it", result.Key));
        }
    }

    private static void JudgeWaterCement(Requirements require, SolidSummary solid, List<RequirementResult> results, List<Diagnostic> findings)
    {
        if (require.WaterCement is not { } band || solid.ShareInBand is not { } share)
        {
            return;
        }

        RequirementResult result = Add(
            results, RequirementIds.WaterCementShare, Require.Key("water_cement.share"),
            "share of the hardened volume within the water/cement band", ">=", band.Share, share, "1");
        if (!result.Met)
        {
            findings.Add(WettingFindings.WaterCementOutside.At(
                $"{100.0 * share:0.#} % of the hardened volume has water/cement {band.Min:0.###} to {band.Max:0.###}; {100.0 * band.Share:0.#} % is required (mean {solid.MeanWaterCement:0.###}, largest {solid.LargestWaterCement:0.###})",
                "widen the band or lower the share if the design allows, or change pitch, mix or wall thickness", result.Key));
        }
    }

    private static void JudgeShapeMatch(Requirements require, SolidSummary solid, List<RequirementResult> results, List<Diagnostic> findings)
    {
        if (require.MinShapeMatch is not { } least)
        {
            return;
        }

        RequirementResult result = Add(
            results, RequirementIds.MinShapeMatch, Require.Key("shape_match.min"),
            "intersection over union of predicted and wanted solid", ">=", least, solid.ShapeMatch, "1");
        if (!result.Met)
        {
            findings.Add(WettingFindings.ShapeMatchBelow.At(
                $"predicted and wanted solid match by {solid.ShapeMatch:0.###} (intersection over union); {least:0.###} is required",
                "look at the plates for where it differs; finer pitch, thicker features or a lower shape_match", result.Key));
        }
    }

    private static RequirementResult Add(
        List<RequirementResult> results, string id, KeyPath key, string quantity, string op, double limit, double value, string unit)
    {
        var result = new RequirementResult { Id = id, Key = key, Quantity = quantity, Op = op, Limit = limit, Value = value, Unit = unit };
        results.Add(result);
        return result;
    }
}
