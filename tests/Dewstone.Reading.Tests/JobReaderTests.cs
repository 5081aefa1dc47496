using System.Security.Cryptography;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Reading.Tests;

/// <summary>Files of a job: who wins, where they may lie, what is said when one is missing.</summary>
public sealed class JobReaderTests : IDisposable
{
    private readonly TemporaryFolder folder = TemporaryFolder.WithSamples();

    private string Unit => folder.At("units/wrack-block.unit.yaml");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Inputs_are_named_with_the_hash_of_their_bytes()
    {
        ReadResult result = DescriptionReader.ReadJob(Unit);

        Assert.Equal(
            ["unit wrack-block.unit.yaml", "mix estuary.mix.yaml", "printer yard.printer.yaml", "needles yard.needles.csv",
                "site wrackline-shoal.site.yaml"],
            result.Inputs.Select(input => $"{input.Role} {input.FileName}"));
        InputFile mix = result.Inputs[1];
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(folder.At("mixes/estuary.mix.yaml")))), mix.Sha256);
    }

    [Fact]
    public void Without_a_night_the_temperatures_are_the_usual_ones()
    {
        JobDescription job = DescriptionReader.ReadJob(Unit).Job!;

        Assert.Equal((20.0, 15.0, 1700.0),
            (job.BedTemperature.Celsius, job.CuringTemperature.Celsius, job.LooseDensity.KilogramsPerCubicMetre));
    }

    [Fact]
    public void Command_line_wins_over_tonight_and_tonight_over_the_unit()
    {
        CopyOf("printers/yard.printer.yaml", "printers/night.printer.yaml", "Yard printer", "Night printer");
        CopyOf("printers/yard.printer.yaml", "printers/stated.printer.yaml", "Yard printer", "Stated printer");
        CopyOf("mixes/estuary.mix.yaml", "mixes/stated.mix.yaml", "Estuary mix", "Stated mix");
        CopyOf("sites/wrackline-shoal.site.yaml", "sites/stated.site.yaml", "Wrackline shoal", "Stated site");
        string night = folder.Write("tonight/a.tonight.yaml",
            "kind: tonight\nversion: 1\nprinter: ../printers/night.printer.yaml\nbed_temperature: 11 degC\nloose_density: 1650 kg/m3\n");

        JobDescription byNight = DescriptionReader.ReadJob(Unit, new ReadOptions { Tonight = night }).Job!;
        JobDescription stated = DescriptionReader.ReadJob(Unit, new ReadOptions
        {
            Tonight = night,
            Printer = folder.At("printers/stated.printer.yaml"),
            Mix = folder.At("mixes/stated.mix.yaml"),
            Site = folder.At("sites/stated.site.yaml"),
        }).Job!;

        Assert.Equal(("Night printer", "Estuary mix", "Wrackline shoal"), (byNight.Printer.Name, byNight.Mix.Name, byNight.Site!.Name));
        Assert.Equal((11.0, 15.0, 1650.0),
            (byNight.BedTemperature.Celsius, byNight.CuringTemperature.Celsius, byNight.LooseDensity.KilogramsPerCubicMetre));
        Assert.Equal(("Stated printer", "Stated mix", "Stated site"), (stated.Printer.Name, stated.Mix.Name, stated.Site!.Name));
    }

    [Fact]
    public void Needles_of_the_command_line_win_over_tonights_and_those_over_the_printers()
    {
        const string header = "column,row,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent\n";
        folder.Write("tonight/night.csv", header + "1,1,,,ok,1.1,0,,\n");
        string stated = folder.Write("stated.csv", header + "1,1,,,ok,1.2,0,,\n");
        string night = folder.Write("tonight/a.tonight.yaml", "kind: tonight\nversion: 1\nneedles: night.csv\n");

        double Gain(ReadOptions options) => DescriptionReader.ReadJob(Unit, options).Job!.Needles!.Needles[0].Gain;

        Assert.Equal(1.1, Gain(new ReadOptions { Tonight = night }));
        Assert.Equal(1.2, Gain(new ReadOptions { Tonight = night, Needles = stated }));
        Assert.Equal(1.2, Gain(new ReadOptions { Needles = stated }));
    }

    [Fact]
    public void Missing_file_is_found_at_the_line_that_names_it_with_the_file_that_was_meant()
    {
        Replace("estuary.mix.yaml", "estuari.mix.yaml");

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8001", Unit, 5, 6, "did you mean `estuary.mix.yaml`");
    }

    [Fact]
    public void Missing_file_of_a_missing_folder_is_found()
    {
        Replace("../sites/wrackline", "../places/wrackline");

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8001", Unit, 7, 7, "no such folder either");
    }

    [Fact]
    public void Missing_needles_file_is_found_in_the_printers_file()
    {
        File.Delete(folder.At("printers/yard.needles.csv"));

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8001", folder.At("printers/yard.printer.yaml"), 13, 10, "check the name");
    }

    [Fact]
    public void Missing_unit_and_overrides_are_found_each()
    {
        ReadResult result = DescriptionReader.ReadJob(folder.At("no.unit.yaml"),
            new ReadOptions { Mix = folder.At("no.mix.yaml"), Tonight = folder.At("no.tonight.yaml") });

        Assert.Equal(["DW8001", "DW8001", "DW8001"], result.Diagnostics.Select(finding => finding.Code));
        Assert.Null(result.Job);
    }

    [Theory]
    [InlineData("mix")]
    [InlineData("printer")]
    public void Unit_that_names_no_file_where_one_is_needed_is_found(string role)
    {
        File.WriteAllLines(Unit, File.ReadAllLines(Unit).Where(line => !line.StartsWith(role + ":", StringComparison.Ordinal)));

        AssertOne(DescriptionReader.ReadJob(Unit), "DW1034", Unit, 2, 1, $"--{role}");
    }

    [Fact]
    public void File_outside_the_root_is_refused()
    {
        using TemporaryFolder elsewhere = TemporaryFolder.WithSamples();
        Replace("../mixes/estuary.mix.yaml", $"../../{Path.GetFileName(elsewhere.Path)}/mixes/estuary.mix.yaml");

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8003", Unit, 5, 6, "--root");
        Assert.NotNull(DescriptionReader.ReadJob(Unit, new ReadOptions { Root = Path.GetDirectoryName(folder.Path) }).Job);
    }

    [Fact]
    public void Absolute_path_is_refused()
    {
        Replace("../mixes/estuary.mix.yaml", folder.At("mixes/estuary.mix.yaml"));

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8003", Unit, 5, 6, "relative to this file");
    }

    [Fact]
    public void Link_that_leads_out_of_the_root_is_refused_and_one_within_is_followed()
    {
        using TemporaryFolder elsewhere = TemporaryFolder.WithSamples();
        string mix = folder.At("mixes/estuary.mix.yaml");
        File.Delete(mix);
        File.CreateSymbolicLink(mix, elsewhere.At("mixes/estuary.mix.yaml"));
        AssertOne(DescriptionReader.ReadJob(Unit), "DW8003", Unit, 5, 6, "--root");

        File.Delete(mix);
        File.Copy(elsewhere.At("mixes/estuary.mix.yaml"), folder.At("real.mix.yaml"));
        File.CreateSymbolicLink(mix, "../real.mix.yaml");
        Assert.Equal("Estuary mix", DescriptionReader.ReadJob(Unit).Job?.Mix.Name);
    }

    [Fact]
    public void Folder_that_is_a_link_out_of_the_root_is_refused()
    {
        using TemporaryFolder elsewhere = TemporaryFolder.WithSamples();
        Directory.Delete(folder.At("mixes"), true);
        Directory.CreateSymbolicLink(folder.At("mixes"), elsewhere.At("mixes"));

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8003", Unit, 5, 6, "--root");
    }

    [Fact]
    public void Links_in_a_circle_are_refused()
    {
        string mix = folder.At("mixes/estuary.mix.yaml");
        File.Delete(mix);
        File.CreateSymbolicLink(mix, "other.mix.yaml");
        File.CreateSymbolicLink(folder.At("mixes/other.mix.yaml"), "estuary.mix.yaml");

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8002", Unit, 5, 6, "name the file itself");
    }

    [Fact]
    public void Without_a_mark_the_root_is_the_folder_of_the_file()
    {
        File.Delete(folder.At(".dewstone-root"));

        Assert.Equal(["DW8003", "DW8003", "DW8003"], DescriptionReader.ReadJob(Unit).Diagnostics.Select(finding => finding.Code));
    }

    [Fact]
    public void Root_that_does_not_exist_is_found_once()
    {
        ReadOptions options = new() { Root = folder.At("nowhere"), Site = folder.At("sites/wrackline-shoal.site.yaml") };

        AssertOne(DescriptionReader.ReadJob(Unit, options), "DW8006", folder.At("nowhere"), 0, 0, "--root");
    }

    [Fact]
    public void Folder_in_place_of_a_file_is_refused() =>
        AssertOne(DescriptionReader.ReadJob(folder.At("units")), "DW8002", folder.At("units"), 0, 0, "name a file in it");

    [Fact]
    public void File_without_end_or_too_large_is_refused()
    {
        File.WriteAllBytes(Unit, new byte[5 * 1024 * 1024]);
        AssertOne(DescriptionReader.ReadJob(Unit), "DW8004", Unit, 0, 0, "right file");
        if (File.Exists("/dev/zero"))
        {
            AssertOne(DescriptionReader.ReadJob("/dev/zero"), "DW8004", "/dev/zero", 0, 0, "right file");
        }
    }

    [Fact]
    public void Bytes_that_are_not_UTF8_are_found_at_their_place()
    {
        File.WriteAllBytes(Unit, [.. "kind: unit\nname: caf"u8, 0xE9, .. "\n"u8]);

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8005", Unit, 2, 10, "save it as UTF-8");
    }

    [Fact]
    public void UTF16_text_is_refused()
    {
        File.WriteAllText(Unit, "kind: unit\n", System.Text.Encoding.Unicode);

        AssertOne(DescriptionReader.ReadJob(Unit), "DW8005", Unit, 1, 1, "save it as UTF-8");
    }

    [Fact]
    public void Byte_order_mark_and_line_ends_of_other_systems_do_no_harm()
    {
        File.WriteAllText(Unit, File.ReadAllText(Unit).ReplaceLineEndings("\r\n"), new System.Text.UTF8Encoding(true));

        Assert.Empty(DescriptionReader.ReadJob(Unit).Diagnostics);
    }

    [Fact]
    public void Faults_of_several_files_are_found_in_one_go()
    {
        CopyOf("mixes/estuary.mix.yaml", "mixes/estuary.mix.yaml", "share: 75 %", "share: 70 %");
        CopyOf("sites/wrackline-shoal.site.yaml", "sites/wrackline-shoal.site.yaml", "depth: 6 m", "depth: 6");

        Assert.Equal(["DW1026", "DW1016"], DescriptionReader.ReadJob(Unit).Diagnostics.Select(finding => finding.Code));
    }

    [Fact]
    public void Density_of_the_night_above_that_of_the_grains_is_found_in_the_nights_file()
    {
        string night = folder.Write("a.tonight.yaml", "kind: tonight\nversion: 1\nloose_density: 2800 kg/m3\n");

        AssertOne(DescriptionReader.ReadJob(Unit, new ReadOptions { Tonight = night }), "DW1031", night, 3, 16, "right mix");
    }

    private static void AssertOne(ReadResult result, string code, string file, int line, int column, string remedy)
    {
        Diagnostic found = Assert.Single(result.Diagnostics);
        Assert.Equal((code, Severity.Error), (found.Code, found.Severity));
        Assert.Equal(new SourceLocation(file, line, column), found.Location);
        Assert.Contains(remedy, found.Remedy, StringComparison.Ordinal);
        Assert.Null(result.Job);
    }

    private void Replace(string good, string bad) => CopyOf("units/wrack-block.unit.yaml", "units/wrack-block.unit.yaml", good, bad);

    private void CopyOf(string from, string to, string good, string bad)
    {
        string text = File.ReadAllText(folder.At(from));
        Assert.Contains(good, text, StringComparison.Ordinal);
        folder.Write(to, text.Replace(good, bad, StringComparison.Ordinal));
    }
}
