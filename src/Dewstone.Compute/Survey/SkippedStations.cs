using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Survey;

/// <summary>Stations that got no water although the print went on.</summary>
internal static class SkippedStations
{
    /// <summary>Checks.</summary>
    /// <param name="book">The log; marks what is explained.</param>
    /// <returns>DW3064, one a station.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        List<Diagnostic> found = [];
        foreach (LoggedPosition[] station in book.Planned.GroupBy(p => p.Place.Block).Select(s => s.ToArray()))
        {
            if (station.Length >= 2 && Array.TrueForAll(station, p => p.Delivered == 0 && !p.IsExplained))
            {
                Array.ForEach(station, p => p.IsExplained = true);
                found.Add(book.Find(
                    SurveyFindings.StationSkipped, station[0],
                    FormattableString.Invariant($"layer {station[0].Place.Layer}, station {station[0].Place.Station} got no water: {station.Length} doses, {station.Sum(p => p.Planned) / 1e5:0.00} L"),
                    "look at valve, supply and sequence"));
            }
        }

        return found;
    }
}
