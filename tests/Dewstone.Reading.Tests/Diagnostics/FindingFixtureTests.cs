using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Tables;

namespace Dewstone.Reading.Tests.Diagnostics;

/// <summary>For each code of descriptions and files: a text or file that raises it, and a page that explains it.</summary>
public sealed class FindingFixtureTests : IDisposable
{
    private const string Unit = "kind: unit\nversion: 1\nname: a\nbox: [900 mm, 900 mm, 900 mm]\n";
    private const string Needles = NeedleTableReader.Header + "\n1,1,A,1,ok,1,0,4,2\n";

    private static readonly Dictionary<string, string> UnitTexts = new()
    {
        ["DW1001"] = Unit + "rounding: \"50 mm\n",
        ["DW1002"] = Unit + "place:\n\tturn: 0 deg\n",
        ["DW1003"] = Unit + "rounding: &r 50 mm\nblend: *r\n",
        ["DW1004"] = "box: " + new string('[', 40),
        ["DW1005"] = "box: [" + string.Concat(Enumerable.Repeat("1,", 100_001)) + "]\n",
        ["DW1006"] = Unit + "name: b\n",
        ["DW1007"] = Unit + "---\n" + Unit,
        ["DW1008"] = "# nothing\n",
        ["DW1009"] = "kind: cement\nversion: 1\n",
        ["DW1010"] = "kind: unit\nversion: 2\n",
        ["DW1011"] = Unit + "roundig: 50 mm\n",
        ["DW1012"] = "kind: unit\nversion: 1\nname: a\n",
        ["DW1013"] = Unit + "rounding: [50 mm]\n",
        ["DW1014"] = Unit + "keep: [{name: a, sphere: {centre: [0 m, 0 m, 0 m], diameter: 1 m}, block: {centre: [0 m, 0 m, 0 m], size: [1 m, 1 m, 1 m]}}]\n",
        ["DW1015"] = Unit + "keep: [{name: a}]\n",
        ["DW1016"] = Unit + "rounding: 50\n",
        ["DW1017"] = Unit + "rounding: 50 kg\n",
        ["DW1018"] = Unit + "rounding: 20,5 mm\n",
        ["DW1019"] = Unit + "rounding: 50 m\n",
        ["DW1020"] = Unit + "place: {turn: 45 deg}\n",
        ["DW1021"] = Unit + "require: {loose_pieces: {max: 0.5}}\n",
        ["DW1022"] = Unit + "place: {shift: [0 mm, 0 mm]}\n",
        ["DW1024"] = "kind: unit\nversion: 1\nname: \"\"\nbox: [900 mm, 900 mm, 900 mm]\n",
        ["DW1025"] = Unit + "tunnels: [{name: a, along: x, at: {y: 0 m, z: 0 m}, section: {diameter: 1 m}}, {name: a, along: y, at: {x: 0 m, z: 0 m}, section: {diameter: 1 m}}]\n",
        ["DW1028"] = Unit + "require: {water_cement: {min: 0.6, max: 0.2, share: 95 %}}\n",
        ["DW1029"] = Unit + "rounding: 500 mm\n",
        ["DW1033"] = Unit + "cavities: [{name: a, scatter: {count: 5, diameter: [100 mm, 120 mm], gap: 50 mm, inside: true, seed: 1}}]\n",
        ["DW1035"] = Unit + "tunnels: [{name: a, along: x, at: {x: 0 m, y: 0 m, z: 0 m}, section: {diameter: 1 m}}]\n",
    };

    private readonly TemporaryFolder folder = TemporaryFolder.WithSamples();

    public static TheoryData<string> Codes => [.. DescriptionFindings.All.Concat(NeedleFindings.All).Concat(FileFindings.All).Select(kind => kind.Code).Where(IsOurs)];

    public void Dispose() => folder.Dispose();

    [Theory]
    [MemberData(nameof(Codes))]
    public void Code_is_raised_by_its_fixture_alone_with_place_and_remedy(string code)
    {
        Diagnostic found = Assert.Single(Raise(code));

        FindingKind kind = DiagnosticCatalogue.Find(code)!;
        Assert.Equal((code, kind.Severity), (found.Code, found.Severity));
        Assert.NotEmpty(found.Message);
        Assert.NotEmpty(found.Remedy);
        Assert.NotNull(found.Location);
    }

