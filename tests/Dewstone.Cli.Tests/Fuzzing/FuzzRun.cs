using System.Diagnostics;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Runs cases one after another and judges how each ends.</summary>
/// <param name="yard">Its files.</param>
internal sealed partial class FuzzRun(FuzzYard yard)
{
    private const int MostFailures = 20;
    private const long MostBytes = 1L << 30;

    // A hang, not a time: a case takes some milliseconds.
    private static readonly TimeSpan Longest = TimeSpan.FromSeconds(5);

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

                yard.Restore();
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
        long allocated = GC.GetTotalAllocatedBytes();
        Stopwatch clock = Stopwatch.StartNew();
        Words.Answer answer;
        try
        {
            Task<Words.Answer> run = Task.Run(() => Words.Run(made.Words));
            answer = await run.WaitAsync(Longest);
        }
        catch (TimeoutException)
        {
            return $"did not end within {Longest.TotalSeconds} s";
        }
        catch (Exception fault)
        {
            return $"threw {fault}";
        }

        ends[answer.Code] = ends.GetValueOrDefault(answer.Code) + 1;
        allocated = GC.GetTotalAllocatedBytes() - allocated;
        return Judge(made, answer) ??
            (allocated > MostBytes ? $"took {allocated >> 20} MiB" : null) ??
            (yard.Changes(standing).FirstOrDefault(path => !made.MayWrite.Any(may => path == may || path.StartsWith(may + "/", StringComparison.Ordinal) || may.StartsWith(path + "/", StringComparison.Ordinal))) is { } stray ? $"changed {stray}" : null) ??
            (yard.Standing().Keys.FirstOrDefault(path => made.MayWrite.Any(may => path.StartsWith(may + "/", StringComparison.Ordinal)) && Path.GetFileName(path).StartsWith('.')) is { } half ? $"left {half}" : null);
    }

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

    [GeneratedRegex("DW[0-9]{4}|^dewstone: ", RegexOptions.Multiline)]
    private static partial Regex Code();
}
