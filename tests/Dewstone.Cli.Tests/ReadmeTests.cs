using System.Text.RegularExpressions;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Cli.Tests;

/// <summary>Every command, output and picture that README shows is what the program gives today.</summary>
public sealed partial class ReadmeTests
{
    private static readonly Lazy<Task<string>> ExampleJob = new(CompileExampleAsync);

    [Fact]
    public async Task Shown_output_is_the_programs()
    {
        string readme = await File.ReadAllTextAsync(Repository.Path("README.md"));
        MatchCollection samples = SamplePattern().Matches(readme);
        Assert.True(samples.Count >= 3, "README shows too few samples, or in another form");
        await ExampleJob.Value;
        foreach (Match sample in samples)
        {
            string[] words = [.. WordPattern().Matches(sample.Groups["words"].Value).Select(word => word.Value.Trim('"')).Select(w => w == "out" || w.StartsWith("out/", StringComparison.Ordinal) ? OutputFolder + w[3..] : w)];
            Words.Answer answer = await RealProgram.RunInAsync(Repository.Root, words[0] == "explain" ? words : [.. words, "--quiet"]);
            string shown = OutPath().Replace(sample.Groups["output"].Value, $"{OutputFolder}/");
            Assert.Equal(shown, answer.Output);
        }
    }

    [Theory]
    [InlineData("unit.png")]
    [InlineData("cutaway.png")]
    [InlineData("layer-007.png")]
    public async Task Shown_picture_is_the_one_a_compile_makes(string picture)
    {
        string job = await ExampleJob.Value;
        string fresh = Directory.EnumerateFiles(job, picture, SearchOption.AllDirectories).Single();
        using Image<Rgb24> shown = await Image.LoadAsync<Rgb24>(Repository.Path("examples", "wrackline-bay", "pictures", picture));
        using Image<Rgb24> made = await Image.LoadAsync<Rgb24>(fresh);
        Assert.Equal((shown.Width, shown.Height), (made.Width, made.Height));
        int different = 0;
        for (int y = 0; y < shown.Height; y++)
        {
            for (int x = 0; x < shown.Width; x++)
            {
                Rgb24 a = shown[x, y], b = made[x, y];
                different += Math.Abs(a.R - b.R) + Math.Abs(a.G - b.G) + Math.Abs(a.B - b.B) > 12 ? 1 : 0;
            }
        }

        // Pictures may differ by rounding from machine to machine, never in what they show.
        Assert.True(different <= shown.Width * shown.Height / 1000, $"{different} pixels differ: copy {fresh} over the one in examples/wrackline-bay/pictures");
    }

    [Fact]
    public async Task Shown_exit_codes_are_the_programs()
    {
        string readme = await File.ReadAllTextAsync(Repository.Path("README.md"));
        Assert.Equal(
            ExitCode.Meanings,
            ExitCodePattern().Matches(readme).Select(m => (m.Groups["code"].Value, m.Groups["meaning"].Value.Replace("`", "", StringComparison.Ordinal))));
    }

    private static string OutputFolder { get; } = Directory.CreateTempSubdirectory("dewstone-readme-").FullName;

    private static async Task<string> CompileExampleAsync()
    {
        Words.Answer answer = await RealProgram.RunInAsync(
            Repository.Root, "compile", "examples/wrackline-bay/units/wrack-block.unit.yaml", "-o", OutputFolder, "--quiet");
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        return Path.Combine(OutputFolder, "wrack-block.job");
    }

    // A word of a command line; one in double quotes may hold blanks.
    [GeneratedRegex("\"[^\"]*\"|[^ ]+", RegexOptions.NonBacktracking)]
    private static partial Regex WordPattern();

    [GeneratedRegex(@"```console\n\$ dewstone (?<words>[^\n]+)\n(?<output>.*?)```", RegexOptions.Singleline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex SamplePattern();

    [GeneratedRegex("(?<![^ \n])out/", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OutPath();

    [GeneratedRegex(@"^\| (?<code>[0-9]+(, [0-9]+)?) \| (?<meaning>[^|]+) \|$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ExitCodePattern();
}
