using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>Writes <c>estimate.json</c>: materials, carbon, cost and time, figures to six significant digits, times of the sequence to the millisecond.</summary>
public static class EstimateEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "estimate.json";

    /// <summary>Name of the format.</summary>
    public const string Format = "dewstone-estimate";

    /// <summary>Version of the format; rises when a field goes or changes its meaning.</summary>
    public const int Version = 1;

    private const double LitresPerCubicMetre = 1000.0;

    /// <summary>The estimate of a job.</summary>
    /// <param name="estimate">Its figures.</param>
    /// <param name="dosing">How its doses were found; null for a bin, whose units bring theirs.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(Estimate estimate, DosingSummary? dosing)
    {
        ArgumentNullException.ThrowIfNull(estimate);
        return new EmittedFile(Path, CanonicalJson.Indented(json =>
        {
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            json.Object("mix_kg", () => Mix(json, estimate));
            json.Object("mass_kg", () => Masses(json, estimate));
            json.Object("water_l", () => Water(json, estimate));
            json.Objects("additives", estimate.AdditiveKilograms, additive =>
            {
                json.WriteString("name", additive.Name);
                json.Figure("kg", additive.Amount);
            });
            json.Figure("recycled_share", estimate.RecycledShare);
            json.Figure("saving_against_filled_box", estimate.SavingAgainstFilledBox);
            json.Figure("co2_kg", estimate.CarbonKilograms);
            json.Object("cost", () =>
            {
                json.Figure("amount", estimate.Cost);
                json.WriteString("currency", estimate.Currency);
            });
            json.Object("time_s", () => Times(json, estimate));
            json.ObjectOrNull("dosing", dosing, found => DosingJson.Write(json, found));
        }));
    }

    private static void Mix(Utf8JsonWriter json, Estimate estimate)
    {
        json.Figure("spread", estimate.SpreadKilograms);
        json.Figure("hardened", estimate.HardenedDryKilograms);
        json.Figure("reusable", estimate.ReusableKilograms);
        json.Figure("lost", estimate.LostKilograms);
        json.Figure("binder", estimate.BinderKilograms);
    }

    private static void Masses(Utf8JsonWriter json, Estimate estimate)
    {
        json.Figure("fresh", estimate.FreshKilograms);
        json.Figure("lift", estimate.LiftKilograms);
        json.Figure("dry", estimate.DryKilograms);
        json.Figure("saturated", estimate.SaturatedKilograms);
        json.Figure("submerged", estimate.SubmergedKilograms);
    }

    private static void Water(Utf8JsonWriter json, Estimate estimate)
    {
        json.Figure("injected", estimate.WaterCubicMetres * LitresPerCubicMetre);
        json.Numbers(
            "by_layer",
            [.. estimate.WaterByLayerCubicMetres.Select(volume => SignificantFigures.Six(volume * LitresPerCubicMetre))]);
        json.Figure("flush", estimate.FlushCubicMetres * LitresPerCubicMetre);
    }

    /// <summary>Times are whole milliseconds, so they stand in full: their sum is that of the sequence.</summary>
    private static void Times(Utf8JsonWriter json, Estimate estimate)
    {
        json.Number("setup", estimate.SetupSeconds);
        json.Number("printing", estimate.PrintSeconds);
        json.Objects("by_action", estimate.SecondsByAction, action =>
        {
            json.WriteString("action", action.Name);
            json.Number("seconds", action.Amount);
        });
    }
}
