using System.Text.RegularExpressions;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Cli.Tests;

/// <summary>Every command, output and picture that README and the guides show is what the program gives today.</summary>
public sealed partial class ReadmeTests
{
    [Theory]
    [InlineData("README.md")]
    [InlineData("examples/design-a-unit.md")]
    [InlineData("examples/tonights-job.md")]
    [InlineData("examples/a-hundred-units.md")]
    [InlineData("examples/calibrate.md")]
    public async Task Shown_output_is_the_programs(string page)
    {
        ShownSamples.SkipWithoutShell();
        string text = await File.ReadAllTextAsync(Repository.Path(page));

        Assert.Equal(text, (await ShownSamples.TodayAsync())[page]);
        Assert.Contains("```console\n$ ", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("unit.png")]
    [InlineData("cutaway.png")]
    [InlineData("layer-007.png")]
    public async Task Shown_picture_is_the_one_a_compile_makes(string picture)
    {
        ShownSamples.SkipWithoutShell();
        string job = await ShownSamples.ExampleJobAsync();
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
        Assert.True(different <= shown.Width * shown.Height / 1000, $"{different} pixels differ: look at {fresh}");
    }

    [Fact]
    public async Task Comparison_with_doing_it_by_hand_gives_the_figures_of_the_worked_example()
    {
        string readme = await File.ReadAllTextAsync(Repository.Path("README.md"));
        Match plain = PlainPattern().Match(readme), corrected = CorrectedPattern().Match(readme), doses = DosesPattern().Match(readme);

        Assert.Contains($"| {plain.Groups["match"].Value} | {corrected.Groups["match"].Value} |", readme, StringComparison.Ordinal);
        Assert.Contains($"| {plain.Groups["volume"].Value} | {corrected.Groups["volume"].Value} |", readme, StringComparison.Ordinal);
        Assert.Contains($"| {doses.Groups["doses"].Value}, in {corrected.Groups["solves"].Value} wettings of the bed |", readme, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Shown_exit_codes_are_the_programs()
    {
        string readme = await File.ReadAllTextAsync(Repository.Path("README.md"));
        Assert.Equal(
            ExitCode.Meanings,
            ExitCodePattern().Matches(readme).Select(m => (m.Groups["code"].Value, m.Groups["meaning"].Value.Replace("`", "", StringComparison.Ordinal))));
    }

    [GeneratedRegex(@"plain would give.*: match (?<match>[0-9.]+), volume (?<volume>[-+][0-9.]+ %)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex PlainPattern();

    [GeneratedRegex("corrected in (?<solves>[0-9]+) solves: match (?<match>[0-9.]+), volume (?<volume>[-+][0-9.]+ %)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CorrectedPattern();

    [GeneratedRegex("L in (?<doses>[0-9]+) doses", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex DosesPattern();

    [GeneratedRegex(@"^\| (?<code>[0-9]+(, [0-9]+)?) \| (?<meaning>[^|]+) \|$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex ExitCodePattern();
}
