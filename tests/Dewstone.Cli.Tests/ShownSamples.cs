using System.Text;
using System.Text.RegularExpressions;

namespace Dewstone.Cli.Tests;

/// <summary>
/// Runs every command that README and the guides show, page after page in one folder, as a reader would who follows them. With the variable
/// <see cref="Renew"/> set to 1 the pages and pictures in the repository are written anew: look at what changed before keeping it.
/// </summary>
internal static partial class ShownSamples
{
    /// <summary>The variable that has the repository's pages written anew.</summary>
    public const string Renew = "DEWSTONE_RENEW_SAMPLES";

    private static readonly string[] Pages = ["README.md", "examples/design-a-unit.md", "examples/tonights-job.md", "examples/a-hundred-units.md", "examples/calibrate.md"];
    private static readonly string[] Pictures = ["unit.png", "cutaway.png", "layers/layer-007.png"];
    private static readonly Lazy<Task<(IReadOnlyDictionary<string, string> Pages, string Job)>> Run = new(RunAsync);

    /// <summary>Skips the test where there is no POSIX shell.</summary>
    public static void SkipWithoutShell() => Assert.SkipUnless(File.Exists("/bin/sh"), "the samples are lines of a POSIX shell, and /bin/sh was not found");

    /// <summary>The pages with what the program prints today.</summary>
    /// <returns>Text by path below the repository.</returns>
    public static async Task<IReadOnlyDictionary<string, string>> TodayAsync() => (await Run.Value).Pages;

    /// <summary>The job folder of the example block that README compiles.</summary>
    /// <returns>Its path.</returns>
    public static async Task<string> ExampleJobAsync() => (await Run.Value).Job;

    private static async Task<(IReadOnlyDictionary<string, string>, string)> RunAsync()
    {
        ScratchRepository reader = new();
        foreach (string file in Directory.EnumerateFiles(Repository.Path("examples"), "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(reader.Folder, "examples", Path.GetRelativePath(Repository.Path("examples"), file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        Directory.CreateDirectory(Path.Combine(reader.Folder, "out"));
        Dictionary<string, string> today = [];
        foreach (string page in Pages)
        {
            string text = await File.ReadAllTextAsync(Repository.Path(page));
            StringBuilder renewed = new();
            int done = 0;
            foreach (Match block in BlockPattern().Matches(text))
            {
                renewed.Append(text, done, block.Index - done).Append("```console\n");
                foreach (Match line in LinePattern().Matches(block.Value))
                {
                    renewed.Append(line.Value).Append('\n').Append((await reader.ShellAsync(line.Groups["line"].Value)).Output);
                }

                renewed.Append("```");
                done = block.Index + block.Length;
            }

            today[page] = renewed.Append(text, done, text.Length - done).ToString();
        }

        string job = Path.Combine(reader.Folder, "out", "wrack-block.job");
        if (Environment.GetEnvironmentVariable(Renew) == "1")
        {
            foreach ((string page, string text) in today)
            {
                await File.WriteAllTextAsync(Repository.Path(page), text);
            }

            foreach (string picture in Pictures)
            {
                File.Copy(Path.Combine(job, picture), Repository.Path("examples", "wrackline-bay", "pictures", Path.GetFileName(picture)), overwrite: true);
            }
        }

        return (today, job);
    }

    [GeneratedRegex(@"```console\n\$ .*?```", RegexOptions.Singleline, 1000)]
    private static partial Regex BlockPattern();

    [GeneratedRegex(@"^\$ (?<line>[^\n]+)$", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex LinePattern();
}
