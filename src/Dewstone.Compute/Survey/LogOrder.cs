using System.Globalization;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>Stations watered out of their order, and a clock that goes back.</summary>
/// <remarks>
/// Where from one row to the next only the time goes back, it is the clock; where both time and place in the sequence do, the log is merely not sorted. With times that
/// can be used it is they that tell what came first, else the order of a log that is sorted. Second rows of a position are passed over: they are repeats.
/// </remarks>
internal static class LogOrder
{
    /// <summary>Checks.</summary>
    /// <param name="book">The log; its times are given up when they go back.</param>
    /// <returns>DW3075 for each station that comes too late, and one DW3076.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        LoggedDose[] rows = [.. book.Question.Rows.DistinctBy(Place)];
        int[] back = [.. Enumerable.Range(1, Math.Max(0, rows.Length - 1)).Where(i => rows[i].StartedSeconds < rows[i - 1].StartedSeconds)];
        int[] ofClock = [.. back.Where(i => Place(rows[i]).Block.CompareTo(Place(rows[i - 1]).Block) >= 0)];
        if (ofClock.Length == 0)
        {
            return Late(book, book.HasTimes ? rows.OrderBy(row => row.StartedSeconds) : rows);
        }

        book.HasTimes = false;
        (LoggedDose before, LoggedDose row) = (rows[ofClock[0] - 1], rows[ofClock[0]]);
        string times = ofClock.Length == 1 ? "" : $"; the clock goes back {ofClock.Length} times";
        Diagnostic clock = SurveyFindings.ClockBack.At(
            string.Create(CultureInfo.InvariantCulture, $"{RunLogBook.Say(Place(row))} is logged as started {before.StartedSeconds - row.StartedSeconds:0.#} s before the row above it{times}"),
            "find out when the clock was set; the times planned are used", location: book.At(row.Line));
        return back.Length > ofClock.Length ? [clock] : [.. Late(book, rows), clock];
    }

    private static List<Diagnostic> Late(RunLogBook book, IEnumerable<LoggedDose> rows)
    {
        List<Diagnostic> found = [];
        HashSet<(int Layer, int Station)> late = [];
        (int Layer, int Station) farthest = default;
        foreach (LoggedDose row in rows)
        {
            (int Layer, int Station) block = Place(row).Block;
            if (block.CompareTo(farthest) < 0 && !book.RunTwice.Contains(block) && late.Add(block))
            {
                found.Add(SurveyFindings.OutOfOrder.At(
                    $"layer {row.Layer}, station {row.Station} was watered after layer {farthest.Layer}, station {farthest.Station}",
                    "have the layers concerned judged before the unit is released", location: book.At(row.Line)));
            }

            farthest = block.CompareTo(farthest) > 0 ? block : farthest;
        }

        return found;
    }

    private static HeadPlace Place(LoggedDose row) => new(row.Layer, row.Station, row.Column, row.Row);
}
