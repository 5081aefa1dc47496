using CsCheck;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Tests.SitePlans;

public sealed class BargeLoadingTests
{
    // The instance on which first fit decreasing is at its worst of 11/9 (Johnson 1973 and Dosa 2007, from memory; reference C-1006): 6 of 51, 6 of 27,
    // 6 of 26, 12 of 23 into 100. FFD needs 11, the best loading 9, and the sum of 900 proves that none needs fewer.
    [Fact]
    public void Worst_instance_of_first_fit_decreasing_takes_eleven_where_nine_would_do()
    {
        double[] masses = [.. Enumerable.Repeat(51.0, 6), .. Enumerable.Repeat(27.0, 6), .. Enumerable.Repeat(26.0, 6), .. Enumerable.Repeat(23.0, 12)];

        BargeLoads loads = BargeLoading.Load(new Transport(new Mass(100.0), 40, 1), Units(masses));

        Assert.Equal(11, loads.Trips.Count);
        Assert.Equal(9, loads.LeastTrips);
    }

    // Three units of 60, 60, 40 kg and a payload of 100 kg: mass alone would allow 2 trips, and 2 they are; three of 60 need 3, though 180 kg are two trips' mass.
    [Theory]
    [InlineData(new[] { 60.0, 60.0, 40.0 }, 2)]
    [InlineData(new[] { 60.0, 60.0, 60.0 }, 3)]
    public void Least_trips_count_units_of_which_no_two_go_together(double[] masses, int least) =>
        Assert.Equal(least, BargeLoading.Load(new Transport(new Mass(100.0), 40, 1), Units(masses)).LeastTrips);

    [Fact]
    public void Deck_places_and_stack_bound_a_trip_and_the_lighter_stand_on_the_heavier()
    {
        BargeLoads loads = BargeLoading.Load(new Transport(new Mass(10000.0), 2, 2), Units([10, 20, 30, 40, 50]));

        Assert.Equal(2, loads.Trips.Count);
        Assert.Equal(2, loads.LeastTrips);
        Assert.Equal([(50.0, 1, 1), (40.0, 2, 1), (30.0, 1, 2), (20.0, 2, 2)], loads.Trips[0].Units.Select(on => (on.Unit.LiftKilograms, on.DeckPlace, on.Level)));
    }

    [Fact]
    public void Unit_heavier_than_the_payload_is_named_and_left()
    {
        BargeLoads loads = BargeLoading.Load(new Transport(new Mass(100.0), 4, 1), Units([101, 100]));

        Assert.Equal(["A-001"], loads.TooHeavy);
        Assert.Equal(["A-002"], loads.Trips.SelectMany(trip => trip.Units).Select(on => on.Unit.Mark));
    }

    // Held against every partition of up to seven units: the bound is never above the fewest trips, the loading never below.
    [Fact]
    public void Loading_is_sound_and_between_its_bound_and_the_worst_case() =>
        Gen.Select(Gen.Int[1, 100].Array[1, 7], Gen.Int[1, 4]).Sample((kilograms, places) =>
        {
            SeaUnit[] units = Units([.. kilograms.Select(mass => (double)mass)]);
            BargeLoads loads = BargeLoading.Load(new Transport(new Mass(100.0), places, 1), units);
            Assert.All(loads.Trips, trip => Assert.True(trip.Kilograms <= 100.0 && trip.Units.Count <= places));
            Assert.Equal(units.Select(unit => unit.Mark), loads.Trips.SelectMany(trip => trip.Units).Select(on => on.Unit.Mark).Order(StringComparer.Ordinal));
            int best = Fewest(kilograms, places, 0, []);
            Assert.InRange(loads.Trips.Count, best, int.MaxValue);
            Assert.InRange(loads.LeastTrips, 1, best);
        });

    private static int Fewest(int[] masses, int places, int next, List<(int Mass, int Count)> trips)
    {
        if (next == masses.Length)
        {
            return trips.Count;
        }

        trips.Add((masses[next], 1));
        int best = Fewest(masses, places, next + 1, trips);
        trips.RemoveAt(trips.Count - 1);
        for (int i = 0; i < trips.Count; i++)
        {
            (int mass, int count) = trips[i];
            if (mass + masses[next] <= 100 && count < places)
            {
                trips[i] = (mass + masses[next], count + 1);
                best = Math.Min(best, Fewest(masses, places, next + 1, trips));
                trips[i] = (mass, count);
            }
        }

        return best;
    }

    private static SeaUnit[] Units(double[] masses) => [.. masses.Select((mass, i) => SeaSamples.Unit($"A-{i + 1:000}", lift: mass))];
}
