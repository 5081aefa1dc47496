using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Survey;

/// <summary>Needles, and whole boards of them, that gave more or less as the print went on.</summary>
internal static class DriftingNeedles
{
    private const double LeastChange = 0.05;
    private const double StandardErrors = 4.0;
    private const int LeastDoses = 4;
    private const int LeastLayers = 3;

    /// <summary>Checks.</summary>
    /// <param name="book">The log; marks what is explained.</param>
    /// <returns>DW3068, one a board, then DW3067, one a needle that is not on such a board.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        double limit = Math.Max(LeastChange, book.Question.Job.Printer.Needle.Drift);
        List<(LoggedPosition[] Doses, DriftLine Line)> fitted = [];
        foreach (LoggedPosition[] doses in book.Planned.Where(p => !p.IsExplained && p.Delivered > 0 && p.Rows.Count == 1).GroupBy(p => p.Place.Needle).Select(n => n.ToArray()))
        {
            if (doses.Length >= LeastDoses && doses.Select(p => p.Place.Layer).Distinct().Count() >= LeastLayers && Fit(book, doses) is { } line)
            {
                fitted.Add((doses, line));
            }
        }

        List<Diagnostic> found = [];
        foreach (IGrouping<string, (LoggedPosition[] Doses, DriftLine Line)> board in fitted.GroupBy(f => book.Board(f.Doses[0].Place.Needle)).Where(b => b.Key.Length > 0 && b.Count() >= 3).ToArray())
        {
            LoggedPosition[] all = [.. board.SelectMany(f => f.Doses).OrderBy(p => p.Place.Block)];
            DriftLine common = Fit(book, all)!.Value;
            int alike = board.Count(f => Math.Sign(f.Line.Change) == Math.Sign(common.Change) && Math.Abs(f.Line.Change) >= limit / 2.0);
            if (Drifts(common, limit) && 4 * alike >= 3 * board.Count())
            {
                fitted.RemoveAll(board.Contains);
                found.Add(Drift(book, SurveyFindings.BoardDrifts, all, common, $"board {board.Key} with {board.Count()} needles", "look at the board and its supply, and measure its needles again"));
            }
        }

        found.AddRange(fitted.Where(f => Drifts(f.Line, limit)).Select(f => Drift(
            book, SurveyFindings.NeedleDrifts, f.Doses, f.Line, $"needle {f.Doses[0].Place.Column},{f.Doses[0].Place.Row}", "measure it again before the next print")));
        return found;
    }

    private static bool Drifts(DriftLine line, double limit) => Math.Abs(line.Change) >= limit && Math.Abs(line.Slope) >= StandardErrors * line.SlopeError;

    private static DriftLine? Fit(RunLogBook book, LoggedPosition[] doses)
    {
        double[] layers = [.. doses.Select(p => (double)p.Place.Layer)], shares = [.. doses.Select(p => (double)p.Delivered / p.Planned)];
        return DriftLine.Of(layers, shares, doses.Average(p => book.Repeatability(p.Place.Needle)));
    }

    private static Diagnostic Drift(RunLogBook book, FindingKind kind, LoggedPosition[] doses, DriftLine line, string who, string remedy)
    {
        Array.ForEach(doses, p => p.IsExplained = true);
        return book.Find(
            kind, doses[0],
            FormattableString.Invariant($"{who} drifts: {100.0 * line.At(line.First):0.#} % of what was asked in layer {line.First:0}, {100.0 * line.At(line.Last):0.#} % in layer {line.Last:0}"), remedy);
    }
}
