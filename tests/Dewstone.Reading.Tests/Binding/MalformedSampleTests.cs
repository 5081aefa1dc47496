using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading.Tests.Binding;

/// <summary>
/// Slips that people make, each put into a sample file by hand. A row: the text that is replaced, what stands there instead (with
/// <c>^</c> before the character the finding must point at), the code and words of the remedy. Nothing else may be found.
/// </summary>
public sealed class MalformedSampleTests
{
    [Theory]
    [InlineData("kind: unit\n", "kind: ^mix\n", "DW1009", "write `kind: unit`")]
    [InlineData("kind: unit\n", "kind: ^reef\n", "DW1009", "write `kind: unit`")]
    [InlineData("kind: unit\n", "kind: ^Unit\n", "DW1009", "write `kind: unit`")]
    [InlineData("kind: unit\n", "^", "DW1009", "write `kind: unit`")]
    [InlineData("version: 1\n", "version: ^2\n", "DW1010", "needs a later release")]
    [InlineData("version: 1\n", "version: ^1.0\n", "DW1010", "write `version: 1`")]
    [InlineData("version: 1\n", "version: ^one\n", "DW1010", "write `version: 1`")]
    [InlineData("rounding: 50 mm ", "rounding: ^20,5 mm ", "DW1018", "as in `20.5 mm`")]
    [InlineData("rounding: 50 mm ", "rounding: ^1,050 mm ", "DW1018", "no commas between digits")]
    [InlineData("rounding: 50 mm ", "rounding: ^1,000,050 mm ", "DW1018", "no commas between digits")]
    [InlineData("rounding: 50 mm ", "rounding: ^050 mm ", "DW1018", "without leading zeros")]
    [InlineData("rounding: 50 mm ", "rounding: ^.5 mm ", "DW1018", "a 0 before the decimal point")]
    [InlineData("rounding: 50 mm ", "rounding: ^5. mm ", "DW1018", "a digit after the point")]
    [InlineData("rounding: 50 mm ", "rounding: ^1 050 mm ", "DW1018", "without spaces")]
    [InlineData("rounding: 50 mm ", "rounding: ^1_050 mm ", "DW1018", "without marks")]
    [InlineData("rounding: 50 mm ", "rounding: ^1.000.50 mm ", "DW1018", "one decimal point")]
    [InlineData("rounding: 50 mm ", "rounding: ^fifty mm ", "DW1018", "in digits")]
    [InlineData("rounding: 50 mm ", "rounding: ^NaN mm ", "DW1018", "in digits")]
    [InlineData("rounding: 50 mm ", "rounding: ^.inf ", "DW1018", "a length is due here, in mm")]
    [InlineData("rounding: 50 mm ", "rounding: ^-.inf mm ", "DW1018", "a length is due here")]
    [InlineData("rounding: 50 mm ", "rounding: ^Infinity mm ", "DW1018", "a length is due here")]
    [InlineData("rounding: 50 mm ", "rounding: ^1e400 mm ", "DW1018", "smaller number")]
    [InlineData("rounding: 50 mm ", "rounding: ^50 ", "DW1016", "the one that is meant: mm, cm, m")]
    [InlineData("rounding: 50 mm ", "rounding: ^50 MM ", "DW1017", "did you mean `mm`?")]
    [InlineData("rounding: 50 mm ", "rounding: ^50 kg ", "DW1017", "write it in mm, cm, m, um, in, ft")]
    [InlineData("rounding: 50 mm ", "rounding: ^2\" ", "DW1017", "write it in mm")]
    [InlineData("rounding: 50 mm ", "rounding: ^50mm2 ", "DW1017", "write it in mm")]
    [InlineData("rounding: 50 mm ", "rounding: ^-50 mm ", "DW1019", "from 0 mm to 5 m")]
    [InlineData("rounding: 50 mm ", "rounding: ^460 mm ", "DW1029", "at most 450 mm")]
    [InlineData("rounding: 50 mm ", "rounding: ^[50 mm] ", "DW1013", "write it as")]
    [InlineData("rounding: 50 mm ", "^rounding: ", "DW1012", "or delete the key")]
    [InlineData("rounding: 50 mm ", "^rounding: null ", "DW1012", "or delete the key")]
    [InlineData("rounding: 50 mm ", "^roundig: 50 mm ", "DW1011", "did you mean `rounding`?")]
    [InlineData("rounding: 50 mm ", "^Rounding: 50 mm ", "DW1011", "did you mean `rounding`?")]
    [InlineData("rounding: 50 mm ", "^<<: 50 mm ", "DW1011", "its keys are name, mix")]
    [InlineData("blend: 25 mm ", "^rounding: 25 mm ", "DW1006", "the first is on line")]
    [InlineData("name: Wrack block", "name: ^\"\"", "DW1024", "a name of up to 80 characters")]
    [InlineData("name: Wrack block", "name: ^\"a\\u0007b\"", "DW1024", "a name of up to 80 characters")]
    [InlineData("name: Wrack block", "name: ^[Wrack, block]", "DW1013", "write it as")]
    [InlineData("box: [900 mm, 900 mm, 900 mm]", "box: ^[900 mm, 900 mm]", "DW1022", "write 3 values")]
    [InlineData("box: [900 mm, 900 mm, 900 mm]", "box: ^900 mm", "DW1013", "[900 mm, 900 mm, 900 mm]")]
    [InlineData("box: [900 mm, 900 mm, 900 mm]", "box: [900 mm, ^900 m, 900 mm]", "DW1019", "20 mm to 20 m")]
    [InlineData("box: [900 mm, 900 mm, 900 mm]", "box: ^{x: 900 mm, y: 900 mm, z: 900 mm}", "DW1013", "[900 mm, 900 mm, 900 mm]")]
    [InlineData("length: [80 mm, 250 mm]", "length: ^[250 mm, 80 mm]", "DW1028", "the smaller value first")]
    [InlineData("faces: [sides, top], seed: 7", "faces: [^side, top], seed: 7", "DW1020", "did you mean `sides`?")]
    [InlineData("faces: [sides, top], seed: 7", "faces: ^sides, seed: 7", "DW1013", "[sides, top]")]
    [InlineData("seed: 7}", "seed: ^-7}", "DW1019", "from 0 to 9007199254740991")]
    [InlineData("seed: 7}", "seed: ^7.5}", "DW1021", "a whole number")]
    [InlineData("seed: 7}", "seed: ^1e3}", "DW1021", "a whole number")]
    [InlineData("seed: 7}", "seed: ^\"7\"}", "DW1013", "write it as `7`")]
    [InlineData("along: x\n", "along: ^w\n", "DW1020", "`x`, `y`, `z`")]
    [InlineData("along: x\n", "along: x\n    ^path: [[0 m, 0 m, 0 m], [1 m, 1 m, 1 m]]\n", "DW1014", "delete `path`")]
    [InlineData("at: {y: 450 mm, z: 270 mm}", "at: {x: ^0 mm, y: 450 mm, z: 270 mm}", "DW1035", "`y` and `z`")]
    [InlineData("at: {y: 450 mm, z: 270 mm}", "at: ^{y: 450 mm}", "DW1035", "`y` and `z`")]
    [InlineData("section: {width: 340 mm, height: 300 mm, rounding: 40 mm}", "section: {width: 340 mm, height: 300 mm, rounding: ^160 mm}",
        "DW1029", "at most 150 mm")]
    [InlineData("section: {width: 340 mm, height: 300 mm, rounding: 40 mm}", "section: ^{rounding: 40 mm}", "DW1015", "`width: 340 mm`")]
    [InlineData("section: {width: 340 mm, height: 300 mm, rounding: 40 mm}", "section: {diameter: 340 mm, ^rounding: 40 mm}", "DW1014",
        "delete `rounding`")]
    [InlineData("name: north-south", "name: ^east-west", "DW1025", "give each its own")]
    [InlineData("name: niches", "name: ^north-south", "DW1025", "give each its own")]
    [InlineData("count: 18", "count: ^0", "DW1019", "from 1 to 10000")]
    [InlineData("count: 18", "count: ^017", "DW1018", "without leading zeros")]
    [InlineData("diameter: [110 mm, 160 mm]", "diameter: ^[160 mm, 110 mm]", "DW1028", "the smaller value first")]
    [InlineData("between: {z: [500 mm, 900 mm]}", "between: {z: ^[900 mm, 500 mm]}", "DW1028", "the smaller value first")]
    [InlineData("faces: [sides, top], between", "faces: [sides, top], ^inside: true, between", "DW1014", "delete `inside`")]
    [InlineData("faces: [sides, top], between", "inside: ^false, between", "DW1015", "faces: [sides, top]")]
    [InlineData("lifting: {by: straps, lines: [{along: y, x: 200 mm}", "lifting: {by: straps, lines: [{along: y, ^y: 200 mm, x: 200 mm}",
        "DW1014", "delete `y`")]
    [InlineData("lifting: {by: straps, lines:", "lifting: {by: ^crane, lines:", "DW1020", "`straps`, `inserts`")]
    [InlineData("sling_angle: 60 deg", "sling_angle: ^60 grad", "DW1017", "write it in deg")]
    [InlineData("mass: {max: 1150 kg}", "mass: ^1150 kg", "DW1013", "{max: 1400 kg}")]
    [InlineData("mass: {max: 1150 kg}", "mass: {^min: 1150 kg}", "DW1011", "its keys are max", "DW1012")]
    [InlineData("water_cement: {min: 0.25, max: 0.60, share: 95 %}", "water_cement: {min: 0.60, max: ^0.25, share: 95 %}", "DW1028",
        "exchange the two")]
    [InlineData("water_cement: {min: 0.25, max: 0.60, share: 95 %}", "water_cement: {min: 0.25, max: 0.60, share: ^0.95}", "DW1016",
        "the one that is meant: %")]
    [InlineData("loose_pieces: {max: 0}", "loose_pieces: {max: ^0.5}", "DW1021", "a whole number")]
    [InlineData("  - name: foot\n", "  - name: foot\n    ^sphere: {centre: [0 m, 0 m, 0 m], diameter: 1 m}\n", "DW1014", "delete `sphere`")]
    [InlineData("size: [900 mm, 900 mm, 100 mm]}", "size: [900 mm, 900 mm, 100 mm], rounding: ^60 mm}", "DW1029", "at most 50 mm")]
    public void Unit(string good, string bad, string code, string remedy, string? also = null) =>
        Try(DescriptionKind.Unit, SampleFiles.Unit, good, bad, code, remedy, also);

