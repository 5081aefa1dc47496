using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Gathering;

namespace Dewstone.Cli.Rendering;

/// <summary>The one JSON document of <c>order gather --json</c>.</summary>
internal static class GatherJson
{
    /// <summary>The document.</summary>
    /// <param name="result">What came of it; null when nothing could be read.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="folder">The order's folder.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(GatherResult? result, IReadOnlyList<Diagnostic> findings, string folder, int exitCode) => JsonText.Of("order-gather", exitCode, json =>
    {
        json.WriteString("folder", folder);
        json.WriteBoolean("complete", result?.Order is not null);
        if (result is not null)
        {
            if (result.Contents.State is { } state)
            {
                foreach (WorkState asked in (WorkState[])[WorkState.Missing, WorkState.Stale, WorkState.Failed])
                {
                    Names(json, $"{OrderStatusText.Word(asked)}_units", state.Units.Where(unit => unit.State == asked).Select(unit => unit.Mark));
                    Names(json, $"{OrderStatusText.Word(asked)}_bins", state.Bins.Where(bin => bin.State == asked).Select(bin => bin.Planned.Name));
                }
            }

            json.WriteStartArray("missing_tasks");
            foreach (MissingTasks tasks in result.Contents.Tasks)
            {
                json.WriteStartObject();
                json.WriteNumber("of", tasks.Of);
                json.WriteString("tasks", tasks.Numbers);
                json.WriteEndObject();
            }

            json.WriteEndArray();
        }

        if (result?.Order is { } order)
        {
            json.WriteStartObject("totals");
            TotalsMembers.Write(json, order.Totals);
            json.WriteNumber("nights", order.Nights.Count);
            json.WriteEndObject();
        }

        FindingJson.Write(json, findings);
    });

    private static void Names(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (string item in names)
        {
            json.WriteStringValue(item);
        }

        json.WriteEndArray();
    }
}
