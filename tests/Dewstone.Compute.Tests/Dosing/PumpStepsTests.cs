using CsCheck;
using Dewstone.Compute.Dosing;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class PumpStepsTests
{
    private static readonly DoseLimits Yard = new() { LeastMillilitres = 2, MostMillilitres = 44, PoreMillilitres = 44.9 };

    [Theory]
    [InlineData(0.1, 1.0, 0.0, 266, 2660)]
    [InlineData(0.1, 0.985, 0.12, 266, 2632)]     // 0.985 x 26.6 + 0.12 = 26.321
    [InlineData(0.1, 1.005, 0.0, 1, 10)]          // 0.1005
    [InlineData(0.25, 0.98, 0.0, 1, 25)]          // 0.245: the half goes away from zero
    [InlineData(0.25, 1.02, 0.0, 1, 26)]          // 0.255: the half goes away from zero although its double lies below
    [InlineData(0.1, 1.0, -0.3, 2, 0)]            // never less than nothing
    [InlineData(0.1, 1.0, 0.5, 0, 0)]             // a pump that is not asked gives nothing, whatever its offset
    public void Delivered_volume_is_gain_times_asked_plus_offset_rounded_to_a_hundredth(
        double step, double gain, double offset, int steps, int centiMillilitres) =>
        Assert.Equal(centiMillilitres, new PumpSteps(step, gain, offset).CentiMillilitres(steps));

    [Fact]
    public void Step_that_a_unit_conversion_blurred_is_the_step_meant() =>
        Assert.Equal(1000, new PumpSteps(1e-7 * 1e6).CentiMillilitres(100));

    [Theory]
    [InlineData(0.0, 0)]
    [InlineData(0.99, 0)]        // nearer to none
    [InlineData(1.0, 20)]        // as near: the least
    [InlineData(1.5, 20)]
    [InlineData(26.5625, 266)]
    [InlineData(44.0, 440)]
    [InlineData(60.0, 440)]
    public void Wanted_volume_becomes_the_nearest_allowed_steps(double wanted, int steps) =>
        Assert.Equal(steps, new PumpSteps(0.1).Steps(wanted, Yard));

    [Fact]
    public void Pores_below_the_most_hold_the_dose_back()
    {
        DoseLimits tight = Yard with { PoreMillilitres = 30.07 };

        Assert.Equal(300, new PumpSteps(0.1).Steps(40, tight));
    }

    [Fact]
    public void Pores_below_the_least_leave_the_voxel_dry() =>
        Assert.Equal(0, new PumpSteps(0.1).Steps(1.9, Yard with { PoreMillilitres = 1.9 }));

    [Fact]
    public void Step_coarser_than_the_limits_leaves_the_voxel_dry() =>
        Assert.Equal(0, new PumpSteps(50).Steps(20, Yard));

    /// <summary>For any pump and wish: the delivered volume is none or within the limits, and no other number of steps within them is nearer.</summary>
    [Fact]
    public void Delivered_volume_keeps_the_limits_and_is_the_nearest_for_any_pump()
    {
        Gen<(double Step, double Gain, double Offset, double Wanted, double Pores)> gen = Gen.Select(
            Gen.Double[0.05, 3.0], Gen.Double[0.8, 1.2], Gen.Double[-0.8, 0.8], Gen.Double[0.0, 60.0], Gen.Double[3.0, 60.0]);
        for (uint seed = 0; seed < 2000; seed++)
        {
            (double step, double gain, double offset, double wanted, double pores) = gen.Generate(new PCG(seed, 3), null, out _);
            var pump = new PumpSteps(step, gain, offset);
            DoseLimits limits = Yard with { PoreMillilitres = pores };

            int steps = pump.Steps(wanted, limits);
            double given = pump.CentiMillilitres(steps) / 100.0;

            if (steps == 0)
            {
                bool some = Enumerable.Range(1, 1500).Any(n => pump.CentiMillilitres(n) is >= 200 and var c && c / 100.0 <= limits.UpperMillilitres);
                Assert.True(wanted < 1.0 || !some, $"seed {seed}: {wanted} mL got nothing");
                continue;
            }

            Assert.InRange(given, 2.0, limits.UpperMillilitres);
            double aim = limits.Clamp(wanted);
            foreach (int other in (int[])[steps - 1, steps + 1])
            {
                double otherGiven = pump.CentiMillilitres(other) / 100.0;
                bool allowed = otherGiven >= 2.0 && otherGiven <= limits.UpperMillilitres;
                Assert.True(!allowed || Math.Abs(otherGiven - aim) >= Math.Abs(given - aim) - 0.0101, $"seed {seed}: {other} steps would be nearer");
            }
        }
    }
}