    [Theory]
    [InlineData("from: assumed ", "from: ^calibration ", "DW1020", "`calibration` with its file")]
    [InlineData("from: assumed ", "from: ^measured ", "DW1020", "`assumed`")]
    [InlineData("currency: EUR", "currency: ^Euro", "DW1024", "three capital letters")]
    [InlineData("share: 75 %", "share: 70 %", "DW1026", "add up to 100 %")]
    [InlineData("binder: true", "binder: false", "DW1027", "`binder: true`")]
    [InlineData("binder: true", "binder: ^yes", "DW1020", "`true`, `false`")]
    [InlineData("share: 25 %", "share: ^0.25", "DW1016", "the one that is meant: %")]
    [InlineData("price: 0.16 /kg", "price: ^0.16 EUR/kg", "DW1017", "write it in /kg")]
    [InlineData("price: 0.003 /L", "price: ^0.003 /l", "DW1017", "did you mean `/L`?")]
    [InlineData("loose_density: 1700 kg/m3", "loose_density: ^3000 kg/m3", "DW1031", "check the loose density")]
    [InlineData("loose_density: 1700 kg/m3", "loose_density: ^1700 kg/m³", "DW1017", "write it in kg/m3")]
    [InlineData("wetting: {law: power, diffusivity: 3.2e-6 m2/s, exponent: 4,",
        "wetting: {law: power, diffusivity: 3.2e-6 m2/s, exponent: ^13,", "DW1019", "from 1 to 12")]
    [InlineData("wetting: {law: power,", "wetting: {law: ^powr,", "DW1020", "did you mean `power`?")]
    [InlineData("window: 600 s", "window: ^1:30", "DW1018", "90 min for an hour and a half")]
    [InlineData("window: 600 s", "window: ^10 minutes", "DW1017", "write it in s, min, h, d, yr")]
    [InlineData("strength: {law: gel_space_with_air, class: N}",
        "strength: {law: gel_space_with_air, ^measured: [[7 d, 20 degC, 12 MPa]], class: N}", "DW1014", "delete `measured`")]
    [InlineData("strength: {law: gel_space_with_air, class: N}", "strength: {measured: [^[7 d, 12 MPa]], class: N}", "DW1022",
        "write 3 values")]
    [InlineData("name: quartz sand 0-2 mm", "name: ^Portland cement", "DW1025", "give each its own")]
    [InlineData("activation: 5000 K", "activation: ^5000 degC", "DW1017", "write it in K")]
    public void Mix(string good, string bad, string code, string remedy) =>
        Try(DescriptionKind.Mix, SampleFiles.Mix, good, bad, code, remedy);

