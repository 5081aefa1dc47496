using System.Text.Json;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>What was worked out of the predicted solid beyond the totals: how it stands in the sea, what it offers as a place to live.</summary>
public static class ReportedFigures
{
    private static readonly string[] Blocks = ["sea", "habitat"];

    /// <summary>Writes a member for each, null where it was not worked out, into the object that is open.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="job">The job.</param>
    public static void Write(Utf8JsonWriter json, CompiledJob job)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(job);
        json.ObjectOrNull("sea", job.Sea, sea => SeaJson.Write(json, sea));
        json.ObjectOrNull("habitat", job.Habitat, habitat => HabitatJson.Write(json, habitat));
    }

    /// <summary>The single figures among them, for comparison: tables within are left out.</summary>
    /// <param name="document">A document with the members as written; those it lacks count as null.</param>
    /// <returns>Names, each with its member's before it, and values.</returns>
    internal static IReadOnlyList<(string Name, double? Value)> Of(ReadOnlyMemory<byte> document)
    {
        using JsonDocument whole = JsonDocument.Parse(document);
        List<(string Name, double? Value)> figures = [];
        foreach (string block in Blocks)
        {
            if (whole.RootElement.TryGetProperty(block, out JsonElement members) && members.ValueKind == JsonValueKind.Object)
            {
                figures.AddRange(members.EnumerateObject().Where(member => member.Value.ValueKind == JsonValueKind.Number)
                    .Select(member => ($"{block}_{member.Name}", (double?)member.Value.GetDouble())));
            }
        }

        return figures;
    }
}
