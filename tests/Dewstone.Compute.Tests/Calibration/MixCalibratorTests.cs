using Dewstone.Compute.Calibration;
using Dewstone.Model.Description;
using Dewstone.Model.Measurements;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Calibration;

public sealed class MixCalibratorTests
{
    private static readonly double[] Truths = [4.4e-6, 0.25, 1655.0];
    private static readonly double[] Doses = [3.0, 3.0, 3.0, 6.0, 6.0, 6.0, 12.0, 12.0, 12.0, 20.0, 20.0, 35.0, 35.0];
    private static readonly LawTables Power4 = new(new SaturationLaw(true, 4));

    // Twenty data sets of a known mix, each with its own seeded errors. A 95 % interval holds the truth in 17 or more of 20 with a chance of 98 %
    // (binomial: 0.984).
    [Fact]
    public void Known_figures_come_back_within_their_intervals()
    {
        int[] held = Held(20);
        Assert.All(held, count => Assert.InRange(count, 17, 20));
    }

    // A hundred with the same errors, twice and four times as large: 90 or more of 100 have a chance of 98.9 %.
    [Theory]
    [Trait("Category", "Soak")]
    [InlineData(1.0)]
    [InlineData(2.0)]
    [InlineData(4.0)]
    public void Known_figures_come_back_within_their_intervals_in_a_hundred(double errors)
    {
        int[] held = Held(100, errors);
        TestContext.Current.SendDiagnosticMessage($"errors x {errors}: intervals that hold the truth, of 100: {string.Join(", ", held)}");
        Assert.All(held, count => Assert.InRange(count, 90, 100));
    }

    [Fact]
    public void Absorption_alone_does_not_tell_threshold_and_density()
    {
        MixCalibration found = Calibrate(new SimulatedTests(1).Absorption(4));
        Assert.Equal([true, false, false], found.Figures.Select(figure => figure.Fitted));
        Assert.Equal(["DW3053", "DW3053"], found.Findings.Select(finding => finding.Code));
        Assert.Contains("hardening threshold", found.Findings[0].Message, StringComparison.Ordinal);
        Assert.Equal(0.22, found.Mix!.Hardening.WaterCement);
        Assert.Equal(0.05, found.Mix.Uncertainty!.Threshold);
    }

    // A density that is not told but uncertain by 2 % moves the fitted diffusivity, and both are stored with their correlation.
    [Fact]
    public void Figure_that_is_kept_lends_its_spread_to_the_fitted_ones()
    {
        MixReadings data = new SimulatedTests(2, Power4).Pairs([50, 50, 50, 50, 50], 20.0);
        MixCalibration found = Calibrate(data), exact = Calibrate(SimulatedTests.Assumed with { Uncertainty = null }, data);
        Assert.Equal([true, false, false], found.Figures.Select(figure => figure.Fitted));
        Assert.Equal(found.Figures[0].Value, exact.Figures[0].Value);
        Assert.True(found.Figures[0].Spread > 1.5 * exact.Figures[0].Spread);
        Assert.InRange(Math.Abs(found.Mix!.Uncertainty!.Correlation!.DiffusivityDensity), 0.2, 1.0);
    }

    [Fact]
    public void Pairs_at_several_spacings_tell_all_figures()
    {
        MixCalibration found = Calibrate(new SimulatedTests(2, Power4).Pairs([40, 40, 40, 50, 50, 50, 60, 60, 60, 70, 70, 70], 20.0), new SimulatedTests(4, Power4).Densities(4));
        Assert.Empty(found.Findings);
        for (int j = 0; j < 3; j++)
        {
            Assert.InRange(Truths[j], found.Figures[j].Low, found.Figures[j].High);
        }
    }

