using System.Diagnostics;

namespace Dewstone.Cli.Tests.Commands;

public sealed class CompletionTests : IDisposable
{
    private const string Ask = """
        source ./script
        COMP_LINE="$1" COMP_POINT="${#1}"
        read -ra COMP_WORDS <<<"$COMP_LINE"
        [[ "$COMP_LINE" != *' ' ]] || COMP_WORDS+=('')
        COMP_CWORD=$((${#COMP_WORDS[@]} - 1))
        _dewstone ./dewstone
        printf '%s\n' "${COMPREPLY[@]}"
        """;

    private readonly string folder = Directory.CreateTempSubdirectory("dewstone-completion-").FullName;

    [Theory]
    [InlineData("bash", "complete -o default -F _dewstone dewstone")]
    [InlineData("zsh", "#compdef dewstone")]
    [InlineData("fish", "complete -c dewstone")]
    public async Task Completion_prints_the_script_of_a_shell(string shell, string line)
    {
        Words.Answer answer = await Words.Run("completion", shell);
        Assert.Equal(ExitCode.Done, answer.Code);
        Assert.Contains(line, answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\r', answer.Output);
    }

    [Fact]
    public async Task Completion_unknown_shell_is_refused()
    {
        Words.Answer answer = await Words.Run("completion", "abacus");
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("abacus", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("dewstone ca", "calibrate")]
    [InlineData("dewstone order ", "compile gather plan status")]
    [InlineData("dewstone check --dr", "--drawing")]
    [InlineData("dewstone compile a.unit.yaml --no", "--no-correction")]
    [InlineData("dewstone schema ", "mix order printer site tonight unit")]
    [InlineData("dewstone diff a b --format ", "markdown text")]
    [InlineData("dewstone completion z", "zsh")]
    [InlineData("dewstone explain DW1001", "DW1001")]
    [InlineData("dewstone check ", "")]
    [InlineData("dewstone check --drawing ", "")]
    public async Task Script_in_bash_knows_what_may_come_next(string line, string expected)
    {
        SkipUnlessPresent("bash");
        await PrepareAsync();

        // The words as readline hands them over; what is not known here is left to file names.
        string reply = await RunAsync("bash", "", "--norc", "-c", Ask.ReplaceLineEndings("\n"), "bash", line);
        string[] known = [.. reply.Split('\n', StringSplitOptions.RemoveEmptyEntries).Order(StringComparer.Ordinal)];
        Assert.Equal(expected.Split(' ', StringSplitOptions.RemoveEmptyEntries), known);
    }

    [Fact]
    public async Task Script_at_a_terminal_completes_command_option_and_file_name()
    {
        SkipUnlessPresent("bash");
        SkipUnlessPresent("script");
        await PrepareAsync();
        await File.WriteAllTextAsync(Path.Combine(folder, "tide-sill.unit.yaml"), "");

        // Tabs typed at a real prompt; the program writes down the words it was called with.
        string typed = $"PATH=\"{folder}:$PATH\"; source script\ndewstone chec\t tide\t --draw\t\nexit\n";
        await RunAsync("script", typed, "-qec", "bash --norc --noprofile -i", "/dev/null");
        Assert.Equal("check tide-sill.unit.yaml --drawing", (await File.ReadAllTextAsync(Path.Combine(folder, "called"))).Trim());
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    /// <summary>A program named dewstone that answers as ours does when asked what may come next, and else writes its words down.</summary>
    private async Task PrepareAsync()
    {
        await File.WriteAllTextAsync(Path.Combine(folder, "script"), (await Words.Run("completion", "bash")).Output);
        string program = Path.Combine(folder, "dewstone");
        await File.WriteAllTextAsync(program, $"""
            #!/usr/bin/env bash
            case "$1" in
              '[suggest:'*) exec dotnet "{AppContext.BaseDirectory}dewstone.dll" "$@" ;;
              *) echo "$*" >"{folder}/called" ;;
            esac

            """.ReplaceLineEndings("\n"));
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(program, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    private async Task<string> RunAsync(string program, string input, params string[] words)
    {
        ProcessStartInfo start = new(program, words) { WorkingDirectory = folder, RedirectStandardInput = true, RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment["TERM"] = "dumb";
        start.Environment["INPUTRC"] = "/dev/null";
        using Process process = Process.Start(start)!;
        await process.StandardInput.WriteAsync(input);
        process.StandardInput.Close();
        string output = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return output;
    }

    private static void SkipUnlessPresent(string program) => Assert.SkipUnless(
        !OperatingSystem.IsWindows() && (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(f => File.Exists(Path.Combine(f, program))),
        $"no {program} on the path");
}
