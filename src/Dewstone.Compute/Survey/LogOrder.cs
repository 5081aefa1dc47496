using System.Globalization;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>Stations watered out of their order, and a clock that goes back.</summary>
/// <remarks>
/// Rows are compared with the one before. Where only the time goes back, it is the clock; where only the place in the sequence goes back, the machine worked
/// out of order; where both do, the log is merely not sorted. Second rows of a position are passed over: they are repeats.
/// </remarks>
internal static class LogOrder
{
    /// <summary>Checks.</summary>
    /// <param name="book">The log; its times are given up when they go back.</param>
    /// <returns>DW3075 for each station that comes too late, and one DW3076.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        List<Diagnostic> found = [];
        HashSet<HeadPlace> seen = [];
        LoggedDose? last = null;
        (int Layer, int Station) farthest = default;
        int back = 0;
        Diagnostic? clock = null;
        HashSet<(int Layer, int Station)> late = [];
        foreach (LoggedDose row in book.Question.Rows)
        {
            HeadPlace place = new(row.Layer, row.Station, row.Column, row.Row);
            if (!seen.Add(place))
            {
                continue;
            }

            if (last is { } before)
            {
                bool placeBack = place.Block.CompareTo((before.Layer, before.Station)) < 0;
                bool timeBack = row.StartedSeconds < before.StartedSeconds;
                if (timeBack && !placeBack)
                {
                    back++;
                    clock ??= SurveyFindings.ClockBack.At(
                        string.Create(CultureInfo.InvariantCulture, $"{RunLogBook.Say(place)} is logged as started {before.StartedSeconds - row.StartedSeconds:0.#} s before the row above it"),
                        "find out when the clock was set; the times planned are used", location: book.At(row.Line));
                }
                else if (!timeBack && place.Block.CompareTo(farthest) < 0 && !book.RunTwice.Contains(place.Block) && late.Add(place.Block))
                {
                    found.Add(SurveyFindings.OutOfOrder.At(
                        $"layer {row.Layer}, station {row.Station} was watered after layer {farthest.Layer}, station {farthest.Station}",
                        "have the layers concerned judged before the unit is released", location: book.At(row.Line)));
                }
            }

            farthest = place.Block.CompareTo(farthest) > 0 ? place.Block : farthest;
            last = row;
        }

        if (clock is not null)
        {
            book.HasTimes = false;
            found.Add(back == 1 ? clock : clock with { Message = $"{clock.Message}; the clock goes back {back} times" });
        }

        return found;
    }
}
