using System.Diagnostics;

namespace Dewstone.Cli.Tests;

/// <summary>Starts the program as a process of its own.</summary>
internal static class RealProgram
{
    /// <summary>Runs to the end.</summary>
    /// <param name="environment">Variables to set.</param>
    /// <param name="words">Words after the program's name.</param>
    /// <returns>Exit code, output, error.</returns>
    public static async Task<Words.Answer> RunAsync((string Name, string Value)[] environment, params string[] words)
    {
        using Process process = Start(environment, words);
        return await EndAsync(process);
    }

    private static async Task<Words.Answer> EndAsync(Process process)
    {
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new Words.Answer(process.ExitCode, await output, await error);
    }

    /// <summary>Runs to the end in a folder.</summary>
    /// <param name="folder">Current folder of the run.</param>
    /// <param name="words">Words after the program's name.</param>
    /// <returns>Exit code, output, error.</returns>
    public static async Task<Words.Answer> RunInAsync(string folder, params string[] words)
    {
        ProcessStartInfo start = Prepare(words);
        start.WorkingDirectory = folder;
        using Process process = Process.Start(start)!;
        return await EndAsync(process);
    }

    /// <summary>Starts it.</summary>
    /// <param name="environment">Variables to set.</param>
    /// <param name="words">Words after the program's name.</param>
    /// <returns>The running process, its streams redirected.</returns>
    public static Process Start((string Name, string Value)[] environment, params string[] words)
    {
        ProcessStartInfo start = Prepare(words);
        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        return Process.Start(start)!;
    }

    private static ProcessStartInfo Prepare(string[] words)
    {
        // The program beside the tests: built in the same configuration, run by the same host.
        string program = Path.Combine(AppContext.BaseDirectory, "dewstone.dll");
        return new ProcessStartInfo("dotnet", [program, .. words]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false };
    }
}
