using Dewstone.Model.Description;

namespace Dewstone.Orders.SitePlans;

/// <summary>Fills trips: the heaviest unit first, each into the first trip that still bears it and has a place.</summary>
/// <remarks>
/// First fit decreasing. Where the payload alone binds it needs at most 11/9 of the fewest trips and 6/9 of a trip more (Dosa 2007, "The tight bound of
/// first fit decreasing bin-packing algorithm is FFD(I) &lt;= 11/9 OPT(I) + 6/9"; from memory). <see cref="BargeLoads.LeastTrips"/> bounds the fewest from below:
/// by mass, by places, and by units of which no two go together (Martello and Toth 1990, "Knapsack problems", section 8.3.2, bound L2).
/// </remarks>
public static class BargeLoading
{
    // Each threshold gives a bound of its own; in orders of thousands not all are tried.
    private const int MostThresholds = 500;

    /// <summary>Loads the units.</summary>
    /// <param name="transport">Payload, places, stack.</param>
    /// <param name="units">The units.</param>
    /// <returns>The trips; the same whatever the order of <paramref name="units"/>.</returns>
    public static BargeLoads Load(Transport transport, IReadOnlyList<SeaUnit> units)
    {
        ArgumentNullException.ThrowIfNull(transport);
        ArgumentNullException.ThrowIfNull(units);
        double payload = transport.Payload.Kilograms;
        SeaUnit[] carried = [.. units.Where(unit => unit.LiftKilograms <= payload).OrderByDescending(unit => unit.LiftKilograms).ThenBy(unit => unit.Mark, StringComparer.Ordinal)];
        int most = transport.DeckPlaces * transport.Stack;
        List<(List<SeaUnit> Units, double Kilograms)> trips = [];
        foreach (SeaUnit unit in carried)
        {
            int fits = trips.FindIndex(trip => trip.Units.Count < most && trip.Kilograms + unit.LiftKilograms <= payload);
            if (fits < 0)
            {
                trips.Add(([unit], unit.LiftKilograms));
                continue;
            }

            trips[fits].Units.Add(unit);
            trips[fits] = (trips[fits].Units, trips[fits].Kilograms + unit.LiftKilograms);
        }

        // The heaviest stand on deck and the lighter on them, since each trip was filled heaviest first.
        return new BargeLoads(
            [.. trips.Select((trip, i) => new BargeTrip(i + 1, [.. trip.Units.Select((unit, at) => new DeckedUnit(unit, at % transport.DeckPlaces + 1, at / transport.DeckPlaces + 1))]))],
            LeastTrips(payload, most, [.. carried.Select(unit => unit.LiftKilograms)]),
            [.. units.Where(unit => unit.LiftKilograms > payload).Select(unit => unit.Mark)]);
    }

    private static int LeastTrips(double payload, int most, double[] falling)
    {
        int least = (falling.Length + most - 1) / most;
        double[] large = [.. falling.Where(mass => mass > 0.5 * payload)];
        double[] thresholds = [.. falling.Where(mass => mass <= 0.5 * payload).Append(0.0).Distinct()];
        int stride = 1 + thresholds.Length / MostThresholds;
        for (int i = 0; i < thresholds.Length; i += stride)
        {
            double threshold = thresholds[^(i + 1)];
            double[] shared = [.. large.Where(mass => mass <= payload - threshold)];
            double room = shared.Length * payload - shared.Sum();
            double small = falling.Where(mass => mass <= 0.5 * payload && mass >= threshold).Sum();
            least = Math.Max(least, large.Length + Math.Max(0, Trips((small - room) / payload)));
        }

        return least;
    }

    // Sums of masses carry rounding: a billionth of a trip is none.
    private static int Trips(double trips) => (int)Math.Ceiling(trips - 1e-9);
}
