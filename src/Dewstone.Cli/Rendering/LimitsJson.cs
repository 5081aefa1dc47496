using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>The JSON document of <c>limits --json</c>; its schema is <c>schemas/limits.schema.json</c>. Lengths in mm, volumes in mL.</summary>
internal static class LimitsJson
{
    /// <summary>The document.</summary>
    /// <param name="card">The card; null when there is none.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(LimitsCard? card, IReadOnlyList<Diagnostic> findings, int exitCode) => JsonText.Of("limits", exitCode, json =>
    {
        FindingJson.Write(json, findings);
        if (card is not null)
        {
            Write(json, card);
        }
    });

    private static void Write(Utf8JsonWriter json, LimitsCard card)
    {
        json.WriteStartObject("card");
        json.WriteString("mix", card.Mix);
        json.WriteString("printer", card.Printer);
        Mm(json, "pitch_mm", card.PitchMetres);
        Mm(json, "layer_mm", card.LayerMetres);
        Six(json, "bed_degc", card.BedTemperature.Celsius);
        Six(json, "loose_density_kg_m3", card.LooseDensity.KilogramsPerCubicMetre);
        Six(json, "window_s", card.WindowSeconds);
        json.WriteNumber("cells", card.CellsPerVoxel);
        Mm(json, "hole_step_mm", card.HoleStepMetres);
        Mm(json, "wall_step_mm", card.WallStepMetres);
        json.WriteNumber("wide_share", LimitsCard.WideShare);
        json.WriteNumber("sound_share", TestWall.SoundShare);
        Write(json, card.Window);
        json.WriteStartArray("layerings");
        foreach (LayeringLimits way in card.Layerings)
        {
            json.WriteStartObject();
            json.WriteString("layers", way.Shifted ? "shifted" : "straight");
            Write(json, "level_holes", way.LevelHoles);
            Write(json, "upright_holes", way.UprightHoles);
            Write(json, "upright_walls", way.UprightWalls);
            Write(json, "slabs", way.Slabs);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, DoseWindow window)
    {
        json.WriteStartObject("dose_window");
        Six(json, "least_ml", window.ClosingMillilitres);
        Six(json, "most_ml", window.GreatestMillilitres);
        json.WriteString("most_by", window.Ceiling switch { DoseCeiling.Needle => "needle", DoseCeiling.Pores => "pores", _ => "water_cement" });
        Six(json, "water_cement_limit", window.WaterCementLimit);
        Six(json, "water_cement_per_ml", window.WaterCementPerMillilitre);
        Six(json, "middle_ml", window.MiddleMillilitres);
        Six(json, "half_ml", window.HalfMillilitres);
        Six(json, "repeatability", window.Repeatability);
        Six(json, "drift", window.Drift);
        Six(json, "worst_repeatability", window.WorstRepeatability);
        Six(json, "two_deviations_ml", window.TwoDeviationsMillilitres(window.Repeatability));
        Six(json, "worst_two_deviations_ml", window.TwoDeviationsMillilitres(window.WorstRepeatability));
        json.WriteNumber("needles", window.Needles);
        json.WriteNumber("needles_too_loose", window.NeedlesTooLoose);
        json.WriteString("verdict", window.HalfMillilitres <= 0.0 ? "no_window" : !window.SpreadIsKnown ? "unknown" : window.IsWideEnough ? "ok" : "too_narrow");
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, HoleLimits holes)
    {
        json.WriteStartObject(name);
        Write(json, "open_from_mm", holes.Open);
        Write(json, "wide_from_mm", holes.Wide);
        json.WriteStartArray("tried");
        foreach (TestHole hole in holes.Tried)
        {
            json.WriteStartObject();
            json.WriteNumber("place", hole.Place);
            Mm(json, "drawn_mm", hole.DrawnMetres);
            Mm(json, "clear_mm", hole.ClearMetres);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, WallLimits walls)
    {
        json.WriteStartObject(name);
        Write(json, "sound_from_mm", walls.Sound);
        json.WriteStartArray("tried");
        foreach (TestWall wall in walls.Tried)
        {
            json.WriteStartObject();
            json.WriteNumber("place", wall.Place);
            Mm(json, "drawn_mm", wall.DrawnMetres);
            Six(json, "least_set_share", wall.LeastSetShare);
            json.WriteBoolean("core_is_set", wall.CoreIsSet);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, SizeLimit limit)
    {
        json.WriteStartObject(name);
        Or(json, "lucky", limit.BestMetres);
        Or(json, "bad", limit.WorstMetres);
        json.WriteEndObject();
    }

    private static void Or(Utf8JsonWriter json, string name, double? metres)
    {
        if (metres is { } found)
        {
            Mm(json, name, found);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static void Mm(Utf8JsonWriter json, string name, double metres) => Six(json, name, metres * 1000.0);

    private static void Six(Utf8JsonWriter json, string name, double value) => json.WriteNumber(name, SignificantFigures.Six(value));
}
