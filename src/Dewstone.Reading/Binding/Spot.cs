using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Binding;

/// <summary>A value of the file under way: the node, its path and the place to point at.</summary>
internal readonly struct Spot
{
    private readonly BindingRun run;

    /// <summary>A spot; its place is noted in the source map.</summary>
    /// <param name="run">Run it belongs to.</param>
    /// <param name="node">The value.</param>
    /// <param name="key">Its path.</param>
    /// <param name="place">Where to point.</param>
    public Spot(BindingRun run, YamlNode node, KeyPath key, TextPlace place)
    {
        this.run = run;
        Node = node;
        Key = key;
        Place = place;
        run.Map.Set(key.Path, place.Line, place.Column);
    }

    /// <summary>The value.</summary>
    public YamlNode Node { get; }

    /// <summary>Its path.</summary>
    public KeyPath Key { get; }

    /// <summary>Where to point.</summary>
    public TextPlace Place { get; }

    /// <summary>Findings of level error so far in the whole file.</summary>
    public int ErrorCount => run.ErrorCount;

    /// <summary>The spot of an entry of this table.</summary>
    /// <param name="entry">Entry.</param>
    /// <returns>The spot of its value.</returns>
    public Spot Entry(YamlEntry entry) => new(run, entry.Value, Key.Key(entry.Key), entry.Place);

    /// <summary>The spot of an item of this list.</summary>
    /// <param name="index">Index from 0.</param>
    /// <param name="item">Item.</param>
    /// <returns>The spot of the item.</returns>
    public Spot Item(int index, YamlNode item) => new(run, item, Key.Item(index), item.Place);

    /// <summary>Adds a finding here.</summary>
    /// <param name="finding">Entry of the catalogue.</param>
    /// <param name="message">What was found.</param>
    /// <param name="remedy">What to do.</param>
    public void Report(FindingKind finding, string message, string remedy) => run.Report(finding, Key, Place, message, remedy);

    /// <summary>Adds a finding here.</summary>
    /// <param name="fault">What is wrong with the text.</param>
    public void Report(TextFault fault) => Report(fault.Kind, fault.Message, fault.Remedy);

    /// <summary>Adds a finding at a key of this table.</summary>
    /// <param name="finding">Entry of the catalogue.</param>
    /// <param name="place">Where.</param>
    /// <param name="key">Key name.</param>
    /// <param name="message">What was found.</param>
    /// <param name="remedy">What to do.</param>
    public void ReportAt(FindingKind finding, TextPlace place, string key, string message, string remedy) =>
        run.Report(finding, Key.Key(key), place, message, remedy);

    /// <summary>Adds a finding at a value below this one, or at the nearest that stands in the file.</summary>
    /// <param name="finding">Entry of the catalogue.</param>
    /// <param name="below">Path from here, e.g. <c>section.rounding</c>.</param>
    /// <param name="message">What was found.</param>
    /// <param name="remedy">What to do.</param>
    public void ReportBelow(FindingKind finding, string below, string message, string remedy)
    {
        KeyPath path = below.StartsWith('[') ? Key with { Path = Key.Path + below } : Key.Key(below);
        SourceLocation found = run.Map.Find(path.Path);
        run.Report(finding, path, new TextPlace(found.Line, found.Column), message, remedy);
    }
}
