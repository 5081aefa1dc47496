using Dewstone.Cli.Commands;
using Dewstone.Orders.Batches;

namespace Dewstone.Cli.Rendering;

/// <summary>The one JSON document of <c>order compile --json</c>; its schema is <c>schemas/order-compile.schema.json</c>.</summary>
internal static class OrderCompileJson
{
    /// <summary>The document.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="task">Task, from 0; null for the whole order.</param>
    /// <param name="tasks">Number of tasks.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(OrderCompileOutcome outcome, int? task, int tasks) => JsonText.Of("order-compile", outcome.ExitCode, json =>
    {
        json.WriteString("order", outcome.Name);
        json.WriteString("folder", outcome.Folder);
        if (task is { } number)
        {
            json.WriteNumber("task", number);
        }
        else
        {
            json.WriteNull("task");
        }

        json.WriteNumber("tasks", tasks);
        json.WriteStartArray("bins");
        foreach (BinOutcome bin in outcome.Bins)
        {
            json.WriteStartObject();
            json.WriteString("name", bin.Name);
            json.WriteString("state", OrderCompileText.StateName(bin));
            json.WriteBoolean("done_before", bin.Kept);
            json.WriteString("folder", bin.Record?.Folder ?? "");
            json.WriteNumber("exit_code", OrderCompileOutcome.CodeOf(bin));
            json.WriteStartArray("units");
            foreach (UnitRecord unit in bin.Units)
            {
                json.WriteStartObject();
                json.WriteString("mark", unit.Mark);
                json.WriteString("state", unit.State == UnitState.Solved ? "solved" : "failed");
                json.WriteNumber("draws", unit.Draws.Count);
                json.WriteNumber("exit_code", unit.ExitCode);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        FindingJson.Write(json, outcome.Findings);
    });
}
