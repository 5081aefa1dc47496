using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Tests.Binding;

/// <summary>A key with the tables around it, and the writing of a whole file in which everything but that key is good.</summary>
/// <param name="Tables">Tables from the outermost to the one that holds the key.</param>
/// <param name="Keys">Keys that lead from table to table; the last is the key itself.</param>
internal sealed record KeyPlace(IReadOnlyList<ITable> Tables, IReadOnlyList<Key> Keys)
{
    /// <summary>Stands in a text where a finding is expected.</summary>
    public const char Mark = '\uE000';

    public Key Key => Keys[^1];

    public string Name => string.Join('.', Keys.Select(key => key.Name));

    public static IEnumerable<KeyPlace> All(ITable root) => Below([root], []);

    /// <summary>The text with other entries in place of the key's own.</summary>
    /// <param name="kind">Word of the kind.</param>
    /// <param name="entries">What stands in the innermost table instead of the key; empty for leaving it out.</param>
    /// <returns>YAML, one line a key of the outermost table.</returns>
    public string Write(string kind, params string[] entries) =>
        $"kind: {kind}\nversion: 1\n" + string.Join('\n', Entries(0, entries)) + "\n";

    private IEnumerable<string> Entries(int depth, string[] entries)
    {
        ITable table = Tables[depth];
        Key key = Keys[depth];
        Way? way = table.Ways.FirstOrDefault(one => one.Keys.Contains(key)) ?? (table.Ways.Count > 0 ? table.Ways[0] : null);
        foreach (Key other in table.Keys.Where(k => k == key || (k.Required && (table.CommonKeys.Contains(k) || (way?.Keys.Contains(k) ?? false)))))
        {
            if (other != key)
            {
                yield return $"{other.Name}: {Companion(other.Name) ?? (other == way?.Selector ? way.Word : other.Example)}";
            }
            else if (depth == Keys.Count - 1)
            {
                foreach (string entry in entries.Concat(Neighbours()))
                {
                    yield return entry;
                }
            }
            else
            {
                string inner = "{" + string.Join(", ", Entries(depth + 1, entries)) + "}";
                yield return $"{key.Name}: {(key.Form is ITable ? inner : $"[{inner}{OtherItems(key.Name)}]")}";
            }
        }
    }

    // Values that rules over several keys ask for beside this one.
    private string? Companion(string key) => (Name, key) switch
    {
        ("tunnels.path", "section") => "{diameter: 220 mm}",
        ("tunnels.at.x", "along") => "z",
        _ => null,
    };

    // A mix needs a binder, and shares that add up.
    private static string OtherItems(string list) =>
        list == "solids" ? ", {name: rest, share: 75 %, density: 2650 kg/m3, binder: true}" : "";

    private string[] Neighbours() => Name switch
    {
        "tunnels.at.x" or "tunnels.at.z" => ["y: 450 mm"],
        "tunnels.at.y" => ["z: 270 mm"],
        _ => [],
    };

    private static IEnumerable<KeyPlace> Below(IReadOnlyList<ITable> tables, IReadOnlyList<Key> keys)
    {
        foreach (Key key in tables[^1].Keys)
        {
            Key[] path = [.. keys, key];
            yield return new KeyPlace(tables, path);
            ITable? inner = key.Form as ITable ?? (key.Form.GetType().Name.StartsWith("ListForm",
                StringComparison.Ordinal) ? key.Form.Inner.First() as ITable : null);
            if (inner is not null)
            {
                foreach (KeyPlace place in Below([.. tables, inner], path))
                {
                    yield return place;
                }
            }
        }
    }
}