    [Theory]
    [MemberData(nameof(Codes))]
    public void Code_is_explained(string code)
    {
        FindingKind kind = DiagnosticCatalogue.Find(code)!;

        Assert.Matches("^[A-Z][^.]*$", kind.Title);
        Assert.All([kind.What, kind.Why, kind.Cure], text => Assert.Matches("(?s)^[A-Z0-9].{30,}[.:a-z]$", text));
    }

    [Fact]
    public void Codes_rise_and_are_not_used_twice()
    {
        foreach (IReadOnlyList<FindingKind> group in new[] { DescriptionFindings.All, FileFindings.All })
        {
            Assert.Equal(group.Select(kind => kind.Code).Distinct().Order(StringComparer.Ordinal), group.Select(kind => kind.Code));
        }
    }

    // Codes from DW8050 on are about job folders and are tried where those are written.
    private static bool IsOurs(string code) => string.CompareOrdinal(code, "DW8050") < 0;

    private IReadOnlyList<Diagnostic> Raise(string code) => code switch
    {
        "DW1023" => Changed(DescriptionKind.Order, SampleFiles.Order, "due: 2027-06-30", "due: 30.06.2027"),
        "DW1026" => Changed(DescriptionKind.Mix, SampleFiles.Mix, "share: 75 %", "share: 70 %"),
        "DW1027" => Changed(DescriptionKind.Mix, SampleFiles.Mix, "binder: true, ", ""),
        "DW1030" => Changed(DescriptionKind.Printer, SampleFiles.Printer, "pitch: 50 mm", "pitch: 50.00001 mm"),
        "DW1031" => Changed(DescriptionKind.Mix, SampleFiles.Mix, "loose_density: 1700", "loose_density: 3000"),
        "DW1032" => Changed(DescriptionKind.Printer, SampleFiles.Printer, "tip_depth: 25 mm", "tip_depth: 60 mm"),
        "DW1034" => Job("mix: ../mixes/estuary.mix.yaml ", ""),
        "DW1040" => DescriptionReader.NeedlesText("column;row\n", "a").Diagnostics,
        "DW1041" => DescriptionReader.NeedlesText(Needles + "1,2\n", "a").Diagnostics,
        "DW1042" => DescriptionReader.NeedlesText(Needles + "1,2,A,1,fine,1,0,4,2\n", "a").Diagnostics,
        "DW1043" => DescriptionReader.NeedlesText(Needles + "1,1,A,1,ok,1,0,4,2\n", "a").Diagnostics,
        "DW1044" => DescriptionReader.NeedlesText(Needles + "9,1,A,1,ok,1,0,4,2\n", "a", new() { Columns = 8, Rows = 8 }).Diagnostics,
        "DW8001" => DescriptionReader.ReadMix(folder.At("no.mix.yaml")).Diagnostics,
        "DW8002" => DescriptionReader.ReadMix(folder.At("mixes")).Diagnostics,
        "DW8003" => Job("../mixes/estuary.mix.yaml", "../../mixes/estuary.mix.yaml"),
        "DW8004" => DescriptionReader.ReadMix(folder.Write("a", new string('#', 5_000_000))).Diagnostics,
        "DW8005" => NotUtf8(),
        "DW8006" =>
            [.. DescriptionReader.ReadJob(folder.At("units/wrack-block.unit.yaml"),
                new ReadOptions { Root = folder.At("no") }).Diagnostics.DistinctBy(finding => finding.Code)],
        _ => DescriptionReader.UnitText(UnitTexts[code], "a").Diagnostics,
    };

    private IReadOnlyList<Diagnostic> NotUtf8()
    {
        File.WriteAllBytes(folder.At("a"), [0x61, 0xFF]);
        return DescriptionReader.ReadMix(folder.At("a")).Diagnostics;
    }

    private IReadOnlyList<Diagnostic> Job(string good, string bad)
    {
        string unit = folder.At("units/wrack-block.unit.yaml");
        folder.Write("units/wrack-block.unit.yaml", File.ReadAllText(unit).Replace(good, bad, StringComparison.Ordinal));
        return DescriptionReader.ReadJob(unit).Diagnostics;
    }

    private static IReadOnlyList<Diagnostic> Changed(DescriptionKind kind, string path, string good, string bad) =>
        Kinds.Findings(kind, File.ReadAllText(path).Replace(good, bad, StringComparison.Ordinal));
}
