using System.Text.Json;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>The totals of a job.</summary>
internal static class TotalsJson
{
    private const double MillilitresPerCubicMetre = 1e6;

    /// <summary>Writes the totals into the object that is open. Doses, water and times are exact; figures have six significant digits.</summary>
    public static void Write(Utf8JsonWriter json, CompiledJob job)
    {
        json.WriteNumber("layers", job.Lattice.Layers);
        json.WriteNumber("under_layers", job.Lattice.UnderLayers);
        json.WriteNumber("layers_with_water", LayersWithWater(job.Doses));
        json.WriteNumber("doses", job.Doses.CentiMillilitres.Count(dose => dose > 0));
        json.Number("water_ml", job.Doses.TotalCentiMillilitres / 100.0);
        json.Number("flush_ml", FlushCentiMillilitres(job.Timeline) / 100.0);
        json.Figure("refused_ml", job.Moisture.RefusedCubicMetres * MillilitresPerCubicMetre);
        json.WriteNumber("sequence_steps", job.Timeline.Steps.Count);
        json.Number("printing_s", job.Timeline.TotalMilliseconds / 1000.0);
        json.Figure("target_m3", job.Solid.TargetCubicMetres);
        json.Figure("hardened_m3", job.Solid.HardenedCubicMetres);
        json.Figure("shape_match", job.Solid.ShapeMatch);
        json.Figure("mean_water_cement", job.Solid.MeanWaterCement);
        json.Figure("largest_water_cement", job.Solid.LargestWaterCement);
        json.Figure("share_in_band", job.Solid.ShareInBand);
        json.Figure("spread_kg", job.Estimate.SpreadKilograms);
        json.Figure("hardened_dry_kg", job.Estimate.HardenedDryKilograms);
        json.Figure("fresh_kg", job.Estimate.FreshKilograms);
        json.Figure("lift_kg", job.Estimate.LiftKilograms);
    }

    private static int LayersWithWater(DosePlan doses)
    {
        int perLayer = doses.Lattice.Columns * doses.Lattice.Rows;
        return Enumerable.Range(0, doses.Lattice.Layers)
            .Count(k => doses.CentiMillilitres.AsSpan(k * perLayer, perLayer).ContainsAnyExcept(0));
    }

    private static long FlushCentiMillilitres(Timeline timeline) =>
        timeline.Steps.Where(step => step.Action == MachineAction.Flush).Sum(step => step.CentiMillilitres);
}
