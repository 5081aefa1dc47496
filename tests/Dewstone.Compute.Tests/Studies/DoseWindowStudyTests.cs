using Dewstone.Compute.Dosing;
using Dewstone.Compute.Studies;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Studies;

public sealed class DoseWindowStudyTests
{
    private static readonly Lattice Voxel = LimitsStudy.OneVoxel(Samples.YardPrinter());

    private static Printer Yard(Func<Needle, Needle> needle)
    {
        Printer yard = Samples.YardPrinter();
        return yard with { Needle = needle(yard.Needle) };
    }

    private static DoseWindow Of(Printer? printer = null, double limit = 0.60, NeedleTable? needles = null, double closing = 28.0) =>
        DoseWindowStudy.Of(Samples.Job(printer: printer, needles: needles), Voxel, limit, closing);

    [Fact]
    public void Lower_end_is_the_dose_that_closes_the_pockets()
    {
        JobDescription job = Samples.Job();
        double closing = PocketClosing.Millilitres(job, Placer.Place(job, 2).Lattice!);

        Assert.Equal(closing, DoseWindowStudy.Of(job, Voxel, 0.60).ClosingMillilitres);
    }

    /// <summary>
    /// Dose balance of a voxel, exact: V = w/c x binder x voxel / liquid density = 0.60 x (1700 x 0.25) kg/m3 x 0.05^3 m3 / 1000 kg/m3 = 31.875 mL.
    /// </summary>
    [Theory]
    [InlineData(0.60, 31.875)]
    [InlineData(0.55, 29.21875)]
    public void Upper_end_is_the_dose_balance_of_the_limit(double limit, double expected)
    {
        DoseWindow window = Of(limit: limit);

        Assert.Equal(DoseCeiling.WaterCement, window.Ceiling);
        Assert.Equal(expected, window.GreatestMillilitres, 1e-9);
        Assert.Equal(limit, window.GreatestMillilitres * window.WaterCementPerMillilitre, 1e-12);
    }

    [Fact]
    public void Upper_end_stops_at_the_needle_and_at_the_pores()
    {
        DoseWindow needle = Of(Yard(n => n with { Most = Volume.FromMillilitres(30) })), pores = Of(Yard(n => n with { Most = Volume.FromMillilitres(90) }), 1.0);

        Assert.Equal((DoseCeiling.Needle, 30.0), (needle.Ceiling, needle.GreatestMillilitres));

        // Densest likely packing is 1.04 x 1700 kg/m3 (two standard deviations of 2 %): pores 1 - 1768 (0.25 / 3150 + 0.75 / 2650) = 0.359305, of 125 mL.
        Assert.Equal(DoseCeiling.Pores, pores.Ceiling);
        Assert.Equal(44.913, pores.GreatestMillilitres, 0.001);
    }

    /// <summary>Independent shares add by their squares: 2 x sqrt(0.03^2 + 0.04^2) = 0.10 of the middle of 28 to 31.875 mL, which is 29.9375 mL.</summary>
    [Fact]
    public void Two_deviations_add_repeatability_and_drift_by_squares()
    {
        DoseWindow window = Of(Yard(n => n with { Repeatability = 0.03, Drift = 0.04 }));

        Assert.Equal(2.99375, window.TwoDeviationsMillilitres(window.Repeatability), 1e-9);
        Assert.Equal(1.9375, window.HalfMillilitres, 1e-9);
        Assert.False(window.IsWideEnough);
        Assert.Equal((576, 576), (window.Needles, window.NeedlesTooLoose));
    }

    /// <summary>Without drift 1 % is 0.6 mL and fits 1.9 mL either way; 4 % is 2.4 mL and does not. Blocked needles are in no use.</summary>
    [Fact]
    public void Needles_of_the_table_are_counted_by_their_own_repeatability()
    {
        NeedleTable table = new()
        {
            Needles =
            [
                new NeedleState { Column = 1, Row = 1, Repeatability = 0.04 },
                new NeedleState { Column = 2, Row = 1, Repeatability = 0.06, Condition = NeedleCondition.Blocked },
                new NeedleState { Column = 3, Row = 1 },
            ],
        };

        DoseWindow window = Of(Yard(n => n with { Repeatability = 0.01, Drift = 0.0 }), needles: table);

        Assert.Equal((575, 1, 0.04), (window.Needles, window.NeedlesTooLoose, window.WorstRepeatability));
        Assert.True(Of(Yard(n => n with { Repeatability = 0.01, Drift = 0.0 })).IsWideEnough);
    }

    [Fact]
    public void Limit_below_the_closing_dose_leaves_no_window()
    {
        DoseWindow window = Of(Yard(n => n with { Repeatability = 0.0, Drift = 0.0 }), limit: 0.5);

        Assert.True(window.HalfMillilitres < 0.0);
        Assert.False(window.IsWideEnough || window.SpreadIsKnown);
    }
}
