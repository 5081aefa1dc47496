using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Tests;

/// <summary>Where in a job's files a finding raised by key lies, and how its files are named in reports.</summary>
public sealed class SourceMapsTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.WithSamples();

    private string Unit => folder.At("units/wrack-block.unit.yaml");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Finding_raised_by_key_is_placed_at_its_line()
    {
        SourceMaps sources = DescriptionReader.ReadJob(Unit).Sources;

        SourceLocation At(DescriptionKind kind, string path) => sources.Place(ShapeFinding(new KeyPath(kind, path))).Location!;

        Assert.Equal(new SourceLocation(Unit, 8, 6), At(DescriptionKind.Unit, "box"));
        Assert.Equal(new SourceLocation(Unit, 8, 15), At(DescriptionKind.Unit, "box[1]"));
        Assert.Equal(new SourceLocation(Unit, 13, 5), At(DescriptionKind.Unit, "tunnels[0]"));
        Assert.Equal(new SourceLocation(Unit, 16, 22), At(DescriptionKind.Unit, "tunnels[0].section.width"));
        Assert.Equal(new SourceLocation(Unit, 16, 14), At(DescriptionKind.Unit, "tunnels[0].section.diameter"));
        Assert.Equal(new SourceLocation(Unit, 2, 1), At(DescriptionKind.Unit, "place.turn"));
        Assert.Equal(folder.At("printers/yard.printer.yaml"), Path.GetFullPath(At(DescriptionKind.Printer, "needle.most").File));
    }

    [Fact]
    public void Key_of_a_file_that_was_not_read_gives_no_place()
    {
        Assert.Null(DescriptionReader.ReadJob(Unit).Sources.Place(ShapeFinding(new KeyPath(DescriptionKind.Tonight,
            "mix_batch"))).Location);
    }

    [Fact]
    public void Files_are_named_below_the_root_for_reports()
    {
        SourceMaps sources = DescriptionReader.ReadJob(Unit).Sources;

        Assert.Equal("units/wrack-block.unit.yaml", sources.BelowRoot(Unit));
        Assert.Equal("mixes/estuary.mix.yaml", sources.BelowRoot(sources.Find(DescriptionKind.Mix)!.File));
    }

    private static Diagnostic ShapeFinding(KeyPath key) =>
        new() { Code = "DW2000", Severity = Severity.Error, Message = "a", Remedy = "b", Key = key };
}
