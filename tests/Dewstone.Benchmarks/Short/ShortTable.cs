using System.Diagnostics;
using System.Globalization;

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
        Write(Machine.Line());
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

        Write(string.Create(CultureInfo.InvariantCulture, $"Took {watch.Elapsed.TotalSeconds:0} s; load at its end {Machine.Load()}."));
        Console.WriteLine($"The table is in {path}");

        void Write(string line)
        {
            Console.WriteLine(line);
            file.WriteLine(line);
        }
    }
}