    [Theory]
    [InlineData("pitch: 50 mm", "pitch: ^50.0005 mm", "DW1030", "write 50")]
    [InlineData("tip_depth: 25 mm", "tip_depth: ^60 mm", "DW1032", "at most 50 mm")]
    [InlineData("least: 2 mL, most: 44 mL", "least: 44 mL, most: ^2 mL", "DW1028", "exchange the two")]
    [InlineData("under: 1 layer", "under: ^1", "DW1016", "the one that is meant: layers")]
    [InlineData("under: 1 layer", "under: ^1.5 layers", "DW1021", "write it as `1 layer`")]
    [InlineData("layer_shift: half pitch", "layer_shift: ^25 mm", "DW1020", "`half pitch`, `none`")]
    [InlineData("flow: 4 mL/s", "flow: ^4 ml/s", "DW1017", "did you mean `mL/s`?")]
    [InlineData("columns: 24", "columns: ^24.5", "DW1021", "a whole number")]
    [InlineData("columns: 24", "columns: ^1e999", "DW1018", "below 1e300")]
    [InlineData("bin: {size: [1.2 m, 1.2 m], height: 1.1 m}", "bin: {size: ^[1.2 m, 1.2 m, 1.1 m]}", "DW1022", "write 2 values", "DW1012")]
    public void Printer(string good, string bad, string code, string remedy, string? also = null) =>
        Try(DescriptionKind.Printer, SampleFiles.Printer, good, bad, code, remedy, also);

