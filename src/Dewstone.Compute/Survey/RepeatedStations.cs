using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Survey;

/// <summary>Layers and stations that were run twice.</summary>
internal static class RepeatedStations
{
    /// <summary>Checks.</summary>
    /// <param name="book">The log; marks what is explained.</param>
    /// <returns>DW3061, one a layer, or one a station where not all of a layer's were repeated.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        List<Diagnostic> found = [];
        foreach (IGrouping<int, LoggedPosition> layer in book.Planned.GroupBy(p => p.Place.Layer))
        {
            LoggedPosition[][] stations = [.. layer.GroupBy(p => p.Place.Station).Select(station => station.ToArray())];
            LoggedPosition[][] twice = [.. stations.Where(IsTwice)];
            foreach (LoggedPosition[] station in twice)
            {
                book.RunTwice.Add(station[0].Place.Block);
                Array.ForEach(station, p => p.IsExplained = p.Doses > 1);
            }

            if (twice.Length == stations.Length)
            {
                found.Add(Twice(book, $"layer {layer.Key}", [.. twice.SelectMany(s => s)]));
            }
            else
            {
                found.AddRange(twice.Select(station => Twice(book, $"layer {layer.Key}, station {station[0].Place.Station}", station)));
            }
        }

        return found;
    }

    private static bool IsTwice(LoggedPosition[] station) => station.Count(p => p.Doses > 1) is var twice && twice >= 2 && 2 * twice >= station.Length;

    private static Diagnostic Twice(RunLogBook book, string where, LoggedPosition[] positions)
    {
        LoggedPosition first = positions.First(p => p.Doses > 1);
        double planned = positions.Sum(p => p.Planned) / 1e5, given = positions.Sum(p => p.Delivered) / 1e5;
        return book.Find(
            SurveyFindings.RunTwice, first, FormattableString.Invariant($"{where} was run twice: {given:0.00} L where {planned:0.00} L was planned"),
            "look at the openings there, and find out why the machine lost its count") with
        { Location = book.At(first.Rows[1].Line) };
    }
}
