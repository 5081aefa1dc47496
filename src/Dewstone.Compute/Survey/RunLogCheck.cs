using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>Holds a machine's run log against the doses of the job's tables, and says what was really delivered.</summary>
/// <remarks>
/// Greater faults are looked for first, and what they explain is not told again dose by dose: layers run twice, order and clock, a print that was not
/// finished, swapped stations and layers, stations skipped, needles and boards stuck, needles and boards drifting; then single doses.
/// </remarks>
public static class RunLogCheck
{
    /// <summary>Checks.</summary>
    /// <param name="question">The job and its log.</param>
    /// <returns>Doses and times as run, and all findings; only DW8344 when the log does not belong to the job.</returns>
    public static RunLogReport Check(RunLogQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        RunLogBook book = new(question);
        IReadOnlyList<Diagnostic> foreign = book.Enter();
        if (foreign.Count > 0)
        {
            return new RunLogReport { Findings = foreign };
        }

        List<Diagnostic> found =
        [
            .. RepeatedStations.Check(book), .. LogOrder.Check(book), .. UnfinishedPrint.Check(book), .. WrongTables.Check(book), .. SkippedStations.Check(book),
            .. StuckNeedles.Check(book), .. DriftingNeedles.Check(book), .. OddDoses.Check(book), .. PumpTimes.Check(book), .. LongPauses.Check(book),
        ];
        DosePlan delivered = Delivered(book);
        return new RunLogReport
        {
            Delivered = delivered,
            Schedule = book.HasTimes ? RunTimes.Of(book, delivered) : null,
            IsFinished = !found.Exists(f => f.Code == SurveyFindings.Unfinished.Code),
            PlannedDoses = book.Planned.Count,
            GivenDoses = book.Planned.Count(p => p.Delivered > 0),
            Findings = [.. found.OrderBy(f => f.Code, StringComparer.Ordinal)],
        };
    }

    private static DosePlan Delivered(RunLogBook book)
    {
        DosePlan planned = book.Question.Planned;
        DosePlan delivered = new() { Lattice = planned.Lattice, Steps = [.. planned.Steps], CentiMillilitres = [.. planned.CentiMillilitres] };
        foreach (LoggedPosition position in book.All.Where(p => p.Index >= 0))
        {
            delivered.CentiMillilitres[position.Index] = position.Delivered;
            delivered.Steps[position.Index] = position.Delivered == 0 ? 0 : Math.Max(1, planned.Steps[position.Index]);
        }

        return delivered;
    }
}
