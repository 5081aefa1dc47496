using System.Diagnostics;

namespace Dewstone.Cli.Tests.Cluster;

/// <summary>A batch engine of the tests' own on this host, by <c>engine.sh</c>; ended when disposed of.</summary>
internal sealed class Engine : IDisposable
{
    private static readonly string[] Programs = ["slurmctld", "slurmd", "sbatch", "squeue", "munged"];

    // Every user must be able to go into it: the engine's messages are signed by a daemon that insists.
    private readonly string folder = Path.Combine(Path.GetTempPath(), $"dewstone-engine-{Environment.ProcessId}");
    private readonly string port = (20000 + Environment.ProcessId % 20000).ToString();

    /// <summary>Starts one.</summary>
    /// <param name="nodes">Number of nodes.</param>
    /// <param name="slots">Tasks a node runs at once.</param>
    public Engine(int nodes, int slots)
    {
        Directory.CreateDirectory(folder);
        Run(Script, [folder, "start", nodes.ToString(), slots.ToString()]);
    }

    /// <summary>Why there can be none here; null when there can.</summary>
    public static string? Absent
    {
        get
        {
            string[] places = [.. (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator), "/usr/sbin", "/sbin"];
            string[] missing = [.. Programs.Where(program => !places.Any(place => File.Exists(Path.Combine(place, program))))];
            return missing.Length > 0 ? $"not installed: {string.Join(", ", missing)} (Debian: slurmctld slurmd slurm-client munge)"
                : Environment.IsPrivilegedProcess ? null : "the engine's daemons are started by root only";
        }
    }

    private static string Script => Repository.Path("tests", "Dewstone.Cli.Tests", "Cluster", "engine.sh");

    /// <summary>What its controller has logged.</summary>
    public string Log => File.ReadAllText(Path.Combine(folder, "slurmctld.log"));

    /// <summary>A node is gone, with all that runs on it.</summary>
    public void Lose(string node) => Run(Script, [folder, "lose", node]);

    /// <summary>Runs a program that speaks to the engine, to its end.</summary>
    /// <returns>What it wrote.</returns>
    public string Run(string program, string[] words)
    {
        ProcessStartInfo start = new(program, words) { RedirectStandardOutput = true, UseShellExecute = false };
        start.Environment["SLURM_CONF"] = Path.Combine(folder, "slurm.conf");
        start.Environment["ENGINE_PORT"] = port;
        start.Environment["DEWSTONE"] = Path.Combine(AppContext.BaseDirectory, "dewstone");
        start.Environment["PATH"] = $"{Environment.GetEnvironmentVariable("PATH")}:/usr/sbin:/sbin";
        using Process process = Process.Start(start)!;
        string said = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return process.ExitCode == 0 ? said : throw new InvalidOperationException($"{program} {string.Join(' ', words)}: exit {process.ExitCode}\n{said}");
    }

    public void Dispose()
    {
        Run(Script, [folder, "stop"]);
        Directory.Delete(folder, recursive: true);
    }
}
