using Dewstone.Compute.Seabed;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Seabed;

/// <summary>
/// A cube of 1 m and 2300 kg/m3 in water of 1025 kg/m3, CD 1.05, CM 1.67 (Hoerner; DNV-RP-C205 appendix D; from memory), mu 0.6, in the bottom motion of an Airy wave of 2 m, 8 s in 5 m.
/// W' = 1275 x 9.81 = 12507.75 N; FD = 844.35 N, FI = 1684.03 N, and as FI is nearly 2 FD the greatest push is FI (Morison et al., 1950; worked by hand).
/// </summary>
public sealed class WaveLoadTests
{
    private const double Submerged = 12507.75;

    private static readonly AiryWave Wave = new(2.0, 8.0, 5.0);
    private static readonly StandingBody Cube = Bodies.Box(1.0, 1.0, 1.0);
    private static readonly Footing Foot = new(Submerged, 0.6, 0.0);
    private static readonly ForceCoefficients NoLift = new(1.05, 1.67, 0.0), WithLift = new(1.05, 1.67, 0.8);

    private static SeaState Waves => new() { WaterDensity = 1025.0, WaveSpeed = Wave.SpeedAt(0.0), WaveAcceleration = Wave.AccelerationAt(0.0), WaveTowards = 0.0 };

    private static SeaState Steady(double speed) => new() { WaterDensity = 1025.0, WaveSpeed = 0.0, WaveAcceleration = 0.0, WaveTowards = 0.0, CurrentSpeed = speed, CurrentTowards = 0.0 };

    private static IEnumerable<StabilityRow> Phases(ForceCoefficients forces) =>
        Enumerable.Range(0, 3600).Select(i => WaveLoad.At(Cube, Foot, Waves, forces, 0.0, 0.1 * i));

    [Fact]
    public void Forces_on_the_cube_equal_the_worked_ones()
    {
        StabilityRow crest = WaveLoad.At(Cube, Foot, Waves, NoLift, 0.0, 0.0), still = WaveLoad.At(Cube, Foot, Waves, NoLift, 0.0, 270.0);

        Assert.Equal(844.35, crest.DragNewtons, 0.01);
        Assert.Equal(1684.03, still.InertiaNewtons, 0.01);
        Assert.Equal(1684.03, Phases(NoLift).Max(row => row.HorizontalNewtons), 0.01);
    }

    [Fact]
    public void Factors_without_lift_equal_the_worked_ones()
    {
        Assert.Equal(4.4564, Phases(NoLift).Min(row => row.Sliding), 1e-3);
        Assert.Equal(7.4273, Phases(NoLift).Min(row => row.Overturning), 1e-3);
    }

    /// <summary>Lift in phase with U^2: resolved in time 4.4338 and 6.3677; greatest push and lift taken at once would give 4.2271.</summary>
    [Fact]
    public void Factors_with_lift_are_resolved_in_time()
    {
        Assert.Equal(4.4338, Phases(WithLift).Min(row => row.Sliding), 1e-3);
        Assert.Equal(6.3677, Phases(WithLift).Min(row => row.Overturning), 1e-3);
        double together = 0.6 * (Submerged - Phases(WithLift).Max(row => row.LiftNewtons)) / Phases(WithLift).Max(row => row.HorizontalNewtons);
        Assert.Equal(4.2271, together, 1e-3);
    }

    /// <summary>Steady 1.5 m/s: F = 1210.78 N, factor 6.1982. The current that just moves it: mu W' = 0.5 rho U^2 (CD + mu CL): 3.7344 m/s without lift, 3.0937 with.</summary>
    [Fact]
    public void Steady_current_equals_the_worked_one()
    {
        StabilityRow row = WaveLoad.At(Cube, Foot, Steady(1.5), NoLift, 0.0, 0.0);

        Assert.Equal(1210.78, row.HorizontalNewtons, 0.01);
        Assert.Equal(6.1982, row.Sliding, 1e-4);
        Assert.Equal(1.0, WaveLoad.At(Cube, Foot, Steady(3.7344), NoLift, 0.0, 0.0).Sliding, 1e-4);
        Assert.Equal(1.0, WaveLoad.At(Cube, Foot, Steady(3.0937), WithLift, 0.0, 0.0).Sliding, 1e-4);
    }

    /// <summary>Turned by 45 degrees a cube shows sqrt(2) of its face, and turns over an edge that lies at 45 degrees to the push.</summary>
    [Fact]
    public void Cube_seen_along_its_diagonal_meets_more_water()
    {
        StabilityRow row = WaveLoad.At(Cube, Foot, Steady(1.5), NoLift, 45.0, 0.0);

        Assert.Equal(1210.78 * Math.Sqrt(2.0), row.DragNewtons, 0.01);
        // W' x 0.5 against F cos 45 x 0.5.
        Assert.Equal(Submerged / 1210.78, row.Overturning, 1e-3);
    }

    /// <summary>Slope s: mu cos s / sin s against sliding by weight alone, b cos s / (z sin s) against overturning.</summary>
    [Fact]
    public void Slope_alone_gives_the_closed_form()
    {
        double slope = 10.0 * Math.PI / 180.0;
        StabilityRow row = WaveLoad.At(Cube, Foot with { SlopeRadians = slope }, Steady(0.0), NoLift, 0.0, 0.0);

        Assert.Equal(0.6 / Math.Tan(slope), row.Sliding, 1e-12);
        Assert.Equal(1.0 / Math.Tan(slope), row.Overturning, 1e-9);
    }

    /// <summary>Least weight: F FS / mu + L against sliding, FS (F z + L b) / b against overturning (from the factors' own equations, solved for W').</summary>
    [Fact]
    public void Least_weight_gives_just_the_factor_asked_for()
    {
        foreach (double slope in (double[])[0.0, 0.03])
        {
            Footing foot = Foot with { SlopeRadians = slope };
            StabilityRow row = WaveLoad.At(Cube, foot, Steady(2.0), WithLift, 20.0, 0.0);
            double least = WaveLoad.LeastNewtons(row, foot, Cube, 1.3, 1.5);
            StabilityRow light = WaveLoad.At(Cube, foot with { SubmergedNewtons = least }, Steady(2.0), WithLift, 20.0, 0.0);

            Assert.Equal(1.0, Math.Min(light.Sliding / 1.3, light.Overturning / 1.5), 1e-9);
        }
    }

    [Fact]
    public void Clay_holds_no_more_than_its_strength()
    {
        StabilityRow row = WaveLoad.At(Cube, Foot with { MostNewtons = 1210.78 }, Steady(1.5), NoLift, 0.0, 0.0);

        Assert.Equal(1.0, row.Sliding, 1e-4);
    }

    [Fact]
    public void Lifted_body_has_no_factor_left()
    {
        StabilityRow row = WaveLoad.At(Cube, Foot, Steady(6.0), WithLift, 0.0, 0.0);

        Assert.True(row.LiftNewtons > Submerged);
        Assert.Equal(0.0, row.Sliding);
    }
}
