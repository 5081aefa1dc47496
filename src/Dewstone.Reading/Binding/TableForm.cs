using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A table of keys, bound to a record.</summary>
/// <typeparam name="T">The record.</typeparam>
/// <param name="inWords">What the table is called, with its article: <c>a tunnel</c>.</param>
/// <param name="keys">Its keys, in the order they should be written.</param>
/// <param name="make">Makes the record; called only when nothing in the table is at fault.</param>
/// <param name="check">Rules over several keys.</param>
/// <param name="ways">Ways of saying what the table is.</param>
internal sealed class TableForm<T>(
    string inWords, Key[] keys, Func<Bound, T> make, Action<Bound>? check = null, Way[]? ways = null) : FormOf<T>, ITable
    where T : notnull
{
    private readonly Way[] allWays = ways ?? [];

    /// <inheritdoc cref="ITable.InWords"/>
    public override string InWords => inWords;

    /// <inheritdoc/>
    public IReadOnlyList<Key> Keys => keys;

    /// <inheritdoc/>
    public IReadOnlyList<Way> Ways => allWays;

    /// <inheritdoc/>
    public IEnumerable<Key> CommonKeys => keys.Where(key => !allWays.Any(way => way.Keys.Contains(key)));

    /// <inheritdoc/>
    public override IEnumerable<Form> Inner => keys.Select(key => key.Form);

    /// <inheritdoc/>
    public override string Example
    {
        get
        {
            IEnumerable<Key> shown =
                keys.Where(key => key.Required && (allWays.Length == 0 || CommonKeys.Contains(key) || allWays[0].Keys.Contains(key)));
            return "{" + string.Join(", ", shown.Select(key => $"{key.Name}: {key.Example}")) + "}";
        }
    }

    /// <inheritdoc/>
    public override bool TryBind(Spot spot, [MaybeNullWhen(false)] out T value)
    {
        value = default;
        if (spot.Node is not YamlMap map)
        {
            ReportWrongType(spot);
            return false;
        }

        int errorsBefore = spot.ErrorCount;
        Bound bound = new(spot);
        foreach (YamlEntry entry in map.Entries)
        {
            BindEntry(bound, entry);
        }

        IEnumerable<Key> due = allWays.Length == 0 ? keys : KeysDue(bound, map);
        foreach (Key key in due)
        {
            if (key.Required && !bound.Stands(key))
            {
                spot.ReportAt(DescriptionFindings.MissingKey, spot.Place, key.Name, $"{inWords} needs `{key.Name}`",
                    $"add `{key.Name}: {key.Example}` ({key.Doc})");
            }
        }

        check?.Invoke(bound);
        if (spot.ErrorCount != errorsBefore)
        {
            return false;
        }

        value = make(bound);
        return true;
    }

    /// <inheritdoc/>
    public override void WriteSchema(Utf8JsonWriter json) => TableSchema.Write(this, json);

    private void BindEntry(Bound bound, YamlEntry entry)
    {
        foreach (Key key in keys)
        {
            if (key.Name == entry.Key)
            {
                bound.Set(key, key.Form.TryBindObject(bound.Spot.Entry(entry), out object? value) ? value : null);
                return;
            }
        }

        if (bound.Spot.Key.Path.Length == 0 && entry.Key is "kind" or "version")
        {
            return;
        }

        string meant = Spelling.Nearest(entry.Key, keys.Select(key => key.Name)) is { } near ? $"did you mean `{near}`? " : "";
        bound.Spot.ReportAt(DescriptionFindings.UnknownKey, entry.KeyPlace, entry.Key,
            $"`{Quoting.Short(entry.Key)}` is no key of {inWords}",
            $"{meant}its keys are {string.Join(", ", keys.Select(key => key.Name))}");
    }

    // The common keys and those of the way chosen; the latter only when exactly one is.
    private IEnumerable<Key> KeysDue(Bound bound, YamlMap map)
    {
        Way? chosen = allWays[0].Selector is null ? ChosenByStanding(bound, map) : ChosenByWord(map);
        if (chosen is null)
        {
            return CommonKeys;
        }

        foreach (Key key in keys)
        {
            if (bound.Stands(key) && !chosen.Keys.Contains(key) && !CommonKeys.Contains(key))
            {
                string with = chosen.Word is null ? $"`{chosen.Keys[0].Name}`" : $"`{chosen.Selector!.Name}: {chosen.Word}`";
                bound.Spot.ReportAt(DescriptionFindings.KeysThatExclude, map.Find(key.Name)!.KeyPlace, key.Name,
                    $"`{key.Name}` does not go with {with}",
                    $"delete `{key.Name}`, or say it the other way and delete {with}");
            }
        }

        return CommonKeys.Concat(chosen.Keys);
    }

    private Way? ChosenByWord(YamlMap map)
    {
        string? word = map.Find(allWays[0].Selector!.Name)?.Value is YamlScalar scalar ? scalar.Text : allWays[0].Selector!.Fallback;
        return allWays.FirstOrDefault(way => way.Word == word);
    }

    // When several ways are begun the first of the table's ways stands and the others are reported against it.
    private Way? ChosenByStanding(Bound bound, YamlMap map)
    {
        Way? chosen = allWays.FirstOrDefault(way => bound.Stands(way.Keys[0]));
        if (chosen is null)
        {
            string names = string.Join(", ", allWays.Select(way => $"`{way.Keys[0].Name}`"));
            TextPlace place = map.IsBlock && map.Entries.Count > 0 && bound.Spot.Key.Path.Length == 0 ? map.Place : bound.Spot.Place;
            bound.Spot.ReportAt(DescriptionFindings.NoWayChosen, place, allWays[0].Keys[0].Name, $"{inWords} needs one of {names}",
                $"add one of them, as in `{allWays[0].Keys[0].Name}: {allWays[0].Keys[0].Example}`");
        }

        return chosen;
    }
}
