using System.Diagnostics;

namespace Dewstone.Cli.Tests.Faults;

/// <summary>Runs the real program from a shell, for what only a shell can do to its streams.</summary>
internal static class Shell
{
    /// <summary>Runs a line; <c>dotnet "$DEWSTONE"</c> in it is the program.</summary>
    /// <param name="folder">Current folder.</param>
    /// <param name="line">The line, for sh.</param>
    /// <returns>Exit code, output, error.</returns>
    public static async Task<Words.Answer> RunAsync(string folder, string line)
    {
        ProcessStartInfo start = new("bash", ["-c", line]) { RedirectStandardOutput = true, RedirectStandardError = true, UseShellExecute = false, WorkingDirectory = folder };
        start.Environment["DEWSTONE"] = Path.Combine(AppContext.BaseDirectory, "dewstone.dll");
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), error = process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new Words.Answer(process.ExitCode, await output, await error);
    }
}
