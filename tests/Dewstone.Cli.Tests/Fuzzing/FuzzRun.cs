using System.Text.Json;
using System.Text.RegularExpressions;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Runs cases one after another and judges how each ends.</summary>
/// <param name="yard">Its files.</param>
internal sealed partial class FuzzRun(FuzzYard yard)
{
    private const int MostFailures = 20;
    private const long MostBytes = 1L << 30;

    // Hangs, not times: a case takes some milliseconds. What waits for something uses no processor; on a machine with other work, what computes does so slowly.
    private static readonly TimeSpan LongestComputing = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan LongestWaiting = TimeSpan.FromSeconds(60);

    private static readonly int[] Known = [ExitCode.Done, ExitCode.No, ExitCode.InputAtFault, ExitCode.CannotCreate, ExitCode.TryAgain];

    private readonly List<string> failures = [];
    private readonly SortedDictionary<int, int> ends = [];

    /// <summary>How often each exit code was seen.</summary>
    public string Ends => string.Join(", ", ends.Select(end => $"exit {end.Key}: {end.Value}"));

    /// <summary>Runs cases until all are done or too many failed.</summary>
    /// <param name="cases">How many.</param>
    /// <param name="first">Number of the first.</param>
    /// <param name="seed">Seed of the run.</param>
    /// <param name="make">Damages the yard and gives the words.</param>
    /// <returns>The failures.</returns>
    public async Task<IReadOnlyList<string>> All(uint cases, uint first, ulong seed, Func<Dice, FuzzCase> make)
    {
        string before = Environment.CurrentDirectory;
        try
        {
            for (uint number = first; number < first + cases && failures.Count < MostFailures; number++)
            {
                Environment.CurrentDirectory = yard.In("work");
                FuzzCase made = make(new Dice(number, seed));
                if (await Fault(made) is { } fault)
                {
                    failures.Add($"case {number} of seed {seed}, {made}\n  {fault}");
                }
            }
        }
        finally
        {
            Environment.CurrentDirectory = before;
        }

        return failures;
    }

    /// <summary>Runs one case.</summary>
    /// <param name="made">The case.</param>
    /// <returns>What was wrong with its end; null when all was well.</returns>
    public async Task<string?> Fault(FuzzCase made)
    {
        Dictionary<string, (long, DateTime)> standing = yard.Standing();
        long before = GC.GetTotalMemory(forceFullCollection: false), most = before;
        using Timer watch = new(_ => most = Math.Max(most, GC.GetTotalMemory(forceFullCollection: false)), null, 10, 10);
        Words.Answer answer;
        try
        {
            Task<Words.Answer> run = Task.Run(() => Words.Run(made.Words));
            TimeSpan computed = Environment.CpuUsage.TotalTime;
            Task end = Task.Delay(LongestWaiting);
            while (!run.IsCompleted && !end.IsCompleted && Environment.CpuUsage.TotalTime - computed < LongestComputing)
            {
                await Task.WhenAny(run, end, Task.Delay(LongestComputing / 10));
            }

            if (!run.IsCompleted)
            {
                yard.Restore(yard.Standing());
                return "did not end";
            }

            answer = await run;
        }
        catch (Exception fault)
        {
            yard.Restore(yard.Standing());
            return $"threw {fault}";
        }

        ends[answer.Code] = ends.GetValueOrDefault(answer.Code) + 1;
        Dictionary<string, (long, DateTime)> left = yard.Standing();
        string? stray = FuzzYard.Changes(standing, left).FirstOrDefault(path => !made.MayWrite.Any(may => Within(path, may) || Within(may, path)));
        string? half = left.Keys.FirstOrDefault(path => Path.GetFileName(path) is ['.', ..] name && name.Trim('.').Length > 0 && !made.Words.Any(word => word.EndsWith(name, StringComparison.Ordinal)));
        yard.Restore(left);
        return Judge(made, answer) ??
            (most - before > MostBytes ? $"took {(most - before) >> 20} MiB" : null) ??
            (stray is null ? null : $"changed {stray}") ??
            (half is null ? null : $"left {half}");
    }

    private static bool Within(string path, string folder) => path == folder || path.StartsWith(folder + "/", StringComparison.Ordinal);

    private static string? Judge(FuzzCase made, Words.Answer answer)
    {
        string said = answer.Output + answer.Error;
        bool asked = made.Words.Any(word => word is "--help" or "-h" or "-?" or "--version" || word.StartsWith('['));
        if (!Known.Contains(answer.Code))
        {
            return $"ended with {answer.Code}: {answer.Error}";
        }

        if (said.Contains("\n   at ", StringComparison.Ordinal) || said.Contains("Exception", StringComparison.Ordinal))
        {
            return $"showed its insides: {said}";
        }

        if (answer.Code is not (ExitCode.Done or ExitCode.No) && !asked && !Code().IsMatch(said))
        {
            return $"ended with {answer.Code} and no code: {said}";
        }

        if (said.FirstOrDefault(c => char.IsControl(c) && c is not ('\n' or '\t')) is var control and not '\0')
        {
            return $"wrote the control character U+{(int)control:X4}: {JsonEncodedText.Encode(said)}";
        }

        return answer.Code != ExitCode.Done && said.Length == 0 ? $"ended with {answer.Code} and said nothing" : null;
    }

    [GeneratedRegex("(error|warning|note) DW[0-9]{4}|\"DW[0-9]{4}\"", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 10_000)]
    private static partial Regex Code();
}