    [Theory]
    [InlineData("low: -0.3 m, high: 1.4 m", "low: 1.4 m, high: ^-0.3 m", "DW1028", "exchange the two")]
    [InlineData("design_height: H1/10", "design_height: ^H1/3", "DW1020", "`H1/10`, `Hs`, `Hmax`")]
    [InlineData("design_height: H1/10", "design_height: ^2", "DW1016", "the one that is meant: mm, cm, m")]
    [InlineData("soil: sand, ", "soil: clay, ", "DW1014", "delete `friction_angle`", "DW1012")]
    [InlineData("friction_angle: 30 deg, ", "", "DW1012", "add `friction_angle: 30 deg`")]
    [InlineData("direction: 270 deg", "direction: ^west", "DW1018", "an angle is due here, in deg")]
    [InlineData("direction: 270 deg", "direction: ^-90 deg", "DW1019", "0 deg to 360 deg")]
    [InlineData("salinity: 30", "salinity: ^30 psu", "DW1017", "without unit")]
    [InlineData("predator: {body_depth: 90 mm}", "predator: ^{body_depth: 9 mm}", "DW1028", "exchange the two")]
    public void Site(string good, string bad, string code, string remedy, string? also = null) =>
        Try(DescriptionKind.Site, SampleFiles.Site, good, bad, code, remedy, also);

