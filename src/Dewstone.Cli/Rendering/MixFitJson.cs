using System.Text.Json;
using Dewstone.Compute.Calibration;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Cli.Rendering;

/// <summary>The JSON document of <c>calibrate mix --json</c>; its schema is <c>schemas/calibrate-mix.schema.json</c>.</summary>
internal static class MixFitJson
{
    /// <summary>The document.</summary>
    /// <param name="found">The calibration; null when the data could not be used.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(MixCalibration? found, IReadOnlyList<Diagnostic> findings, int exitCode) => JsonText.Of("calibrate-mix", exitCode, json =>
    {
        FindingJson.Write(json, findings);
        if (found?.Mix is { } mix)
        {
            json.WriteString("law", mix.Wetting is PowerLaw ? "power" : "exponential");
            json.WriteNumber("exponent", mix.Wetting.Exponent);
            json.WriteNumber("confidence", StudentQuantile.Confidence);
            Write(json, found);
        }
    });

    private static void Write(Utf8JsonWriter json, MixCalibration found)
    {
        json.WriteStartArray("figures");
        foreach (FittedFigure figure in found.Figures)
        {
            json.WriteStartObject();
            json.WriteString("name", figure.Name);
            json.WriteString("unit", figure.Unit);
            json.WriteBoolean("fitted", figure.Fitted);
            Six(json, "value", figure.Value);
            Six(json, "low", figure.Low);
            Six(json, "high", figure.High);
            Six(json, "spread", figure.Spread);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("correlations");
        foreach (double correlation in found.Correlations)
        {
            json.WriteNumberValue(SignificantFigures.Six(correlation));
        }

        json.WriteEndArray();
        json.WriteStartArray("exponents");
        foreach (ExponentTrial trial in found.Exponents)
        {
            json.WriteStartObject();
            json.WriteNumber("exponent", trial.Exponent);
            Six(json, "squares", trial.Squares);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("kinds");
        foreach (KindReport kind in found.Kinds)
        {
            json.WriteStartObject();
            json.WriteString("kind", FitWords.Of(kind.Kind));
            json.WriteNumber("count", kind.Count);
            Six(json, "scatter", kind.Scatter);
            json.WriteBoolean("usual", kind.IsUsual);
            Six(json, "left_out_scatter", kind.LeftOutScatter);
            Six(json, "lack_of_fit", kind.LackOfFit);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("measurements");
        foreach (MixObservation one in found.Observations)
        {
            json.WriteStartObject();
            json.WriteString("kind", FitWords.Of(one.Kind));
            json.WriteString("unit", FitWords.Unit(one.Kind));
            json.WriteString("file", one.File);
            json.WriteNumber("line", one.Line);
            Six(json, "measured", one.Measured);
            Six(json, "fitted", one.Fitted);
            Six(json, "residual", one.Residual);
            Six(json, "left_out_residual", one.LeftOutResidual);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Six(Utf8JsonWriter json, string name, double? value)
    {
        json.WritePropertyName(name);
        JsonSerializer.Serialize(json, value is { } known ? SignificantFigures.Six(known) : (double?)null);
    }
}
