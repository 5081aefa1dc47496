using System.Text.Json;
using Dewstone.Compute.Calibration;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Cli.Rendering;

/// <summary>The JSON document of <c>calibrate needles --json</c>; its schema is <c>schemas/calibrate-needles.schema.json</c>.</summary>
internal static class HeadJson
{
    /// <summary>The document.</summary>
    /// <param name="head">The head; null when the data could not be used.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(HeadCalibration? head, IReadOnlyList<Diagnostic> findings, int exitCode) => JsonText.Of("calibrate-needles", exitCode, json =>
    {
        FindingJson.Write(json, findings);
        if (head is null)
        {
            return;
        }

        json.WriteNumber("outlier_level", NeedleRules.OutlierLevel);
        json.WriteNumber("confidence", StudentQuantile.Confidence);
        json.WriteStartArray("needles");
        foreach (NeedleFit needle in head.Needles)
        {
            Write(json, needle);
        }

        json.WriteEndArray();
        json.WriteStartArray("advice");
        foreach (NeedleAdvice advice in head.Advice)
        {
            json.WriteStartObject();
            json.WriteNumber("column", advice.Column);
            json.WriteNumber("row", advice.Row);
            json.WriteString("action", advice.Clean ? "clean" : "weigh");
            json.WriteString("reason", advice.Reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static void Write(Utf8JsonWriter json, NeedleFit needle)
    {
        NeedleState state = needle.State;
        json.WriteStartObject();
        json.WriteNumber("column", state.Column);
        json.WriteNumber("row", state.Row);
        json.WriteString("state", state.Condition switch { NeedleCondition.Blocked => "blocked", NeedleCondition.Limited => "limited", _ => "ok" });
        json.WriteNumber("readings", needle.Used);
        json.WriteStartArray("outlier_lines");
        foreach (int line in needle.Outliers.Select(outlier => outlier.Line))
        {
            json.WriteNumberValue(line);
        }

        json.WriteEndArray();
        Six(json, "gain", state.Gain);
        Six(json, "gain_half_width", needle.GainHalfWidth);
        Six(json, "offset_ml", state.OffsetMillilitres);
        Six(json, "offset_half_width_ml", needle.OffsetHalfWidth);
        Six(json, "repeatability", state.Repeatability);
        Six(json, "middle_ml", needle.MiddleMillilitres);
        Six(json, "deviation", needle.Deviation);
        Six(json, "deviation_half_width", needle.DeviationHalfWidth);
        Six(json, "drift", needle.Drift);
        json.WriteEndObject();
    }

    private static void Six(Utf8JsonWriter json, string name, double? value)
    {
        json.WritePropertyName(name);
        if (value is { } known)
        {
            json.WriteNumberValue(SignificantFigures.Six(known));
        }
        else
        {
            json.WriteNullValue();
        }
    }
}
