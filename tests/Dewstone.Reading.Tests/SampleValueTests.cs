using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Yaml;

namespace Dewstone.Reading.Tests;

/// <summary>Holds every value of the manual's sample files against what it must be in SI units.</summary>
public sealed class SampleValueTests
{
    public static TheoryData<DescriptionKind> SampleKinds => [.. Kinds.All.Where(kind => kind != DescriptionKind.Tonight)];

    /// <summary>The expected values stand in <c>Samples/expected</c> and were worked out by hand from the text.</summary>
    [Theory]
    [MemberData(nameof(SampleKinds))]
    public void Sample_is_bound_value_by_value(DescriptionKind kind)
    {
        (object? value, IReadOnlyList<Diagnostic> findings) = Kinds.Read(kind, File.ReadAllText(Sample(kind)));

        Assert.Empty(findings);
        object record = value switch
        {
            UnitFile unit => unit.Unit,
            PrinterFile printer => printer.Printer,
            _ => value!,
        };
        string expected = Path.Combine(AppContext.BaseDirectory, "Samples", "expected", kind.ToString().ToLowerInvariant() + ".txt");
        Assert.Equal(File.ReadAllLines(expected), RecordText.Lines(record));
    }

    [Fact]
    public void Unit_sample_names_its_files()
    {
        UnitFile unit = DescriptionReader.ReadUnit(SampleFiles.Unit).Value!;

        Assert.Equal("../mixes/estuary.mix.yaml", unit.Mix);
        Assert.Equal("../printers/yard.printer.yaml", unit.Printer);
        Assert.Equal("../sites/wrackline-shoal.site.yaml", unit.Site);
        Assert.Equal("yard.needles.csv", DescriptionReader.ReadPrinter(SampleFiles.Printer).Value!.Needles);
    }

    /// <summary>A value that could be changed without changing the record or raising a finding would have been passed over.</summary>
    [Theory]
    [MemberData(nameof(SampleKinds))]
    public void No_value_of_the_sample_is_passed_over(DescriptionKind kind)
    {
        string text = File.ReadAllText(Sample(kind));
        IReadOnlyList<string> unchanged = RecordText.Lines(Kinds.Read(kind, text).Value!);
        List<YamlScalar> values = [];
        Collect(YamlTreeReader.Read(text, "a", new DiagnosticBag())!, values);
        Assert.True(values.Count > 20);

        foreach (YamlScalar value in values)
        {
            (object? changed, IReadOnlyList<Diagnostic> findings) = Kinds.Read(kind, Changed(text, value));
            Assert.True(findings.Count > 0 || !unchanged.SequenceEqual(RecordText.Lines(changed!)), $"{value.Text} at {value.Place}");
        }
    }

    private static string Sample(DescriptionKind kind) => kind switch
    {
        DescriptionKind.Unit => SampleFiles.Unit,
        DescriptionKind.Mix => SampleFiles.Mix,
        DescriptionKind.Printer => SampleFiles.Printer,
        DescriptionKind.Site => SampleFiles.Site,
        _ => SampleFiles.Order,
    };

    private static void Collect(YamlNode node, List<YamlScalar> values)
    {
        switch (node)
        {
            case YamlScalar scalar:
                values.Add(scalar);
                break;
            case YamlList list:
                list.Items.ForEach(item => Collect(item, values));
                break;
            case YamlMap map:
                foreach (YamlEntry entry in map.Entries)
                {
                    Collect(entry.Value, values);
                }

                break;
            default:
                throw new NotSupportedException(node.InWords);
        }
    }

    // The last digit of the first number goes one up or down; a word gets a letter more.
    private static string Changed(string text, YamlScalar value)
    {
        string[] lines = text.Split('\n');
        string line = lines[value.Place.Line - 1];
        int start = line.IndexOf(value.Text, value.Place.Column - 1, StringComparison.Ordinal);
        int digits = value.Text.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or '-').Count();
        string changed = digits == 0 ? value.Text + "x" : value.Text[..(digits - 1)] + (value.Text[digits - 1] == '1' ? '2' : '1') + value.Text[digits..];
        lines[value.Place.Line - 1] = line[..start] + changed + line[(start + value.Text.Length)..];
        return string.Join('\n', lines);
    }
}
