using Dewstone.Model.Diagnostics;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace Dewstone.Reading.Yaml;

/// <summary>
/// Builds a tree of values with places from a YAML text. Reads the library's events one by one and keeps its own stack, since the
/// library's tree overflows the stack on deep nesting, explodes on aliases and throws without a place on some broken texts.
/// </summary>
internal sealed class YamlTreeReader
{
    /// <summary>Deepest nesting of lists and tables; descriptions need 6.</summary>
    public const int DeepestNesting = 32;

    /// <summary>Most values and brackets of one text.</summary>
    public const int MostEvents = 100_000;

    /// <summary>Most keys of one table.</summary>
    public const int MostKeys = 1000;

    private readonly string file;
    private readonly DiagnosticBag findings;
    private readonly Stack<OpenNode> open = new();
    private YamlNode? root;
    private TextPlace last = TextPlace.Start;
    private bool stopped;

    private YamlTreeReader(string file, DiagnosticBag findings)
    {
        this.file = file;
        this.findings = findings;
    }

    /// <summary>Reads a text.</summary>
    /// <param name="text">The whole text, without byte order mark.</param>
    /// <param name="file">File name for findings.</param>
    /// <param name="findings">Takes the findings.</param>
    /// <returns>The one document's value; null when the text has none or is broken, with a finding that says why.</returns>
    public static YamlNode? Read(string text, string file, DiagnosticBag findings)
    {
        YamlTreeReader reader = new(file, findings);
        if (!TextScan.Passes(text, file, findings))
        {
            return null;
        }

        reader.ReadAll(text);
        if (reader.stopped)
        {
            return null;
        }

        if (reader.root is null or YamlScalar { IsNothing: true })
        {
            findings.Add(DescriptionFindings.EmptyFile.At(
                "the file says nothing", "begin with `kind:` and `version: 1`; `dewstone new` writes a file to start from",
                location: new SourceLocation(file, 1, 1)));
            return null;
        }

        return reader.root;
    }

    private void ReadAll(string text)
    {
        try
        {
            Parser parser = new(new StringReader(text));
            int events = 0;
            while (!stopped && parser.MoveNext())
            {
                if (++events > MostEvents)
                {
                    Stop(DescriptionFindings.TooManyValues, Place(parser.Current!.Start), "the file holds more than 100,000 values",
                        "a description is a few hundred lines: is this the file you meant?");
                    return;
                }

                Take(parser.Current!);
            }
        }
        catch (YamlException broken)
        {
            TextPlace place = broken.Start.Line > 0 ? Place(broken.Start) : Innermost();
            Stop(DescriptionFindings.BrokenYaml, place, "this is not readable YAML: " + Plain(broken.Message),
                "look for a missing quote, bracket, colon or indentation here or on the line above");
        }
#pragma warning disable CA1031 // The library throws exceptions of many kinds, without a place, on broken texts; all mean the same.
        catch (Exception broken) when (broken is not OutOfMemoryException)
#pragma warning restore CA1031
        {
            Stop(DescriptionFindings.BrokenYaml, Innermost(), "this is not readable YAML",
                "look for a missing quote, bracket, colon or indentation here or below");
        }
    }

    private void Take(ParsingEvent item)
    {
        last = Place(item.Start);
        switch (item)
        {
            case DocumentStart when root is not null:
                Stop(DescriptionFindings.SeveralDocuments, last, "a second document begins here",
                    "keep one description a file: move what follows `---` to a file of its own");
                break;
            case AnchorAlias alias:
                Refuse($"`*{Quoting.Short(alias.Value.Value)}`", "an alias");
                break;
            case NodeEvent { Anchor.IsEmpty: false } node:
                Refuse($"`&{Quoting.Short(node.Anchor.Value)}`", "an anchor");
                break;
            case NodeEvent { Tag.IsEmpty: false } node:
                Refuse($"`{Quoting.Short(node.Tag.Value)}`", "a tag");
                break;
            case Scalar scalar:
                Add(new YamlScalar(last, scalar.Value, scalar.Style == ScalarStyle.Plain));
                break;
            case SequenceStart start:
                Open(new YamlList(last, start.Style == SequenceStyle.Block));
                break;
            case MappingStart start:
                Open(new YamlMap(last, start.Style == MappingStyle.Block));
                break;
            case SequenceEnd or MappingEnd:
                Add(open.Pop().Node);
                break;
            default:
                break;
        }
    }