    // The tests made with D = 1.5e-5 exp(8 (s - 1)) and fitted with a power of s: told, not hidden.
    [Fact]
    public void Wrong_law_is_told_by_lack_of_fit()
    {
        DryMix other = SimulatedTests.Truth with { Wetting = new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = 8 } };
        SimulatedTests yard = new(3, null, other);
        Assert.Contains("DW3055", Calibrate(yard.Absorption(4), yard.Balls(Doses), yard.Densities(4)).Findings.Select(finding => finding.Code));
        SimulatedTests right = new(3, Power4);
        Assert.Empty(Calibrate(right.Absorption(4), right.Balls(Doses), right.Densities(4)).Findings);
    }

    // First-order left-out residuals against fits that really leave the measurement out.
    [Fact]
    public void Left_out_residuals_are_those_of_a_fit_without_the_measurement()
    {
        MixReadings densities = new SimulatedTests(5, Power4).Densities(6);
        MixObservation one = Calibrate(densities).Observations[2];
        MixCalibration without = Calibrate(densities with { Densities = [.. densities.Densities.Where((_, i) => i != 2)] });
        Assert.Equal(one.Measured / without.Figures[2].Value - 1.0, one.LeftOutResidual, 1e-4);
    }

    // Densities alone fit one figure: what each of them should have been is that figure.
    [Fact]
    public void Fitted_value_of_a_density_is_the_fitted_density()
    {
        MixCalibration found = Calibrate(new SimulatedTests(5, Power4).Densities(6));
        Assert.All(found.Observations, one => Assert.Equal(found.Figures[2].Value, one.Fitted, 1e-9 * one.Fitted));
        Assert.Contains(found.Observations, one => Math.Abs(one.Measured / one.Fitted - 1.0) > 1e-3);
    }

    [Fact]
    public void Slip_is_named_with_its_line()
    {
        SimulatedTests yard = new(6, Power4);
        MixReadings balls = yard.Balls(Doses);
        balls = balls with { Balls = [.. balls.Balls.Select((ball, i) => i == 7 ? ball with { DryGrams = 0.8 * ball.DryGrams, WetGrams = 0.8 * ball.WetGrams } : ball)] };
        Assert.Contains(Calibrate(yard.Absorption(4), balls, yard.Densities(4)).Findings, finding => finding.Code == "DW3056" && finding.Location!.Line == 9);
    }

    // One column, of usual scatter 3 % known as if by four readings: S goes with the root of D, so 2 x 3 % x t(4) = 2.776 each way (textbook table), as a
    // logarithm; the density that is kept adds nothing when it is exact.
    [Fact]
    public void One_column_tells_the_diffusivity_by_the_usual_scatter()
    {
        FittedFigure found = Calibrate(SimulatedTests.Assumed with { Uncertainty = null }, new SimulatedTests(1, Power4).Absorption(1)).Figures[0];
        Assert.True(found.Fitted);
        Assert.Equal(2.0 * 0.03 * 2.7764, Math.Log(found.High / found.Value), 1e-3);
    }

    [Fact]
    public void Column_off_the_root_of_time_is_told()
    {
        MixReadings column = new() { File = "a", Absorption = [.. new[] { 60.0, 300, 900, 1800, 3600 }.Select((time, i) => new AbsorptionReading("A", time, 0.001 * time, 50, i + 2))] };
        Assert.Contains(Calibrate(column).Findings, finding => finding.Code == "DW3057" && finding.Location!.Line == 2);
        Assert.DoesNotContain(Calibrate(new SimulatedTests(1, Power4).Absorption(2)).Findings, finding => finding.Code == "DW3057");
    }

    // Balls of 20 to 40 mL only: a denser bed that wets less easily gives the same balls.
    [Fact]
    public void Figures_that_go_together_are_told()
    {
        MixReadings balls = new SimulatedTests(7, Power4).Balls([20, 25, 30, 35, 40, 20, 25, 30, 35, 40]);
        Assert.Contains(Calibrate(balls).Findings, finding => finding.Code is "DW3054");
    }

    [Fact]
    public void Better_exponent_is_found_when_asked_for()
    {
        DryMix other = SimulatedTests.Truth with { Wetting = new PowerLaw { AtSaturation = new Diffusivity(4e-7), Exponent = 2 } };
        SimulatedTests yard = new(3, null, other);
        MixReadings[] data = [yard.Absorption(4), yard.Balls(Doses), yard.Densities(4)];
        MixCalibration scan = MixCalibrator.Calibrate(new MixQuestion { Mix = SimulatedTests.Assumed, Data = data, Exponents = [2, 3, 4, 5], Reference = "a.csv" });
        Assert.Equal(2, scan.Mix!.Wetting.Exponent);
        Assert.Equal([2, 3, 4, 5], scan.Exponents.Select(trial => trial.Exponent));
    }

    [Fact]
    public void Mix_that_cannot_be_fitted_is_refused()
    {
        DryMix holding = SimulatedTests.Assumed with { Wetting = SimulatedTests.Assumed.Wetting with { Residual = 0.02 } };
        MixCalibration refused = Calibrate(holding, new SimulatedTests(1, Power4).Densities(3));
        Assert.Equal("DW3058", Assert.Single(refused.Findings).Code);
        Assert.Null(refused.Mix);

        // Mix weighed in kilograms as if they were grams.
        MixReadings light = new() { File = "a", Densities = [new DensityReading(2000.0, 3.3, 2), new DensityReading(2000.0, 3.31, 3)] };
        MixCalibration none = Calibrate(light);
        Assert.Contains(none.Findings, finding => finding.Code == "DW3059");
        Assert.Null(none.Mix);
    }

    private static int[] Held(int repeats, double errors = 1.0)
    {
        int[] held = new int[3];
        for (int repeat = 0; repeat < repeats; repeat++)
        {
            SimulatedTests yard = new(repeat, Power4, null, errors);
            MixCalibration found = Calibrate(yard.Absorption(4), yard.Balls(Doses), yard.Densities(4));
            Assert.NotNull(found.Mix);
            for (int j = 0; j < 3; j++)
            {
                Assert.True(found.Figures[j].Fitted);
                held[j] += Truths[j] >= found.Figures[j].Low && Truths[j] <= found.Figures[j].High ? 1 : 0;
            }
        }

        return held;
    }

    private static MixCalibration Calibrate(params MixReadings[] data) => Calibrate(SimulatedTests.Assumed, data);

    private static MixCalibration Calibrate(DryMix mix, params MixReadings[] data) =>
        MixCalibrator.Calibrate(new MixQuestion { Mix = mix, Data = data, Reference = "a.csv" }, _ => Power4, CancellationToken.None);
}
