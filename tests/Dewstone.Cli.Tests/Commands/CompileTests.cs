using System.Text.Json;

namespace Dewstone.Cli.Tests.Commands;

public sealed class CompileTests
{
    private static readonly string[] ClassB = [".png", ".gif", ".glb", ".stl"];

    [Fact]
    public async Task Compile_leaves_a_complete_job_folder_and_nothing_else()
    {
        using SmallYard yard = new();
        Words.Answer answer = await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4");
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        Assert.Equal(["small.job"], Directory.EnumerateFileSystemEntries(yard.In("out")).Select(Path.GetFileName));
        string[] files = [.. SmallYard.Hashes(yard.In("out", "small.job")).Keys];
        foreach (string wanted in new[]
        {
            "job.json", "manifest.json", "predicted.vti", "estimate.json", "findings.sarif", "sequence.csv", "layers.gif", "unit.png", "cutaway.png",
            "voids.png", "predicted.glb", "predicted.stl", "target.stl", "report.html",
            "doses/layer-002.csv", "doses/layer-003.csv", "doses/layer-004.csv", "layers/layer-001.png", "layers/layer-004.png",
        })
        {
            Assert.Contains(wanted, files);
        }

        Assert.DoesNotContain("doses/layer-001.csv", files); // the loose layer below the unit
    }

    [Fact]
    public async Task Manifest_lists_every_other_file_with_its_hash_and_the_water_of_the_tables()
    {
        using SmallYard yard = new();
        await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet");
        string job = yard.In("out", "small.job");
        using JsonDocument manifest = JsonDocument.Parse(await File.ReadAllTextAsync(Path.Combine(job, "manifest.json")));
        Dictionary<string, string> listed = manifest.RootElement.GetProperty("files").EnumerateArray()
            .ToDictionary(f => f.GetProperty("path").GetString()!, f => f.GetProperty("sha256").GetString()!.ToUpperInvariant());
        SortedDictionary<string, string> found = SmallYard.Hashes(job);
        found.Remove("manifest.json");
        Assert.Equal(found, new SortedDictionary<string, string>(listed, StringComparer.Ordinal));

        long centi = 0;
        foreach (string table in Directory.EnumerateFiles(Path.Combine(job, "doses")))
        {
            foreach (string row in (await File.ReadAllLinesAsync(table)).Skip(1))
            {
                centi += (long)Math.Round(decimal.Parse(row.Split(',')[9], System.Globalization.CultureInfo.InvariantCulture) * 100m);
            }
        }

        Assert.Equal(centi / 100m, manifest.RootElement.GetProperty("totals").GetProperty("water_ml").GetDecimal());
    }

    [Fact]
    public async Task Compile_gives_the_same_bytes_again_with_other_threads_and_from_another_folder()
    {
        using SmallYard yard = new();
        await Words.Run("compile", yard.UnitFile, "-o", yard.In("a"), "--cells", "4", "--quiet", "--threads", "1");
        await Words.Run("compile", yard.UnitFile, "-o", yard.In("b"), "--cells", "4", "--quiet", "--threads", "2");
        string relative = Path.GetRelativePath(Directory.GetCurrentDirectory(), yard.UnitFile);
        await Words.Run("compile", relative, "-o", yard.In("c"), "--cells", "4", "--quiet", "--threads", "3");
        SortedDictionary<string, string> first = SmallYard.Hashes(yard.In("a", "small.job"));
        Assert.Equal(first, SmallYard.Hashes(yard.In("b", "small.job")));
        Assert.Equal(first, SmallYard.Hashes(yard.In("c", "small.job")));
    }

    [Fact]
    public async Task Compile_with_vector_units_masked_gives_the_same_class_A_files()
    {
        using SmallYard yard = new();
        await RealProgram.RunAsync([], "compile", yard.UnitFile, "-o", yard.In("a"), "--cells", "4", "--quiet");
        (string, string)[] masked =
        [
            ("GLIBC_TUNABLES", "glibc.cpu.hwcaps=-FMA,-AVX2"), ("DOTNET_EnableAVX2", "0"), ("DOTNET_EnableAVX512", "0"),
        ];
        await RealProgram.RunAsync(masked, "compile", yard.UnitFile, "-o", yard.In("b"), "--cells", "4", "--quiet");
        Assert.Equal(ClassA(yard.In("a", "small.job")), ClassA(yard.In("b", "small.job")));
    }

