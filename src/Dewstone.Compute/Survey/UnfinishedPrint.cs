using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Survey;

/// <summary>A print that stopped before its end.</summary>
internal static class UnfinishedPrint
{
    /// <summary>Checks.</summary>
    /// <param name="book">The log; marks what is explained.</param>
    /// <returns>DW3060, or nothing when the last station got water.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        LoggedPosition[][] stations = [.. book.Planned.GroupBy(p => p.Place.Block).Select(station => station.ToArray())];
        int last = Array.FindLastIndex(stations, station => Array.Exists(station, p => p.Delivered > 0));
        int given = last < 0 ? 0 : stations[last].Count(p => p.Delivered > 0), asked = last < 0 ? 0 : stations[last].Length;

        // Within the last station of all, half of its doses must be gone: single needles fail too.
        bool isCut = last >= 0 && (last + 1 < stations.Length ? 4 * (asked - given) >= asked : 2 * (asked - given) >= asked && asked - given >= 2);
        if (stations.Length == 0 || (last == stations.Length - 1 && !isCut))
        {
            return [];
        }

        foreach (LoggedPosition position in stations[(last + 1)..].SelectMany(s => s).Concat(isCut ? stations[last].Where(p => p.Delivered == 0) : []))
        {
            position.IsExplained = true;
        }

        string what;
        if (last < 0)
        {
            what = "the log holds no water at all";
        }
        else
        {
            HeadPlace place = stations[last][0].Place;
            bool isMidLayer = isCut || (last + 1 < stations.Length && stations[last + 1][0].Place.Layer == place.Layer);
            int left = stations[(last + 1)..].Sum(s => s.Length) + (isCut ? asked - given : 0);
            what = $"the print stopped {(isMidLayer ? "in" : "after")} layer {place.Layer}{(isMidLayer ? $" at station {place.Station}" : "")}: "
                + $"{given} of the {asked} doses there were given, and {left} of {book.Planned.Count} doses are left";
        }

        LoggedPosition end = last < 0 ? stations[0][0] : stations[last].Last(p => p.Delivered > 0);
        return [book.Find(SurveyFindings.Unfinished, end, what, "ask `dewstone resume` whether to go on")];
    }
}
