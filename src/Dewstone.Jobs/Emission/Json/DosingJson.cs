using System.Text.Json;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>How the doses were found, beside plain doses on the same cells.</summary>
public static class DosingJson
{
    private const double LitresPerCubicMetre = 1000.0;

    /// <summary>Writes the members into the object that is open.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="dosing">How the doses were found.</param>
    public static void Write(Utf8JsonWriter json, DosingSummary dosing)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(dosing);
        json.WriteString("method", dosing.Resumed ? "resumed" : dosing.Corrected ? "corrected" : "plain");
        json.WriteString("like", dosing.LikeFingerprint);
        json.WriteNumber("solves", dosing.Solves);
        json.WriteNumber("misfit_cells_per_voxel", dosing.MisfitCells);
        json.Figure("plain_misfit_l", dosing.PlainMisfitLitres);
        json.Figure("misfit_l", dosing.MisfitLitres);
        json.Figure("plain_full_voxel_ml", dosing.PlainMillilitres);
        json.Object("plain", () => Write(json, dosing.Plain));
        json.Object("chosen", () => Write(json, dosing.Chosen));
    }

    private static void Write(Utf8JsonWriter json, DoseFigures figures)
    {
        json.Figure("water_l", figures.WaterCubicMetres * LitresPerCubicMetre);
        json.Figure("hardened_m3", figures.HardenedCubicMetres);
        json.Figure("volume_error", figures.VolumeError);
        json.Figure("shape_match", figures.ShapeMatch);
        json.Figure("mean_water_cement", figures.MeanWaterCement);
    }
}