    [Fact]
    public async Task Held_job_has_no_doses_and_release_prints_it()
    {
        using SmallYard yard = new();
        string strict = yard.Write("strict.unit.yaml", SmallYard.Unit.Replace("max: 40 kg", "max: 5 kg"));
        await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet");
        File.Move(strict, yard.UnitFile, overwrite: true);

        Words.Answer held = await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4");
        Assert.Equal(ExitCode.No, held.Code);
        Assert.Contains("HELD", held.Output, StringComparison.Ordinal);
        Assert.Equal(["small.held.job", "small.superseded.job"], Directory.EnumerateFileSystemEntries(yard.In("out")).Select(Path.GetFileName).Order());
        Assert.False(Directory.Exists(yard.In("out", "small.held.job", "doses")));
        Assert.False(File.Exists(yard.In("out", "small.held.job", "sequence.csv")));

        string code = held.Output.Split('\n').First(l => l.Contains(": error DW", StringComparison.Ordinal)).Split("error ")[1][..6];
        Words.Answer released = await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--accept", $"{code}=crane was hired");
        Assert.True(released.Code == ExitCode.Done, released.Output);
        Assert.True(File.Exists(yard.In("out", "small.job", "sequence.csv")));
        Assert.Contains("crane was hired", await File.ReadAllTextAsync(yard.In("out", "small.job", "manifest.json")), StringComparison.Ordinal);
        Assert.Contains("crane was hired", await File.ReadAllTextAsync(yard.In("out", "small.job", "findings.sarif")), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Faulty_description_ends_with_2_names_line_and_column_and_writes_nothing()
    {
        using SmallYard yard = new();
        yard.Write("small.unit.yaml", SmallYard.Unit.Replace("60 mm", "60").Replace("rounding: 20 mm", "ronding: 20 mm"));
        Words.Answer answer = await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Matches(@"small\.unit\.yaml:7:1: error DW1[0-9]{3}: .*ronding", answer.Output);
        Assert.Contains("rounding", answer.Output, StringComparison.Ordinal);
        Assert.Matches(@"small\.unit\.yaml:12:25: error DW1[0-9]{3}: ", answer.Output);
        Assert.False(Directory.Exists(yard.In("out")));
    }

    [Fact]
    public async Task Command_line_wins_over_tonight_and_tonight_over_the_unit()
    {
        using SmallYard yard = new();
        yard.Write("tonight.printer.yaml", SmallYard.Printer.Replace("Small printer", "Night printer").Replace("spreading: 50 s", "spreading: 60 s"));
        yard.Write("word.printer.yaml", SmallYard.Printer.Replace("Small printer", "Word printer").Replace("spreading: 50 s", "spreading: 70 s"));
        string night = yard.Write("cold.tonight.yaml", "kind: tonight\nversion: 1\nprinter: tonight.printer.yaml\n");
        Assert.Equal(50.0, await Spreading(yard));
        Assert.Equal(60.0, await Spreading(yard, "--tonight", night));
        Assert.Equal(70.0, await Spreading(yard, "--tonight", night, "--printer", yard.In("word.printer.yaml")));
    }

    [Fact]
    public async Task Check_writes_nothing_and_its_json_fits_the_stored_schema()
    {
        using SmallYard yard = new();
        string[] before = [.. Directory.EnumerateFileSystemEntries(yard.Folder)];
        string broken = yard.Write("broken.unit.yaml", "kind: unit\nversion: 1\n");
        Words.Answer answer = await Words.Run("check", yard.UnitFile, broken, "--cells", "4", "--json", "--quiet");
        File.Delete(broken);
        Assert.Equal(before, Directory.EnumerateFileSystemEntries(yard.Folder));
        Assert.Equal((ExitCode.InputAtFault, ""), (answer.Code, answer.Error));
        Repository.AssertValid("check.schema.json", answer.Output);
        using JsonDocument document = JsonDocument.Parse(answer.Output);
        JsonElement units = document.RootElement.GetProperty("units");
        Assert.Equal(0, units[0].GetProperty("exit_code").GetInt32());
        Assert.Equal(2, units[1].GetProperty("exit_code").GetInt32());
        Assert.NotEqual(0, units[1].GetProperty("findings").GetArrayLength());
    }

    [Fact]
    public async Task Check_of_the_drawing_reports_shape_faults_without_wetting()
    {
        using SmallYard yard = new();
        yard.Write("small.unit.yaml", SmallYard.Unit.Replace("x: 125 mm, z: 75 mm", "x: 125 mm, z: 475 mm"));
        Words.Answer answer = await Words.Run("check", "--drawing", yard.UnitFile);
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Matches(@"small\.unit\.yaml:1[01]:[0-9]+: error DW2[0-9]{3}: ", answer.Output);
        Assert.DoesNotContain("wetting", answer.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sarif_file_holds_the_findings_of_all_units()
    {
        using SmallYard yard = new();
        string broken = yard.Write("broken.unit.yaml", "kind: unit\nversion: 1\n");
        await Words.Run("check", yard.UnitFile, broken, "--cells", "4", "--quiet", "--sarif", yard.In("all.sarif"));
        using JsonDocument sarif = JsonDocument.Parse(await File.ReadAllTextAsync(yard.In("all.sarif")));
        Assert.Equal("2.1.0", sarif.RootElement.GetProperty("version").GetString());
        Assert.NotEqual(0, sarif.RootElement.GetProperty("runs")[0].GetProperty("results").GetArrayLength());
    }

    private static SortedDictionary<string, string> ClassA(string folder)
    {
        SortedDictionary<string, string> hashes = SmallYard.Hashes(folder);
        foreach (string picture in hashes.Keys.Where(k => ClassB.Contains(Path.GetExtension(k))).ToArray())
        {
            hashes.Remove(picture);
        }

        hashes.Remove("manifest.json"); // holds the hashes of the pictures too
        Assert.True(hashes.Count >= 8, string.Join(' ', hashes.Keys));
        return hashes;
    }

    private static async Task<double> Spreading(SmallYard yard, params string[] more)
    {
        Words.Answer answer = await Words.Run(["compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--quiet", .. more]);
        Assert.True(answer.Code == ExitCode.Done, answer.Output);
        string first = (await File.ReadAllLinesAsync(yard.In("out", "small.job", "sequence.csv")))[1];
        return double.Parse(first.Split(',')[7], System.Globalization.CultureInfo.InvariantCulture);
    }
}
