using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Survey;

/// <summary>Needles, and whole boards of them, that delivered nothing more from some layer on.</summary>
internal static class StuckNeedles
{
    /// <summary>Checks.</summary>
    /// <param name="book">The log; marks what is explained.</param>
    /// <returns>DW3066, one a board, then DW3065, one a needle that is not on such a board.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        List<LoggedPosition[]> stuck = [];
        Dictionary<(int Column, int Row), LoggedPosition[]> needles = book.Planned.Where(p => !p.IsExplained).GroupBy(p => p.Place.Needle).ToDictionary(n => n.Key, n => n.ToArray());
        foreach (LoggedPosition[] doses in needles.Values)
        {
            LoggedPosition[] end = doses[(Array.FindLastIndex(doses, p => p.Delivered > 0) + 1)..];
            if (end.Select(p => p.Place.Layer).Distinct().Count() >= 2)
            {
                stuck.Add(end);
            }
        }

        List<Diagnostic> found = [];
        foreach (IGrouping<(string Board, int Layer), LoggedPosition[]> board in stuck.GroupBy(s => (book.Board(s[0].Place.Needle), s[0].Place.Layer)).Where(b => b.Key.Item1.Length > 0).ToArray())
        {
            LoggedPosition[] all = [.. board.SelectMany(needle => needle)];
            bool others = needles.Any(n => book.Board(n.Key) == board.Key.Board && n.Value.Any(p => p.Place.Layer >= board.Key.Layer && p.Delivered > 0));
            if (board.Count() < 2 || others)
            {
                continue;
            }

            stuck.RemoveAll(board.Contains);
            found.Add(Stuck(book, SurveyFindings.BoardStuck, all, $"board {board.Key.Board} with {board.Count()} needles is", "look at the board, its cable and its supply"));
        }

        found.AddRange(stuck.Select(end => Stuck(
            book, SurveyFindings.NeedleStuck, end, $"needle {end[0].Place.Column},{end[0].Place.Row} is", "clean or change it, and mark it blocked until then")));
        return found;
    }

    private static Diagnostic Stuck(RunLogBook book, FindingKind kind, LoggedPosition[] doses, string who, string remedy)
    {
        Array.ForEach(doses, p => p.IsExplained = true);
        return book.Find(
            kind, doses[0], FormattableString.Invariant($"{who} stuck from layer {doses[0].Place.Layer}, station {doses[0].Place.Station} on: {doses.Length} doses, {doses.Sum(p => p.Planned) / 100.0:0.0} mL"), remedy);
    }
}
