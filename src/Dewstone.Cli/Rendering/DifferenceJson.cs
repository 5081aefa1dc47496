using System.Text.Json;
using Dewstone.Jobs.Comparison;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Job;

namespace Dewstone.Cli.Rendering;

/// <summary>The one JSON document of <c>diff --json</c>; its schema is <c>schemas/diff.schema.json</c>.</summary>
internal static class DifferenceJson
{
    /// <summary>The document.</summary>
    /// <param name="d">What differs.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(JobDifference d, int exitCode) => JsonText.Of("diff", exitCode, json =>
    {
        json.WriteBoolean("differs", d.Differs);
        json.WriteBoolean("moved", d.Moved);
        Side(json, "old", d.Old);
        Side(json, "new", d.New);
        Each(json, "description", d.Description, c =>
        {
            json.WriteString("key", c.Key);
            json.WriteString("old", c.Old);
            json.WriteString("new", c.New);
        });
        Solid(json, "target", d.Target);
        Solid(json, "predicted", d.Predicted);
        if (d.Doses is not { } doses)
        {
            json.WriteNull("doses");
        }
        else
        {
            json.WriteStartObject("doses");
            json.WriteNumber("layers", doses.Layers);
            Number(json, "old_ml", doses.OldMillilitres);
            Number(json, "new_ml", doses.NewMillilitres);
            Each(json, "positions", doses.Positions, c =>
            {
                Point(json, "tip_mm", c.Tip);
                Number(json, "old_ml", c.OldMillilitres);
                Number(json, "new_ml", c.NewMillilitres);
            });
            json.WriteEndObject();
        }

        Each(json, "requirements", d.Requirements, c =>
        {
            ClaimedRequirement any = c.New ?? c.Old!.Value;
            json.WriteString("id", any.Id);
            json.WriteString("feature", any.Feature);
            json.WriteString("unit", any.Unit);
            Number(json, "old_value", c.Old?.Value);
            Number(json, "new_value", c.New?.Value);
            Number(json, "old_margin", c.Old?.Margin);
            Number(json, "new_margin", c.New?.Margin);
        });
        Each(json, "findings", d.Findings, c =>
        {
            json.WriteString("change", c.Kind);
            json.WriteString("code", (c.New ?? c.Old!).Code);
            json.WriteString("old_level", c.Old?.Level);
            json.WriteString("new_level", c.New?.Level);
            json.WriteString("old", c.Old?.Message);
            json.WriteString("new", c.New?.Message);
        });
        Each(json, "figures", d.Figures, c =>
        {
            json.WriteString("name", c.Name);
            Number(json, "old", c.Old);
            Number(json, "new", c.New);
        });
    });

    private static void Side(Utf8JsonWriter json, string name, ComparedJob job)
    {
        json.WriteStartObject(name);
        json.WriteString("label", job.Label);
        json.WriteString("unit", job.Description.Unit.Name);
        json.WriteString("job_fingerprint", job.JobFingerprint);
        json.WriteString("design_fingerprint", job.DesignFingerprint);
        json.WriteBoolean("held", job.Held);
        json.WriteEndObject();
    }

    private static void Solid(Utf8JsonWriter json, string name, SolidChange change)
    {
        json.WriteStartObject(name);
        Number(json, "added_l", change.AddedLitres);
        Number(json, "removed_l", change.RemovedLitres);
        Point(json, "low_mm", change.Low);
        Point(json, "high_mm", change.High);
        Each(json, "slabs", change.Slabs, s =>
        {
            Number(json, "from_mm", s.FromMetres * 1000.0);
            Number(json, "to_mm", s.ToMetres * 1000.0);
            Number(json, "added_l", s.AddedLitres);
            Number(json, "removed_l", s.RemovedLitres);
        });
        json.WriteEndObject();
    }

    private static void Each<T>(Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Point(Utf8JsonWriter json, string name, Point3? point)
    {
        if (point is not { } at)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartArray(name);
        foreach (double metres in (ReadOnlySpan<double>)[at.X, at.Y, at.Z])
        {
            json.WriteNumberValue(SignificantFigures.Six(metres * 1000.0));
        }

        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumber(name, SignificantFigures.Six(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }
}
