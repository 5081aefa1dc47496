using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Dewstone.Benchmarks.Short;

/// <summary>A row for each heart of the program, in some minutes: what <c>./build.sh bench</c> prints, and leaves in <c>.artifacts/bench/table.md</c>.</summary>
internal static class ShortTable
{
    private static readonly (string Name, Action<HeartTable> Write)[] Parts =
    [
        ("step", StepRows.Write),
        ("reading", SolveRows.Reading),
        ("shape", SolveRows.Shape),
        ("transforms", TransformRows.Write),
        ("elements", SolveRows.Elements),
        ("wetting", SolveRows.Wetting),
        ("compile", SolveRows.Compile),
        ("files", FileRows.Write),
    ];

    /// <summary>Prints and writes the table.</summary>
    /// <param name="words">Names of parts, "commands" among them, or none for all.</param>
    public static void Print(string[] words)
    {
        bool Wanted(string part) => words.Length == 0 || words.Contains(part);
        string[] unknown = [.. words.Where(word => word != "commands" && Parts.All(part => part.Name != word))];
        if (unknown.Length > 0)
        {
            throw new ArgumentException($"No such part: {string.Join(", ", unknown)}. There are {string.Join(", ", Parts.Select(p => p.Name))}, commands.", nameof(words));
        }

        Directory.CreateDirectory(Path.Combine(Checkout.Artifacts, "bench"));
        string path = Path.Combine(Checkout.Artifacts, "bench", "table.md");
        using StreamWriter file = new(path) { AutoFlush = true };
        Stopwatch watch = Stopwatch.StartNew();
        Write(Machine());
        Write("");
        if (Parts.Any(part => Wanted(part.Name)))
        {
            HeartTable table = new(Write);
            table.Head();
            foreach ((string name, Action<HeartTable> rows) in Parts)
            {
                if (Wanted(name))
                {
                    rows(table);
                }
            }

            Write("");
        }

        if (Wanted("commands"))
        {
            CommandRows.Write(Write);
            Write("");
        }

        Write(string.Create(CultureInfo.InvariantCulture, $"Took {watch.Elapsed.TotalSeconds:0} s; load at its end {Load()}."));
        Console.WriteLine($"The table is in {path}");

        void Write(string line)
        {
            Console.WriteLine(line);
            file.WriteLine(line);
        }
    }

    private static string Machine()
    {
        const string list = "/proc/cpuinfo";
        string name = (File.Exists(list) ? File.ReadLines(list).FirstOrDefault(line => line.StartsWith("model name", StringComparison.Ordinal)) : null)?.Split(':')[^1].Trim()
            ?? "processor unknown";
        int bits = Vector512.IsHardwareAccelerated ? 512 : Vector256.IsHardwareAccelerated ? 256 : 128;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{name}, {Environment.ProcessorCount} processors, {bits}-bit vectors, {RuntimeInformation.OSArchitecture}, {RuntimeInformation.FrameworkDescription}, {DateTime.UtcNow:d MMMM yyyy HH:mm} UTC, load {Load()}.");
    }

    // proc(5): the first field of loadavg, the mean number of runnable tasks over the last minute.
    private static string Load() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "unknown";
}
