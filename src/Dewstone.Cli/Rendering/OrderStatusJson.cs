using Dewstone.Cli.Commands;
using Dewstone.Orders.Batches;

namespace Dewstone.Cli.Rendering;

/// <summary>The one JSON document of <c>order status --json</c>; its schema is <c>schemas/status.schema.json</c>.</summary>
internal static class OrderStatusJson
{
    /// <summary>The document.</summary>
    /// <param name="outcome">What was found.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(OrderStatusOutcome outcome) => JsonText.Of("status", outcome.ExitCode, json =>
    {
        json.WriteString("order", outcome.Name);
        json.WriteString("folder", outcome.Folder);
        json.WriteBoolean("complete", outcome.State is { Complete: true });
        json.WriteStartArray("bins");
        foreach (BinStatus bin in outcome.State?.Bins ?? [])
        {
            json.WriteStartObject();
            json.WriteString("name", bin.Planned.Name);
            json.WriteString("state", OrderStatusText.Word(bin.State));
            json.WriteString("folder", bin.Record?.Folder);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("units");
        foreach (UnitStatus unit in outcome.State?.Units ?? [])
        {
            json.WriteStartObject();
            json.WriteString("mark", unit.Mark);
            json.WriteString("bin", unit.Bin);
            json.WriteString("state", OrderStatusText.Word(unit.State));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("tasks");
        foreach ((int tasks, string missing) in outcome.MissingTasks)
        {
            json.WriteStartObject();
            json.WriteNumber("of", tasks);
            json.WriteString("missing", missing);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        FindingJson.Write(json, outcome.Findings);
    });
}
