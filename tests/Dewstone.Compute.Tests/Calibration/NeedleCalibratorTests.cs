using Dewstone.Compute.Calibration;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;

namespace Dewstone.Compute.Tests.Calibration;

public sealed class NeedleCalibratorTests
{
    private static readonly double[] Doses = [10.0, 10.0, 10.0, 20.0, 20.0, 20.0, 40.0, 40.0, 40.0];

    // Delivered = 0.97 asked + 0.2 mL exactly, weighed with Z = 1.00285 mL/g (20 degC, 1013.25 hPa): gain, offset and no scatter come back.
    [Fact]
    public void Exact_weighings_give_back_gain_and_offset()
    {
        NeedleFit fit = One(Doses.Select(dose => (dose, 0.97 * dose + 0.2)));
        Assert.Equal(0.97, fit.State.Gain, 1e-10);
        Assert.Equal(0.2, fit.State.OffsetMillilitres, 1e-9);
        Assert.Equal(0.0, fit.State.Repeatability!.Value, 1e-12);
        Assert.Equal(NeedleCondition.Ok, fit.State.Condition);
        Assert.Equal(9, fit.Used);
    }

    // Scatter of 2 % a dose: over 200 seeded needles the 95 % intervals hold the true gain and offset in about 95 of 100. Binomial(200, 0.95): 180 or
    // fewer has a chance of 0.4 %.
    [Fact]
    public void Intervals_hold_the_truth_as_often_as_they_say()
    {
        int gain = 0, offset = 0;
        for (int needle = 0; needle < 200; needle++)
        {
            SeededDraws draws = new(20270401, needle);
            NeedleFit fit = One(Doses.Select((dose, i) => (dose, (0.97 * dose + 0.2) * (1.0 + 0.02 * NormalQuantile.At(draws.Fraction((ulong)i))))));
            gain += Math.Abs(fit.State.Gain - 0.97) <= fit.GainHalfWidth ? 1 : 0;
            offset += Math.Abs(fit.State.OffsetMillilitres - 0.2) <= fit.OffsetHalfWidth ? 1 : 0;
        }

        Assert.InRange(gain, 181, 200);
        Assert.InRange(offset, 181, 200);
    }

    [Fact]
    public void Outlier_is_named_and_left_out()
    {
        HeadCalibration head = Head(Doses.Select((dose, i) => (dose, (0.98 + 0.002 * (i % 3)) * dose * (i == 4 ? 0.7 : 1.0))));
        NeedleFit fit = Assert.Single(head.Needles);
        Assert.Equal(5, Assert.Single(fit.Outliers).Line - 1);
        Assert.Equal(8, fit.Used);
        Assert.InRange(fit.State.Gain, 0.975, 0.99);
        Diagnostic found = Assert.Single(head.Findings);
        Assert.Equal(("DW8326", 6), (found.Code, found.Location!.Line));
        Assert.False(Assert.Single(head.Advice).Clean);
    }

    [Fact]
    public void Good_needle_raises_nothing() =>
        Assert.Empty(Head(Doses.Select((dose, i) => (dose, (0.98 + 0.002 * (i % 3)) * dose))).Findings);

    [Theory]
    [InlineData("DW3050", NeedleCondition.Blocked, 0.1, 0.0, 9)]
    [InlineData("DW3051", NeedleCondition.Limited, 0.8, 0.0, 9)]
    [InlineData("DW3051", NeedleCondition.Limited, 1.0, 0.08, 9)]
    [InlineData("DW3051", NeedleCondition.Limited, 1.0, 0.0, 2)]
    public void Needle_is_judged_by_the_stated_rules(string code, NeedleCondition condition, double gain, double scatter, int readings)
    {
        HeadCalibration head = Head(Doses.Take(readings).Select((dose, i) => (dose, dose * gain * (1.0 + scatter * (i % 3 - 1)))));
        Assert.Equal(condition, head.Needles[0].State.Condition);
        Assert.Equal(code, Assert.Single(head.Findings).Code);
        Assert.Single(head.Advice);
    }

    // Down by 3 % since the last check: told as a note. By 8 %: limited and first to clean. By 0.2 %: nothing.
    [Theory]
    [InlineData(0.97, "DW3052")]
    [InlineData(0.92, "DW3051")]
    [InlineData(0.998, null)]
    public void Drift_since_the_last_check_is_told(double gain, string? code)
    {
        NeedleTable before = new() { Needles = [new NeedleState { Column = 2, Row = 3, Board = "B4" }, new NeedleState { Column = 1, Row = 9, Gain = 1.01 }] };
        HeadCalibration head = NeedleCalibrator.Calibrate(Readings(Doses.Select((dose, i) => (dose, dose * gain * (1.0 + 0.001 * (i % 3 - 1))))), before, "a.csv");
        Assert.Equal(gain - 1.0, head.Needles[0].Drift!.Value, 1e-3);
        Assert.Equal(code, head.Findings.SingleOrDefault()?.Code);
        Assert.Equal([(2, 3, "B4"), (1, 9, "")], head.Table.Needles.Select(needle => (needle.Column, needle.Row, needle.Board)));
        Assert.Equal(code == "DW3051", head.Advice is [{ Clean: true }]);
    }

    private static NeedleFit One(IEnumerable<(double Asked, double Delivered)> doses) => Assert.Single(Head(doses).Needles);

    private static HeadCalibration Head(IEnumerable<(double Asked, double Delivered)> doses) => NeedleCalibrator.Calibrate(Readings(doses), null, "a.csv");

    private static NeedleReading[] Readings(IEnumerable<(double Asked, double Delivered)> doses) =>
    [
        .. doses.Select((dose, i) => new NeedleReading
        {
            Column = 2,
            Row = 3,
            AskedMillilitres = dose.Asked,
            WeighedGrams = dose.Delivered / WaterVolume.MillilitresPerGram(20.0, 1013.25),
            WaterCelsius = 20.0,
            AirHectopascals = 1013.25,
            Line = i + 2,
        }),
    ];
}
