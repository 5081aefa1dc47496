using Dewstone.Cli.Rendering;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Tests.Rendering;

/// <summary>A fault in every row is told often enough to be understood, and not ten thousand times.</summary>
public sealed class FindingTextTests
{
    [Fact]
    public void Many_findings_alike_are_cut_short_with_their_number()
    {
        string[] lines = FindingText.Of([.. Rows("DW1", "a.csv", 21), .. Rows("DW2", "a.csv", 20), .. Rows("DW1", "b.csv", 4)], colour: false, quiet: false).Split('\n');

        Assert.Equal(20, lines.Count(line => line.StartsWith("a.csv:", StringComparison.Ordinal) && line.Contains(" DW1: wrong", StringComparison.Ordinal)));
        Assert.Equal(20, lines.Count(line => line.Contains("error DW2: wrong", StringComparison.Ordinal)));
        Assert.Equal(4, lines.Count(line => line.StartsWith("b.csv:", StringComparison.Ordinal)));
        Assert.Equal("a.csv: 1 more like the 20 of error DW1 above; --json lists all", Assert.Single(lines, line => line.Contains("--json", StringComparison.Ordinal)));
    }

    [Fact]
    public void Findings_of_other_levels_are_counted_apart_and_notes_left_out_when_quiet()
    {
        Diagnostic[] both = [.. Rows("DW1", "a.csv", 20), .. Rows("DW1", "a.csv", 30).Select(finding => finding with { Severity = Severity.Note })];

        Assert.Contains("a.csv: 10 more like the 20 of note DW1 above", FindingText.Of(both, colour: false, quiet: false), StringComparison.Ordinal);
        Assert.DoesNotContain("more like", FindingText.Of(both, colour: false, quiet: true), StringComparison.Ordinal);
    }

    private static IEnumerable<Diagnostic> Rows(string code, string file, int count) =>
        Enumerable.Range(1, count).Select(row => new Diagnostic { Code = code, Severity = Severity.Error, Message = "wrong", Remedy = "mend it", Location = new SourceLocation(file, row, 1) });
}
