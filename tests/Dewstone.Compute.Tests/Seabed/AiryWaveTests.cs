using Dewstone.Compute.Seabed;

namespace Dewstone.Compute.Tests.Seabed;

public sealed class AiryWaveTests
{
    /// <summary>
    /// Rows d/L0, d/L, k d, tanh, sinh, cosh in the form of Shore Protection Manual, 1984, appendix C, table C-1 (the table exists; digits recomputed). A period of 10 s is
    /// taken; d follows from it.
    /// </summary>
    [Theory]
    [InlineData(0.01, 0.04032, 0.25332, 0.24804, 0.25604, 1.03226)]
    [InlineData(0.05, 0.09415, 0.59159, 0.53104, 0.62671, 1.18015)]
    [InlineData(0.10, 0.14098, 0.88581, 0.70932, 1.00628, 1.41866)]
    [InlineData(0.15, 0.18330, 1.15172, 0.81832, 1.42377, 1.73986)]
    [InlineData(0.20, 0.22512, 1.41444, 0.88843, 1.93556, 2.17862)]
    [InlineData(0.30, 0.31212, 1.96110, 0.96117, 3.48321, 3.62392)]
    [InlineData(0.50, 0.50183, 3.15308, 0.99636, 11.68267, 11.72539)]
    public void Dispersion_equals_the_table(double deep, double overLength, double kd, double tanh, double sinh, double cosh)
    {
        AiryWave wave = new(1.0, 10.0, deep * AiryWave.DeepLength(10.0));

        Assert.Equal(overLength, wave.DepthMetres / wave.LengthMetres, 1e-5);
        Assert.Equal(kd, wave.RelativeDepth, 1e-5);
        Assert.Equal(tanh, Math.Tanh(wave.RelativeDepth), 1e-5);
        Assert.Equal(sinh, Math.Sinh(wave.RelativeDepth), 1e-5);
        Assert.Equal(cosh, Math.Cosh(wave.RelativeDepth), 1e-5);
    }

    /// <summary>w^2 = g k tanh(k d) is solved to round-off from ripples to tides.</summary>
    [Theory]
    [InlineData(0.5, 500.0)]
    [InlineData(3.0, 0.3)]
    [InlineData(7.0, 5.7)]
    [InlineData(40.0, 2.0)]
    public void Dispersion_leaves_no_residual(double period, double depth)
    {
        AiryWave wave = new(1.0, period, depth);
        double deep = 4.0 * Math.PI * Math.PI * depth / (AiryWave.Gravity * period * period);

        Assert.Equal(0.0, wave.RelativeDepth * Math.Tanh(wave.RelativeDepth) / deep - 1.0, 1e-12);
    }

    /// <summary>Coastal Engineering Manual, example II-1-1: T = 10 s in 3 m: L = 53.2 m, C = 5.32 m/s; in 200 m the wave is as long as in deep water.</summary>
    [Fact]
    public void Length_equals_the_manuals_example()
    {
        AiryWave shallow = new(1.0, 10.0, 3.0), deep = new(1.0, 10.0, 200.0);

        Assert.Equal(53.2, shallow.LengthMetres, 0.1);
        Assert.Equal(53.156, shallow.LengthMetres, 0.001);
        Assert.Equal(5.32, shallow.LengthMetres / 10.0, 0.01);
        Assert.Equal(1.0, deep.LengthMetres / AiryWave.DeepLength(10.0), 1e-6);
    }

    /// <summary>The approximation of Fenton and McKee, 1990, that the solution starts from is at most 1.66 % off, at d/L0 = 0.054 (recomputed).</summary>
    [Fact]
    public void Starting_approximation_is_as_far_off_as_published()
    {
        double worst = 0.0, at = 0.0;
        for (double deep = 0.002; deep < 1.0; deep += 0.001)
        {
            AiryWave wave = new(1.0, 10.0, deep * AiryWave.DeepLength(10.0));
            double error = Math.Abs(wave.RelativeDepth / AiryWave.Approximate(2.0 * Math.PI * deep) - 1.0);
            (worst, at) = error > worst ? (error, deep) : (worst, at);
        }

        Assert.Equal(0.0166, worst, 0.0002);
        Assert.Equal(0.054, at, 0.003);
    }

    /// <summary>Airy, H = 2 m, T = 8 s, d = 5 m: L0 = 99.9238, L = 53.0815, k d = 0.59184; at the bed u = 1.25262 m/s, a = 0.98380 m/s2, A = 1.59488 m; KC of 1 m is 10.021 (worked by hand).</summary>
    [Fact]
    public void Bottom_motion_equals_the_closed_form()
    {
        AiryWave wave = new(2.0, 8.0, 5.0);

        Assert.Equal(99.9238, AiryWave.DeepLength(8.0), 1e-3);
        Assert.Equal(53.0815, wave.LengthMetres, 1e-3);
        Assert.Equal(0.59184, wave.RelativeDepth, 1e-5);
        Assert.Equal(1.25262, wave.SpeedAt(0.0), 1e-5);
        Assert.Equal(0.98380, wave.AccelerationAt(0.0), 1e-5);
        Assert.Equal(1.59488, wave.ExcursionMetres, 1e-5);
        Assert.Equal(10.021, wave.SpeedAt(0.0) * 8.0, 1e-3);
        Assert.Equal(Math.PI * 2.0 / 8.0 / Math.Tanh(0.59184), wave.SpeedAt(5.0), 1e-4);
    }
}
