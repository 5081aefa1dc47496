using System.Globalization;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Dewstone.Benchmarks;

/// <summary>The machine that figures were taken on.</summary>
internal static class Machine
{
    /// <summary>Processor, vectors, system, .NET, date and load.</summary>
    public static string Line()
    {
        const string list = "/proc/cpuinfo";
        string name = (File.Exists(list) ? File.ReadLines(list).FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal)) : null)?.Split(':')[^1].Trim()
            ?? "processor unknown";
        int bits = Vector512.IsHardwareAccelerated ? 512 : Vector256.IsHardwareAccelerated ? 256 : 128;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{name}, {Environment.ProcessorCount} processors, {bits}-bit vectors, {RuntimeInformation.OSArchitecture}, {RuntimeInformation.FrameworkDescription}, {DateTime.UtcNow:d MMMM yyyy HH:mm} UTC, load {Load()}.");
    }

    /// <summary>Mean number of runnable tasks over the last minute: the first field of loadavg, proc(5).</summary>
    public static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "unknown";
}
