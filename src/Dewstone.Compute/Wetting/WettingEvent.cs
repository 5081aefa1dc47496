namespace Dewstone.Compute.Wetting;

/// <summary>A moment that cuts the time steps.</summary>
/// <param name="Seconds">When, s.</param>
/// <param name="Kind">What happens.</param>
/// <param name="Layer">Layer, from 0.</param>
/// <param name="Station">The station that gives a shot; null otherwise.</param>
/// <param name="Shot">Which shot, from 0.</param>
internal sealed record WettingEvent(double Seconds, WettingEventKind Kind, int Layer, Station? Station = null, int Shot = 0)
{
    /// <summary>All events of a problem, in order of time; at the same time: spread, freeze, mark, set, shoot, each from the lowest layer up.</summary>
    /// <param name="problem">The problem.</param>
    /// <returns>The events; the last is the freezing of the top dosed layer; none when no dose is given.</returns>
    public static List<WettingEvent> Of(WettingProblem problem)
    {
        List<Station> stations = Wetting.Station.Of(problem);
        if (stations.Count == 0)
        {
            return [];
        }

        List<WettingEvent> events = [];
        double[] clocks = Clocks(problem, stations);
        for (int layer = 0; layer < clocks.Length; layer++)
        {
            events.Add(new(problem.Schedule.LayerSpreadSeconds[layer], WettingEventKind.Spread, layer));
            events.Add(new(clocks[layer] + problem.Bed.WindowSeconds, WettingEventKind.Freeze, layer));
        }

        events.AddRange(OfTwoGoes(problem, stations));
        foreach (Station station in stations)
        {
            for (int shot = 0; shot < Station.Shots; shot++)
            {
                events.Add(new(station.ShotSeconds(shot), WettingEventKind.Shot, station.Layer, station, shot));
            }
        }

        // A stable sort: what is equal in time and kind stays in the order of layers and stations.
        return [.. events.OrderBy(e => e.Seconds).ThenBy(e => e.Kind)];
    }

    // After a stop in mid-layer its first go sets a window after its own first dose, with the layers that share its clock.
    private static IEnumerable<WettingEvent> OfTwoGoes(WettingProblem problem, List<Station> stations)
    {
        if (problem.Schedule.ResumedSeconds is not { } resumed || stations.Find(station => station.StartSeconds >= resumed) is not { } second
            || stations.Where(station => station.Layer == second.Layer && station.StartSeconds < resumed).Select(station => (double?)station.StartSeconds).Min() is not { } start)
        {
            yield break;
        }

        int first = second.Layer, last = second.Layer;
        while (first > 0 && !stations.Exists(station => station.Layer == first - 1))
        {
            first--;
        }

        if (!stations.Exists(station => station.Layer > last))
        {
            last = problem.Lattice.Layers - 1;
        }

        double sets = start + problem.Bed.WindowSeconds;
        for (int layer = first; layer <= last; layer++)
        {
            yield return new(Math.Min(resumed, sets), WettingEventKind.Mark, layer);
            yield return new(sets, WettingEventKind.Set, layer);
        }
    }

    /// <summary>
    /// When the clock of each layer starts, s: at its first dose; of a layer in two goes, at the first of the second. A layer without a dose shares the clock of the next dosed layer above, where
    /// its water comes from; above the top dosed layer, of the one below. No layer stops before the one below it.
    /// </summary>
    private static double[] Clocks(WettingProblem problem, List<Station> stations)
    {
        int layers = problem.Lattice.Layers;
        double[] clocks = new double[layers];
        Array.Fill(clocks, double.NaN);
        foreach (Station station in stations)
        {
            bool isFirstOfSecondGo = clocks[station.Layer] < problem.Schedule.ResumedSeconds && station.StartSeconds >= problem.Schedule.ResumedSeconds;
            if (!(clocks[station.Layer] <= station.StartSeconds) || isFirstOfSecondGo)
            {
                clocks[station.Layer] = station.StartSeconds;
            }
        }

        for (int layer = layers - 2; layer >= 0; layer--)
        {
            clocks[layer] = double.IsNaN(clocks[layer]) ? clocks[layer + 1] : clocks[layer];
        }

        for (int layer = 1; layer < layers; layer++)
        {
            clocks[layer] = double.IsNaN(clocks[layer]) ? clocks[layer - 1] : Math.Max(clocks[layer - 1], clocks[layer]);
        }

        return clocks;
    }
}
