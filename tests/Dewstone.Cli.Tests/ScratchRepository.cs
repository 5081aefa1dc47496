using System.Diagnostics;

namespace Dewstone.Cli.Tests;

/// <summary>A version-controlled folder, its name with a space, with <c>dewstone</c> on the path of its shell.</summary>
internal sealed class ScratchRepository : IDisposable
{
    private readonly string top = Directory.CreateTempSubdirectory("dewstone-recipe-").FullName;

    /// <summary>An empty repository whose branch is called main.</summary>
    public ScratchRepository()
    {
        Directory.CreateDirectory(Folder);
        Directory.CreateDirectory(Path.Combine(top, "bin"));
        string program = Path.Combine(top, "bin", "dewstone");
        File.WriteAllText(program, $"#!/bin/sh\nexec dotnet '{Path.Combine(AppContext.BaseDirectory, "dewstone.dll")}' \"$@\"\n");
        MakeExecutable(program);
    }

    /// <summary>Where it stands.</summary>
    public string Folder => Path.Combine(top, "scratch bay");

    /// <summary>Skips the test where there is no git or no POSIX shell.</summary>
    public static void SkipWithoutGit() => Assert.SkipUnless(
        !OperatingSystem.IsWindows() && Environment.GetEnvironmentVariable("PATH")!.Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, "git"))),
        "the recipes are shell scripts for git, and git was not found");

    /// <summary>Writes a file, and the folders above it.</summary>
    /// <param name="name">Below the repository.</param>
    /// <param name="text">All of it.</param>
    public void Write(string name, string text)
    {
        string path = Path.Combine(Folder, name);
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        File.WriteAllText(path, text);
    }

    /// <summary>Reads a file.</summary>
    /// <param name="name">Below the repository.</param>
    /// <returns>All of it.</returns>
    public string Read(string name) => File.ReadAllText(Path.Combine(Folder, name));

    /// <summary>Sets the bit that lets a script run.</summary>
    /// <param name="path">The script.</param>
    public static void MakeExecutable(string path)
    {
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }

    /// <summary>Runs a line of shell in the repository, apart from the machine's own git settings.</summary>
    /// <param name="line">The line.</param>
    /// <returns>Exit code, output, error.</returns>
    public async Task<Words.Answer> ShellAsync(string line)
    {
        ProcessStartInfo start = new("/bin/sh", ["-c", line]) { WorkingDirectory = Folder, RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
        foreach (string name in start.Environment.Keys.Where(name => name.StartsWith("GIT_", StringComparison.Ordinal)).ToArray())
        {
            start.Environment.Remove(name);
        }

        (string Name, string Value)[] settings =
        [
            ("PATH", $"{Path.Combine(top, "bin")}:{start.Environment["PATH"]}"), ("TMPDIR", top), ("GIT_CONFIG_GLOBAL", "/dev/null"), ("GIT_CONFIG_NOSYSTEM", "1"),
            ("GIT_AUTHOR_NAME", "tester"), ("GIT_AUTHOR_EMAIL", "tester@bay.invalid"), ("GIT_COMMITTER_NAME", "tester"), ("GIT_COMMITTER_EMAIL", "tester@bay.invalid"),
        ];
        foreach ((string name, string value) in settings)
        {
            start.Environment[name] = value;
        }

        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new Words.Answer(process.ExitCode, await output, await error);
    }

    /// <summary>Runs a line of shell that must succeed.</summary>
    /// <param name="line">The line.</param>
    public async Task MustAsync(string line)
    {
        Words.Answer answer = await ShellAsync(line);
        Assert.True(answer.Code == 0, $"{line}: {answer.Code}\n{answer.Output}{answer.Error}");
    }

    /// <summary>What was left beside the repository: nothing but the program, if a script tidies up.</summary>
    /// <returns>Names.</returns>
    public string[] LeftBeside() => [.. Directory.EnumerateFileSystemEntries(top).Select(p => Path.GetFileName(p)!).Where(name => name is not ("bin" or "scratch bay")).Order(StringComparer.Ordinal)];

    public void Dispose() => Directory.Delete(top, recursive: true);
}
