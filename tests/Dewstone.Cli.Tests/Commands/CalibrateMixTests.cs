using Dewstone.Model.Description;
using Dewstone.Reading;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>On the invented measurements of the examples: power law of exponent 4, 4.4e-6 m2/s, threshold 0.25, 1655 kg/m3.</summary>
public sealed class CalibrateMixTests : IDisposable
{
    private static readonly string Bay = Repository.Path("examples", "wrackline-bay");
    private static readonly string Mix = Path.Combine(Bay, "mixes", "estuary.mix.yaml");

    private readonly string folder = Directory.CreateTempSubdirectory("dewstone-calibrate-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public async Task Mix_file_is_written_with_hashes_and_correlations_and_compile_reads_it()
    {
        byte[] before = await File.ReadAllBytesAsync(Mix);
        Words.Answer answer = await Words.Run(["calibrate", "mix", Data("absorption.csv"), Data("balls.csv"), Data("density.csv"), "--mix", Mix, "-o", In("new.mix.yaml"), "--pictures", In("charts")]);

        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        FileReading<DryMix> reading = DescriptionReader.ReadMix(In("new.mix.yaml"));
        Assert.Empty(reading.Diagnostics);
        DryMix mix = reading.Value!;
        Assert.Equal(MixOriginKind.Calibration, mix.Origin.Kind);
        Assert.Matches("^absorption.csv sha256 [0-9a-f]{64}, balls.csv sha256 [0-9a-f]{64}, density.csv sha256 [0-9a-f]{64}$", mix.Origin.Reference);
        Assert.InRange(mix.LooseDensity.KilogramsPerCubicMetre, 1635.0, 1675.0);
        Assert.InRange(mix.Hardening.WaterCement, 0.24, 0.26);
        Assert.InRange(mix.Wetting.AtSaturation.SquareMetresPerSecond, 4.0e-6, 4.8e-6);
        Assert.NotNull(mix.Uncertainty!.Correlation);
        Assert.Equal(["balls.svg", "confidence.svg", "residuals.svg"], Directory.EnumerateFiles(In("charts")).Select(Path.GetFileName).Order());
        Assert.Equal(before, await File.ReadAllBytesAsync(Mix));
    }

    // The trials of a job with that mix say so, and draw it so (see the tests of the draws).
    [Fact]
    public async Task Trials_take_the_calibrated_spreads()
    {
        using SmallYard yard = new();
        Words.Answer made = await Words.Run(["calibrate", "mix", Data("absorption.csv"), Data("balls.csv"), "--mix", yard.In("small.mix.yaml"), "-o", yard.In("new.mix.yaml")]);
        Assert.True(made.Code == ExitCode.Done, made.Output + made.Error);
        Words.Answer job = await Words.Run("compile", yard.UnitFile, "--mix", yard.In("new.mix.yaml"), "-o", yard.In("out"), "--trials", "4", "--cells", "4", "--quiet");
        Assert.True(job.Code is ExitCode.Done or ExitCode.No, job.Output + job.Error);
        string trials = await File.ReadAllTextAsync(Directory.EnumerateFiles(yard.In("out"), "trials.json", SearchOption.AllDirectories).Single());
        Assert.Contains("uncertainty of the mix, correlated as calibrated", trials, StringComparison.Ordinal);
        string core = Directory.EnumerateFiles(yard.In("out"), "job.json", SearchOption.AllDirectories).Single();
        Repository.AssertValid("job.schema.json", await File.ReadAllTextAsync(core));
        Assert.Contains("\"correlation\"", await File.ReadAllTextAsync(core), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Json_fits_the_stored_schema()
    {
        Words.Answer good = await Words.Run(["calibrate", "mix", Data("absorption.csv"), Data("density.csv"), "--mix", Mix, "-o", In("new.mix.yaml"), "--json"]);
        Assert.Equal((ExitCode.Done, ""), (good.Code, good.Error));
        Repository.AssertValid("calibrate-mix.schema.json", good.Output);
        Assert.Contains("DW3053", good.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Wrong_law_is_told_and_the_mix_still_written()
    {
        Words.Answer answer = await Words.Run(
            "calibrate", "mix", Data("other-law", "absorption.csv"), Data("other-law", "balls.csv"), "--mix", Mix, "-o", In("new.mix.yaml"), "--quiet", "--exponent", "scan");
        Assert.Equal(ExitCode.Done, answer.Code);
        Assert.Contains("warning DW3055", answer.Output, StringComparison.Ordinal);
        Assert.Contains("squares by exponent 2: ", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_is_written_over_an_input_or_from_bad_data()
    {
        string bad = In("balls.csv");
        await File.WriteAllTextAsync(bad, (await File.ReadAllTextAsync(Data("balls.csv"))).Replace("wet_mass_g", "wet_mass", StringComparison.Ordinal));
        Words.Answer unread = await Words.Run("calibrate", "mix", bad, "--mix", Mix, "-o", In("new.mix.yaml"));
        Assert.Equal(ExitCode.InputAtFault, unread.Code);
        Assert.Contains("DW8320", unread.Output, StringComparison.Ordinal);
        Words.Answer over = await Words.Run("calibrate", "mix", Data("density.csv"), "--mix", Mix, "-o", Path.Combine(Bay, "mixes", "..", "mixes", "estuary.mix.yaml"));
        Assert.Equal(ExitCode.InputAtFault, over.Code);
        Assert.Contains("DW8327", over.Output, StringComparison.Ordinal);
        Assert.Equal(["balls.csv"], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Mix_with_a_residual_content_ends_with_1_at_its_key()
    {
        string holding = In("holding.mix.yaml");
        await File.WriteAllTextAsync(holding, (await File.ReadAllTextAsync(Mix)).Replace("residual: 0}", "residual: 0.02}", StringComparison.Ordinal));
        Words.Answer answer = await Words.Run("calibrate", "mix", Data("density.csv"), "--mix", holding, "-o", In("new.mix.yaml"));
        Assert.Equal(ExitCode.No, answer.Code);
        Assert.Matches("holding.mix.yaml:14:[0-9]+: error DW3058", answer.Output);
    }

    private static string Data(params string[] parts) => Path.Combine([Bay, "calibration", .. parts]);

    private string In(params string[] parts) => Path.Combine([folder, .. parts]);
}