    [Theory]
    [InlineData("due: 2027-06-30", "due: ^2027-06-31", "DW1023", "as in `2027-03-01`")]
    [InlineData("due: 2027-06-30", "due: ^30.06.2027", "DW1023", "as in `2027-03-01`")]
    [InlineData("due: 2027-06-30", "due: ^2026-06-30", "DW1028", "exchange the two")]
    [InlineData("from: \"18:00\"", "from: ^\"6 pm\"", "DW1023", "as in `\"18:00\"`")]
    [InlineData("days: [mon, ", "days: [^monday, ", "DW1020", "`mon`, `tue`")]
    [InlineData("mark: TS", "mark: ^WB", "DW1025", "give each its own")]
    [InlineData("mark: TS", "mark: ^T-S", "DW1024", "capital letters or digits")]
    [InlineData("anchor: [41.5 N, 30.2 W]", "anchor: [^41.5, 30.2 W]", "DW1016", "the one that is meant: N, S")]
    [InlineData("anchor: [41.5 N, 30.2 W]", "anchor: [^30.2 W, 41.5 N]", "DW1017", "write it in N, S", "DW1017")]
    [InlineData("deck: 40 places", "deck: ^40", "DW1016", "the one that is meant: places")]
    [InlineData("payload: 20 t", "payload: ^20 ton", "DW1017", "write it in kg, g, t, lb")]
    [InlineData("on: 2027-03-08", "^date: 2027-03-08", "DW1011", "its keys are on, mass", "DW1012")]
    public void Order(string good, string bad, string code, string remedy, string? also = null) =>
        Try(DescriptionKind.Order, SampleFiles.Order, good, bad, code, remedy, also);

    [Fact]
    public void Scatter_inside_is_warned_of_and_read()
    {
        string text =
            File.ReadAllText(SampleFiles.Unit).Replace("faces: [sides, top], between", "inside: true, between", StringComparison.Ordinal);

        FileReading<UnitFile> reading = DescriptionReader.UnitText(text, "a.unit.yaml");

        Diagnostic warning = Assert.Single(reading.Diagnostics);
        Assert.Equal(("DW1033", Severity.Warning), (warning.Code, warning.Severity));
        Assert.NotNull(reading.Value);
    }

    [Fact]
    public void All_findings_of_a_file_come_in_one_go_and_in_order()
    {
        const string text =
            "kind: mix\nversion: 1\nnme: a\nfrom: nowhere\ncurrency: eur\nsolids: []\nloose_density: 1700\nliquid: {}\nwetting: 4\n";

        Assert.Equal(
            ["DW1012 1:1", "DW1012 1:1", "DW1011 3:1", "DW1020 4:7", "DW1024 5:11", "DW1022 6:9", "DW1016 7:16", "DW1012 8:9",
                "DW1013 9:10"],
            DescriptionReader.MixText(text,
                "a.mix.yaml").Diagnostics.Select(found => $"{found.Code} {found.Location!.Line}:{found.Location.Column}"));
    }

    private static void Try(DescriptionKind kind, string path, string good, string bad, string code, string remedy, string? also = null)
    {
        string sample = File.ReadAllText(path);
        int at = sample.IndexOf(good, StringComparison.Ordinal);
        Assert.True(at >= 0, $"the sample does not hold `{good}`");
        int mark = bad.IndexOf('^');
        string text = sample[..at] + bad.Replace("^", "", StringComparison.Ordinal) + sample[(at + good.Length)..];

        IReadOnlyList<Diagnostic> findings = Kinds.Findings(kind, text);

        Assert.Equal(new[] { code, also }.OfType<string>().Order(), findings.Select(finding => finding.Code).Order());
        Diagnostic found = findings.First(finding => finding.Code == code);
        Assert.Equal(Severity.Error, found.Severity);
        Assert.Contains(remedy, found.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', found.Message + found.Remedy);
        if (mark >= 0)
        {
            int place = at + mark;
            int line = text[..place].Count(c => c == '\n') + 1;
            Assert.Equal((line, place - text.LastIndexOf('\n', Math.Max(0, place - 1))), (found.Location!.Line, found.Location.Column));
        }
    }
}
