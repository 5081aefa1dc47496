using System.Globalization;
using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;

namespace Dewstone.Jobs.Comparison;

/// <summary>Compares descriptions value by value, after all units of measure, defaults and orders of keys are gone. Names are labels: renaming is no difference.</summary>
internal static class DescriptionComparison
{
    private const string Name = "name";

    /// <summary>Compares two descriptions.</summary>
    /// <param name="old">Before.</param>
    /// <param name="now">Now.</param>
    /// <returns>Values that differ, in the order of the core.</returns>
    public static IReadOnlyList<KeyChange> Compare(JobDescription old, JobDescription now)
    {
        using JsonDocument before = Parse(old), after = Parse(now);
        List<KeyChange> changes = [];
        Compare("", before.RootElement, after.RootElement, changes);
        return changes;
    }

    private static JsonDocument Parse(JobDescription description) =>
        JsonDocument.Parse(CanonicalJson.Compact(json => JobCoreEmitter.Write(json, description)));

    private static void Compare(string path, JsonElement? old, JsonElement? now, List<KeyChange> changes)
    {
        JsonElement? sample = old is { ValueKind: not JsonValueKind.Null } ? old : now;
        bool bothSet = old is { ValueKind: not JsonValueKind.Null } && now is { ValueKind: not JsonValueKind.Null };
        if (bothSet && old!.Value.ValueKind == now!.Value.ValueKind && sample!.Value.ValueKind == JsonValueKind.Object)
        {
            foreach (string name in old.Value.EnumerateObject().Select(p => p.Name).Union(now.Value.EnumerateObject().Select(p => p.Name)).Where(n => n != Name))
            {
                Compare(path.Length == 0 ? name : $"{path}.{name}", Member(old.Value, name), Member(now.Value, name), changes);
            }
        }
        else if (bothSet && IsList(old!.Value) && IsList(now!.Value))
        {
            foreach ((string label, JsonElement? a, JsonElement? b) in Paired([.. old.Value.EnumerateArray()], [.. now.Value.EnumerateArray()]))
            {
                Compare($"{path}[{label}]", a, b, changes);
            }
        }
        else if (Text(path, old) is var was && Text(path, now) is var isNow && was != isNow)
        {
            changes.Add(new KeyChange(path.EndsWith("_m", StringComparison.Ordinal) ? path[..^2] : path, was, isNow));
        }
    }

    private static JsonElement? Member(JsonElement table, string name) => table.TryGetProperty(name, out JsonElement member) ? member : null;

    private static bool IsList(JsonElement value) => value.ValueKind == JsonValueKind.Array && value.EnumerateArray().Any(i => i.ValueKind == JsonValueKind.Object);

    // Items are the same when their identities are; where only identities changed, when their places in lists of one length are.
    private static IEnumerable<(string Label, JsonElement? Old, JsonElement? New)> Paired(JsonElement[] old, JsonElement[] now)
    {
        string[] oldNames = [.. old.Select(Identity)], newNames = [.. now.Select(Identity)];
        bool distinct = oldNames.Distinct(StringComparer.Ordinal).Count() == old.Length && newNames.Distinct(StringComparer.Ordinal).Count() == now.Length;
        bool byName = distinct && (old.Length != now.Length || oldNames.Order(StringComparer.Ordinal).SequenceEqual(newNames.Order(StringComparer.Ordinal)));
        if (!byName)
        {
            for (int i = 0; i < Math.Max(old.Length, now.Length); i++)
            {
                string label = i < old.Length && oldNames[i].Length > 0 ? oldNames[i] : i < now.Length && newNames[i].Length > 0 ? newNames[i] : i.ToString(CultureInfo.InvariantCulture);
                yield return (label, i < old.Length ? old[i] : null, i < now.Length ? now[i] : null);
            }

            yield break;
        }

        foreach (string name in oldNames.Union(newNames))
        {
            int a = Array.IndexOf(oldNames, name), b = Array.IndexOf(newNames, name);
            yield return (name, a < 0 ? null : old[a], b < 0 ? null : now[b]);
        }
    }

    private static string Identity(JsonElement item) =>
        item.ValueKind != JsonValueKind.Object ? ""
        : item.TryGetProperty(Name, out JsonElement name) && name.ValueKind == JsonValueKind.String ? name.GetString()!
        : item.TryGetProperty("mark", out JsonElement mark) && mark.ValueKind == JsonValueKind.String ? mark.GetString()!
        : item.TryGetProperty("column", out JsonElement column) && item.TryGetProperty("row", out JsonElement row) ? $"{column},{row}" : "";

    private static string? Text(string path, JsonElement? value)
    {
        bool metres = path.EndsWith("_m", StringComparison.Ordinal);
        return value is not { } there || there.ValueKind == JsonValueKind.Null ? null
            : there.ValueKind == JsonValueKind.Number ? metres ? Millimetres(there) + " mm" : there.GetRawText()
            : there.ValueKind == JsonValueKind.Array && metres && there.EnumerateArray().All(i => i.ValueKind == JsonValueKind.Number)
                ? string.Join(" x ", there.EnumerateArray().Select(Millimetres)) + " mm"
            : there.ValueKind == JsonValueKind.String ? there.GetString() : there.GetRawText();
    }

    private static string Millimetres(JsonElement metres) => (metres.GetDouble() * 1000.0).ToString("0.######", CultureInfo.InvariantCulture);
}
