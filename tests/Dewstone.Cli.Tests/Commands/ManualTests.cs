using System.Diagnostics;
using System.Text.RegularExpressions;

namespace Dewstone.Cli.Tests.Commands;

public sealed partial class ManualTests
{
    [Fact]
    public async Task Page_tells_every_command_and_every_option_that_help_tells()
    {
        string page = (await Words.Run("manual")).Output.Replace("\\-", "-", StringComparison.Ordinal);
        List<string[]> commands = [.. await CommandsAsync([])];
        Assert.True(commands.Count > 15, $"only {commands.Count} commands");
        foreach (string[] command in commands)
        {
            string path = string.Join(' ', command);
            Match section = Regex.Match(page, $@"^\.SS {path}\n(?<text>.*?)(?=^\.S[SH] )", RegexOptions.Multiline | RegexOptions.Singleline | RegexOptions.ExplicitCapture, TimeSpan.FromSeconds(5));
            Assert.True(section.Success, $"no section on {path}");
            string help = (await Words.Run([.. command, "--help"])).Output;
            foreach (string option in OptionPattern().Matches(help).Select(match => match.Groups["name"].Value).Where(name => name is not "--help" and not "--version"))
            {
                Assert.Contains($"\\fB{option}\\fR", section.Groups["text"].Value, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public async Task Page_is_plain_text_of_short_lines_without_stray_macros()
    {
        string page = (await Words.Run("manual")).Output;
        Assert.All(page, letter => Assert.True(letter is '\n' or (>= ' ' and <= '~'), $"U+{(int)letter:X4}"));
        Assert.DoesNotContain("\n\n", page, StringComparison.Ordinal);
        Assert.All(page.Split('\n').Where(line => line.StartsWith('.')), line => Assert.Matches(@"^\.(TH|SH|SS|PP|TP|B|I|BR|RI)\b", line));
    }

    [Fact]
    public async Task Page_is_set_by_man_without_warnings_within_80_columns()
    {
        Assert.SkipUnless((Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(f => File.Exists(Path.Combine(f, "groff"))), "no groff on the path");
        ProcessStartInfo start = new("groff", ["-man", "-Tutf8", "-ww", "-rLL=80n", "-P-cbou"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            UseShellExecute = false,
        };
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        await process.StandardInput.WriteAsync((await Words.Run("manual")).Output);
        process.StandardInput.Close();
        await process.WaitForExitAsync();
        Assert.Equal("", await error);
        Assert.Equal(0, process.ExitCode);
        Assert.All((await output).Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.Contains("EXIT STATUS", await output, StringComparison.Ordinal);
    }

    /// <summary>Every command that has none below it, as its words.</summary>
    private static async Task<IEnumerable<string[]>> CommandsAsync(string[] above)
    {
        string help = (await Words.Run([.. above, "--help"])).Output;
        string[] below = help.Split("Commands:\n") is [_, var list] ? [.. CommandPattern().Matches(list).Select(match => match.Groups["name"].Value)] : [];
        List<string[]> found = below.Length == 0 ? [above] : [];
        foreach (string name in below)
        {
            found.AddRange(await CommandsAsync([.. above, name]));
        }

        return found;
    }

    [GeneratedRegex(@"^  (?<name>[a-z]+)(?= )", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CommandPattern();

    [GeneratedRegex(@"^  (-\S+, )*(?<name>--[a-z-]+)", RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex OptionPattern();
}
