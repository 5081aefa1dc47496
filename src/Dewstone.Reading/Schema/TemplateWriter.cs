using System.Text;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Writes a commented file to start from, from the key table of its kind.</summary>
public static class TemplateWriter
{
    /// <summary>
    /// A file with every key that must stand and those most want, at invented values of Wrackline Bay; the other keys stand in comments.
    /// It reads without a finding once the files it names exist.
    /// </summary>
    /// <param name="kind">Kind of description.</param>
    /// <returns>YAML with a final line feed; the same on every run.</returns>
    public static string Write(DescriptionKind kind)
    {
        string word = DescriptionTables.Word(kind);
        StringBuilder text = new();
        text.Append($"# yaml-language-server: $schema={word}.schema.json\n");
        text.Append($"# The schema helps an editor to check this file: dewstone schema {word} > {word}.schema.json\n");
        text.Append("# Every quantity carries its unit of measure. Lines behind # are examples of keys that may be left out.\n");
        text.Append($"kind: {word}\nversion: 1\n");
        WriteTable(text, DescriptionTables.For(kind), "", "");
        return text.ToString();
    }

    // The first line of a list item begins with a dash, which takes the place of two blanks of the indentation.
    private static void WriteTable(StringBuilder text, ITable table, string firstIndent, string indent)
    {
        HashSet<Key> live = [.. table.Keys.Where(key => key.Starter)];
        foreach (Way way in table.Ways.Skip(1))
        {
            live.ExceptWith(way.Keys.Except(table.Ways[0].Keys));
        }

        // A list item cannot begin with a comment.
        string next = firstIndent;
        foreach (Key key in table.Keys.Where(live.Contains).Concat(table.Keys.Where(key => !live.Contains(key))))
        {
            WriteKey(text, key, live.Contains(key) ? next : indent + "# ", indent, live.Contains(key), Remark(table, key));
            next = indent;
        }
    }

    private static void WriteKey(StringBuilder text, Key key, string start, string indent, bool live, string remark)
    {
        if (live && !key.HasOwnExample && key.Form is ITable table)
        {
            text.Append($"{start}{key.Name}:  # {remark}\n");
            WriteTable(text, table, indent + "  ", indent + "  ");
        }
        else if (live && !key.HasOwnExample && key.Form.Inner.SingleOrNone() is ITable item)
        {
            text.Append($"{start}{key.Name}:  # {remark}\n");
            WriteTable(text, item, indent + "  - ", indent + "    ");
        }
        else if (live && key.Example.StartsWith("[{", StringComparison.Ordinal))
        {
            text.Append($"{start}{key.Name}:  # {remark}\n");
            foreach (string one in Items(key.Example))
            {
                text.Append($"{indent}  - {one}\n");
            }
        }
        else
        {
            text.Append($"{start}{key.Name}: {key.Example}  # {remark}\n");
        }
    }

    // The tables of a list in one line, each by itself.
    private static IEnumerable<string> Items(string list)
    {
        int depth = 0;
        int start = 1;
        for (int i = 1; i < list.Length; i++)
        {
            depth += list[i] is '{' or '[' ? 1 : list[i] is '}' or ']' ? -1 : 0;
            if (list[i] == '}' && depth == 0)
            {
                yield return list[start..(i + 1)];
                start = i + 3;
            }
        }
    }

    private static string Remark(ITable table, Key key)
    {
        Way? way = table.Ways.Skip(1).FirstOrDefault(other => other.Keys.Contains(key) && !table.Ways[0].Keys.Contains(key));
        string or = way is null ? "" : way.Word is null ? "or so: " : $"with {way.Selector!.Name}: {way.Word}: ";
        string fallback = key.Fallback is null ? "" : $"; left out, {key.Fallback}";
        return or + key.Doc + fallback;
    }

    private static Form? SingleOrNone(this IEnumerable<Form> forms) => forms.Take(2).ToArray() is [Form one] ? one : null;
}
