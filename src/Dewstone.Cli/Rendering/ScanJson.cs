using System.Text.Json;
using Dewstone.Compute.Survey;
using Dewstone.Jobs.Surveys;
using Dewstone.Model.Quantities;

namespace Dewstone.Cli.Rendering;

/// <summary>The scan in the JSON document of <c>survey --json</c>. Lengths in mm, unit frame.</summary>
internal static class ScanJson
{
    /// <summary>Writes a member <c>scan</c>.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="scan">The scan.</param>
    public static void Write(Utf8JsonWriter json, ScanSurveyResult scan)
    {
        ScanDeviation deviation = scan.Deviation;
        RigidMotion motion = scan.Registration.Motion;
        json.WriteStartObject("scan");
        json.WriteBoolean("lies", scan.Lies);
        json.WriteStartArray("motion");
        foreach ((Point3 row, double shift) in new[] { (motion.X, motion.Shift.X), (motion.Y, motion.Shift.Y), (motion.Z, motion.Shift.Z) })
        {
            json.WriteStartArray();
            foreach (double value in (ReadOnlySpan<double>)[row.X, row.Y, row.Z, 1000.0 * shift])
            {
                json.WriteNumberValue(SignificantFigures.Six(value));
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
        SurveyJson.Number(json, "rms_mm", 1000.0 * scan.Registration.RootMeanSquareMetres);
        SurveyJson.Number(json, "near_share", scan.Registration.NearShare);
        json.WriteNumber("points", deviation.Points.Count);
        json.WriteNumber("stray_points", deviation.Stray);
        SurveyJson.Number(json, "mean_mm", 1000.0 * deviation.Mean);
        SurveyJson.Number(json, "percentile_5_mm", 1000.0 * deviation.Percentile(0.05));
        SurveyJson.Number(json, "percentile_95_mm", 1000.0 * deviation.Percentile(0.95));
        SurveyJson.Number(json, "predicted_m3", scan.PredictedCubicMetres);
        SurveyJson.Number(json, "scanned_m3", scan.ScannedCubicMetres);
        json.WriteStartArray("places");
        foreach (DeviatingPlace place in deviation.Places)
        {
            json.WriteStartObject();
            SurveyJson.Number(json, "x_mm", 1000.0 * place.Where.X);
            SurveyJson.Number(json, "y_mm", 1000.0 * place.Where.Y);
            SurveyJson.Number(json, "z_mm", 1000.0 * place.Where.Z);
            SurveyJson.Number(json, "mean_mm", 1000.0 * place.MeanMetres);
            json.WriteNumber("points", place.Points);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("suggestions");
        foreach (Suggestion suggestion in scan.Suggestions)
        {
            json.WriteStartObject();
            json.WriteString("figure", suggestion.Figure);
            SurveyJson.Number(json, "factor", suggestion.Factor);
            SurveyJson.Number(json, "value", suggestion.Value);
            json.WriteString("unit", suggestion.Unit);
            SurveyJson.Number(json, "before_mm", 1000.0 * suggestion.BeforeMetres);
            SurveyJson.Number(json, "after_mm", 1000.0 * suggestion.AfterMetres);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
