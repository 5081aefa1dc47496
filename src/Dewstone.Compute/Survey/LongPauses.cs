using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Survey;

/// <summary>Pauses that the times of a run log show.</summary>
internal static class LongPauses
{
    private const double LeastPauseSeconds = 120.0;

    /// <summary>Checks.</summary>
    /// <param name="book">The log; nothing is found without times.</param>
    /// <returns>DW3077 and DW3078, from the lowest layer up.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        if (!book.HasTimes)
        {
            return [];
        }

        List<Diagnostic> found = [];
        double window = book.Question.WindowSeconds;
        LoggedPosition[]? below = null;
        foreach (LoggedPosition[] layer in book.Planned.Where(p => p.Rows.Count > 0).GroupBy(p => p.Place.Layer).Select(l => l.ToArray()))
        {
            double spread = Last(layer) - First(layer), plannedSpread = layer.Max(p => Planned(book, p)) - layer.Min(p => Planned(book, p));
            if (spread > window && plannedSpread <= window)
            {
                found.Add(Cold(book, layer[^1], $"layer {layer[0].Place.Layer} was watered in two goes, {Minutes(spread)} apart", window));
            }

            if (below is not null)
            {
                double age = First(layer) - First(below), planned = layer.Min(p => Planned(book, p)) - below.Min(p => Planned(book, p));
                string between = $"layer {layer[0].Place.Layer} got its first dose {Minutes(age)} after layer {below[0].Place.Layer}";
                if (age > window && planned <= window)
                {
                    found.Add(Cold(book, layer[0], between, window));
                }
                else if (age - planned > LeastPauseSeconds)
                {
                    found.Add(book.Find(SurveyFindings.Pause, layer[0], $"{between}, {Minutes(planned)} was planned", "find out why the machine stood"));
                }
            }

            below = layer;
        }

        return found;
    }

    private static double First(LoggedPosition[] layer) => layer.Min(p => p.Rows[0].StartedSeconds!.Value);

    // Of a layer that was run twice the second run does not count as the rest of the first.
    private static double Last(LoggedPosition[] layer) => layer.Max(p => p.Rows[0].StartedSeconds!.Value);

    private static double Planned(RunLogBook book, LoggedPosition position) => book.Question.Schedule.DoseStartSeconds[position.Index];

    private static Diagnostic Cold(RunLogBook book, LoggedPosition position, string what, double window) => book.Find(
        SurveyFindings.ColdJoint, position, $"{what}, against a window of {Minutes(window)}", "have the joint judged by licensed practice, or scrap the unit");

    private static string Minutes(double seconds) => FormattableString.Invariant($"{seconds / 60.0:0.#} min");
}
