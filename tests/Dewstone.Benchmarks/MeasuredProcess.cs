using System.Diagnostics;
using System.Globalization;

namespace Dewstone.Benchmarks;

/// <summary>A process from its start to its end, and what it took.</summary>
/// <param name="Seconds">On the clock.</param>
/// <param name="ProcessorSeconds">Of all its threads, in steps of 10 ms; NaN where the system does not tell.</param>
/// <param name="PeakMegabytes">Most memory held at once as last seen, every 2 ms, before it ended; NaN where the system does not tell.</param>
/// <param name="Output">What it wrote.</param>
public sealed record MeasuredProcess(double Seconds, double ProcessorSeconds, double PeakMegabytes, string Output)
{
    private const double TicksPerSecond = 100.0;

    /// <summary>Runs a program.</summary>
    /// <param name="program">The program.</param>
    /// <param name="words">Its arguments.</param>
    /// <returns>What it took.</returns>
    /// <exception cref="InvalidOperationException">It ended with another exit code than 0.</exception>
    public static MeasuredProcess Run(string program, params string[] words)
    {
        ProcessStartInfo start = new(program, words) { RedirectStandardOutput = true, UseShellExecute = false, WorkingDirectory = Checkout.Root };
        double before = EndedChildren();
        Stopwatch watch = Stopwatch.StartNew();
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        string status = $"/proc/{process.Id}/status";
        double peak = double.NaN;
        while (!process.WaitForExit(2))
        {
            peak = Peak(status) is var seen && seen > 0.0 ? seen : peak;
        }

        process.WaitForExit();
        double seconds = watch.Elapsed.TotalSeconds;
        return process.ExitCode == 0
            ? new MeasuredProcess(seconds, EndedChildren() - before, peak, output.Result)
            : throw new InvalidOperationException($"{program} {string.Join(' ', words)} ended with {process.ExitCode}: {output.Result}");
    }

    /// <summary>Most memory this process has held at once, MB of a million bytes; NaN where the system does not tell.</summary>
    public static double OwnPeak() => Peak("/proc/self/status");

    // proc(5): VmHWM, kB of 1024 bytes. Gone, or empty, once the process has ended.
    private static double Peak(string status)
    {
        try
        {
            string? line = File.ReadLines(status).FirstOrDefault(l => l.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? double.NaN : double.Parse(line[6..^2], CultureInfo.InvariantCulture) * 1024.0 / 1e6;
        }
        catch (IOException)
        {
            return double.NaN;
        }
    }

    // proc(5): the 16th and 17th field of stat, cutime and cstime; the second may hold blanks and ends with the last bracket.
    private static double EndedChildren()
    {
        if (!File.Exists("/proc/self/stat"))
        {
            return double.NaN;
        }

        string stat = File.ReadAllText("/proc/self/stat");
        string[] fields = stat[(stat.LastIndexOf(')') + 2)..].Split(' ');
        return (long.Parse(fields[13], CultureInfo.InvariantCulture) + long.Parse(fields[14], CultureInfo.InvariantCulture)) / TicksPerSecond;
    }
}
