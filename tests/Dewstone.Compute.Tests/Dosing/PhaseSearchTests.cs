using Dewstone.Compute.Dosing;

namespace Dewstone.Compute.Tests.Dosing;

/// <summary>The search within a voxel on objectives made by hand, whose least place is known.</summary>
public sealed class PhaseSearchTests
{
    private static readonly GridPhase Start = new(0, 0, 0, false);

    private static GridPhase Find(Func<GridPhase, double?> objective, bool mayMove = true, bool mayShiftLayers = true) =>
        PhaseSearch.Find(Start, mayMove, mayShiftLayers, PhaseSearch.FewSolves, (phase, _) => objective(phase), (phase, _) => objective(phase));

    // A wave over the voxel along each axis, least at one place: 100 L less 10 L for each axis that is right.
    private static double Waves(GridPhase phase, GridPhase least) =>
        100.0 - 10.0 * (Wave(phase.X - least.X) + Wave(phase.Y - least.Y) + Wave(phase.Z - least.Z)) - (phase.ShiftedLayers == least.ShiftedLayers ? 10.0 : 0.0);

    private static double Wave(int quarters) => (quarters & 3) switch { 0 => 1.0, 2 => -1.0, _ => 0.0 };

    [Fact]
    public void Least_place_of_waves_is_found_wherever_it_lies()
    {
        for (int i = 0; i < 128; i++)
        {
            GridPhase least = new(i & 3, (i >> 2) & 3, (i >> 4) & 3, i >= 64);

            Assert.Equal(least, Find(phase => Waves(phase, least)));
        }
    }

    [Fact]
    public void Equal_places_leave_the_unit_where_it_is() => Assert.Equal(Start, Find(_ => 50.0));

    [Theory]
    [InlineData(0.995, false)]
    [InlineData(0.985, true)]
    public void Gain_within_the_noise_counts_as_none(double share, bool moves)
    {
        GridPhase Along(Func<GridPhase, bool> isBetter) => Find(phase => isBetter(phase) ? share * 80.0 : 80.0);

        Assert.Equal(moves ? Start with { X = 1 } : Start, Along(phase => phase == Start with { X = 1 }));
        Assert.Equal(moves ? Start with { Z = 2 } : Start, Along(phase => phase.Z == 2));
        Assert.Equal(moves ? Start with { ShiftedLayers = true } : Start, Along(phase => phase.ShiftedLayers));
    }

    /// <summary>Of several equal best places the one that comes first in the stated order: up before along x before along y, forth before half before back.</summary>
    [Fact]
    public void Of_equal_best_places_the_first_in_order_is_taken()
    {
        Assert.Equal(Start with { Z = 1 }, Find(phase => phase == Start ? 100.0 : 50.0, mayShiftLayers: false));
        Assert.Equal(Start with { X = 1 }, Find(phase => phase.Z == 0 && phase != Start ? 50.0 : 100.0, mayShiftLayers: false));
        Assert.Equal(Start with { Y = 2 }, Find(phase => phase == Start with { Y = 2 } || phase == Start with { Y = 3 } ? 50.0 : 100.0, mayShiftLayers: false));
    }

    [Fact]
    public void Places_without_room_are_passed_over()
    {
        GridPhase least = new(2, 1, 3, false);

        Assert.Equal(least with { X = 0 }, Find(phase => phase.X == 0 ? Waves(phase, least) : null));
        Assert.Equal(Start, Find(phase => phase == Start ? 10.0 : null));
        Assert.Equal(Start, Find(_ => null));
    }

    [Fact]
    public void What_is_not_free_stays()
    {
        GridPhase least = new(1, 2, 3, true);

        Assert.Equal(Start with { ShiftedLayers = true }, Find(phase => Waves(phase, least), mayMove: false));
        Assert.Equal(least with { ShiftedLayers = false }, Find(phase => Waves(phase, least), mayShiftLayers: false));
        Assert.Equal(Start, Find(phase => Waves(phase, least), mayMove: false, mayShiftLayers: false));
    }

    /// <summary>Six solves of each way of layering, one of the eight or more places, three of the last: 30 in all at most, whatever is found.</summary>
    [Fact]
    public void Solves_are_bounded()
    {
        for (int i = 0; i < 128; i++)
        {
            GridPhase least = new(i & 3, (i >> 2) & 3, (i >> 4) & 3, i >= 64);
            var layerings = new Dictionary<bool, int>();
            var places = new Dictionary<GridPhase, int>();

            PhaseSearch.Find(
                Start, true, true, PhaseSearch.FewSolves,
                (phase, solves) =>
                {
                    layerings[phase.ShiftedLayers] = Math.Max(solves, layerings.GetValueOrDefault(phase.ShiftedLayers));
                    return Waves(phase, least);
                },
                (phase, solves) =>
                {
                    places[phase] = Math.Max(solves, places.GetValueOrDefault(phase));
                    return Waves(phase, least);
                });

            Assert.InRange(layerings.Values.Sum() + places.Values.Sum(), 10, 12 + 10 + 8);
        }
    }
}
