using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Binding;
using Dewstone.Reading.Quantities;
using Dewstone.Reading.Schema;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading;

/// <summary>Text of one description file → record: YAML, then <c>kind</c> and <c>version</c>, then the key table.</summary>
internal static class DescriptionBinder
{
    private const int Version = 1;

    /// <summary>Reads a text.</summary>
    /// <typeparam name="T">What the kind describes.</typeparam>
    /// <param name="text">Whole text, without byte order mark.</param>
    /// <param name="file">File as shown in findings.</param>
    /// <param name="kind">Kind that is due.</param>
    /// <param name="table">Its key table.</param>
    /// <returns>The reading.</returns>
    public static FileReading<T> Read<T>(string text, string file, DescriptionKind kind, TableForm<T> table)
        where T : class
    {
        DiagnosticBag findings = new();
        BindingRun run = new(file, kind, findings);
        T? value = null;
        if (YamlTreeReader.Read(text, file, findings) is { } root)
        {
            Spot spot = run.Root(root);
            if (root is YamlMap map ? KindFits(spot, map, kind) : ReportNoTable(spot, kind))
            {
                value = table.TryBind(spot, out T? bound) ? bound : null;
            }
        }

        IReadOnlyList<Diagnostic> sorted = InOrder(findings.Items);
        return new FileReading<T>(findings.HasErrors ? null : value, sorted, run.Map);
    }

    /// <summary>Findings of one file by line and column; those at one place keep their order.</summary>
    /// <param name="findings">Findings.</param>
    /// <returns>The same in order.</returns>
    public static IReadOnlyList<Diagnostic> InOrder(IEnumerable<Diagnostic> findings) =>
        [.. findings.OrderBy(finding => finding.Location?.Line ?? 0).ThenBy(finding => finding.Location?.Column ?? 0)];

    private static bool ReportNoTable(Spot spot, DescriptionKind kind)
    {
        spot.Report(DescriptionFindings.WrongType, $"{spot.Node.InWords} stands here; a description is a table of keys",
            $"begin with `kind: {DescriptionTables.Word(kind)}` and `version: 1`, each on a line of its own");
        return false;
    }

    // A file of another kind or version is not bound: its other findings would be noise.
    private static bool KindFits(Spot spot, YamlMap map, DescriptionKind kind)
    {
        string due = DescriptionTables.Word(kind);
        YamlEntry? kindEntry = map.Find("kind");
        string? word = (kindEntry?.Value as YamlScalar)?.Text;
        bool fits = word == due;
        if (!fits)
        {
            Report(spot, DescriptionFindings.WrongKind, "kind", kindEntry, KindMessage(kindEntry, word, due),
                $"write `kind: {due}`, or name another file");
        }

        YamlEntry? versionEntry = map.Find("version");
        string? version = (versionEntry?.Value as YamlScalar)?.Text;
        if (version != "1")
        {
            string message = versionEntry is null
                ? "`version` is missing"
                : $"`{Quoting.Short(version ?? "")}` is no version of descriptions known here";
            string remedy = long.TryParse(version, out long number) && number > Version
                ? $"version {number} needs a later release of this program; this one reads version 1"
                : "write `version: 1`";
            Report(spot, DescriptionFindings.WrongVersion, "version", versionEntry, message, remedy);
            fits = false;
        }

        return fits;
    }

    private static string KindMessage(YamlEntry? entry, string? word, string due)
    {
        if (entry is null)
        {
            return "`kind` is missing";
        }

        bool known = DescriptionTables.Kinds.Any(kind => DescriptionTables.Word(kind) == word);
        return known
            ? $"this file describes a {word}; a {due} is due here"
            : $"`{Quoting.Short(word ?? "")}` is no kind of description; a {due} is due here";
    }

    private static void Report(Spot spot, FindingKind finding, string key, YamlEntry? entry, string message, string remedy)
    {
        if (entry is null)
        {
            spot.ReportAt(finding, spot.Place, key, message, remedy);
        }
        else
        {
            spot.Entry(entry).Report(new TextFault(finding, message, remedy));
        }
    }
}