    private void Refuse(string text, string what) =>
        Stop(DescriptionFindings.AliasOrTag, last, $"{text} is {what}, which descriptions do not use",
            "write the value out where it is needed; put text that begins with `&`, `*` or `!` in quotes");

    private void Open(YamlNode node)
    {
        if (open.Count == DeepestNesting)
        {
            Stop(DescriptionFindings.TooDeep, last, $"lists and tables are nested more than {DeepestNesting} deep here",
                "no description needs that: look for stray brackets or dashes");
            return;
        }

        if (open.TryPeek(out OpenNode? parent) && parent.AwaitsKey)
        {
            Stop(DescriptionFindings.WrongType, last, "a key must be a word, and here stands " + node.InWords,
                "look for a stray bracket, dash or question mark, or a missing colon");
            return;
        }

        open.Push(new OpenNode(node));
    }

    private void Add(YamlNode node)
    {
        if (!open.TryPeek(out OpenNode? parent))
        {
            root = node;
        }
        else if (parent.Node is YamlList list)
        {
            list.Items.Add(node);
        }
        else if (parent.AwaitsKey)
        {
            parent.Key = (YamlScalar)node;
        }
        else
        {
            AddEntry((YamlMap)parent.Node, parent.Key!, node);
            parent.Key = null;
        }
    }

    private void AddEntry(YamlMap map, YamlScalar key, YamlNode value)
    {
        if (map.Entries.Count == MostKeys)
        {
            Stop(DescriptionFindings.TooManyValues, key.Place, "the table holds more than 1,000 keys", "a description has a few dozen: is this the file you meant?");
            return;
        }

        if (map.Find(key.Text) is not { } first)
        {
            map.Add(new YamlEntry(key.Text, key.Place, value));
            return;
        }

        string name = Quoting.Short(key.Text);
        findings.Add(DescriptionFindings.DuplicateKey.At(
            $"`{name}` stands twice in the same table", $"keep one of the two; the first is on line {first.KeyPlace.Line}",
            location: At(key.Place)) with
        {
            Related = [new RelatedPlace(At(first.KeyPlace), null, $"`{name}` for the first time")],
        });
    }

    private TextPlace Innermost() => open.TryPeek(out OpenNode? parent) && parent.Node.Place.IsAfter(last) ? parent.Node.Place : last;

    private void Stop(FindingKind kind, TextPlace place, string message, string remedy)
    {
        stopped = true;
        findings.Add(kind.At(message, remedy, location: At(place)));
    }

    private SourceLocation At(TextPlace place) => new(file, place.Line, place.Column);

    private static TextPlace Place(Mark mark) => new((int)Math.Max(1, mark.Line), (int)Math.Max(1, mark.Column));

    // The library's messages are sentences, some with the place in front, some over several lines.
    private static string Plain(string message)
    {
        int colon = message.StartsWith('(') ? message.IndexOf("): ", StringComparison.Ordinal) : -1;
        string text = (colon < 0 ? message : message[(colon + 3)..]).ReplaceLineEndings(" ").Trim().TrimEnd('.');
        return text.Length == 0 ? "unknown fault" : char.ToLowerInvariant(text[0]) + text[1..];
    }

    /// <summary>A list or table not yet closed.</summary>
    /// <param name="node">The node.</param>
    private sealed class OpenNode(YamlNode node)
    {
        public YamlNode Node { get; } = node;

        public YamlScalar? Key { get; set; }

        public bool AwaitsKey => Node is YamlMap && Key is null;
    }
}
