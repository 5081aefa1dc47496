using Dewstone.Compute.Survey;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Survey;

/// <summary>
/// Weights of units against the prediction, and their course. Student's t of 97.5 % is 2.776 with 4 degrees of freedom and 3.182 with 3: NIST/SEMATECH e-Handbook,
/// table 1.3.6.7.2 (from memory). Least shares of 1 %: common practice, no source.
/// </summary>
public sealed class WeightsCheckTests
{
    [Fact]
    public void Interval_of_the_mean_is_Students()
    {
        // s = sqrt(200/4) = 7.071 kg: 2.776 x 7.071 / sqrt(5) = 8.779 kg.
        WeightsReport report = Check(100.0, 110.0, 90.0, 100.0, 100.0, 100.0);
        Assert.Equal(2.776 * Math.Sqrt(50.0) / Math.Sqrt(5.0), report.MeanHalfWidthKilograms, 2e-3);
        Assert.Equal((100.0, 5), (report.PredictedKilograms, report.Units.Count));
        Assert.Empty(report.Findings);
    }

    [Theory]
    [InlineData(91.3, null)]
    [InlineData(91.2, "DW3083:0 the mean is 100 kg +- 8.78 kg, 91.2 kg is predicted (+9.6 %)")]
    [InlineData(108.7, null)]
    [InlineData(108.8, "DW3083:0 the mean is 100 kg +- 8.78 kg, 108.8 kg is predicted (-8.1 %)")]
    public void Mean_off_by_more_than_its_interval_is_told(double predicted, string? told) =>
        Assert.Equal(told is null ? [] : [told], Told(Check(predicted, 110.0, 90.0, 100.0, 100.0, 100.0)));

    // The interval is 0.09 kg only; 1 % of 99.02 kg is 0.9902 kg, more than the 0.98 kg between.
    [Theory]
    [InlineData(99.02, null)]
    [InlineData(99.0, "DW3083:0 the mean is 100 kg +- 0.09 kg, 99 kg is predicted (+1 %)")]
    [InlineData(100.98, null)]
    [InlineData(101.02, "DW3083:0 the mean is 100 kg +- 0.09 kg, 101.02 kg is predicted (-1 %)")]
    public void Mean_off_by_more_than_one_percent_is_told(double predicted, string? told) =>
        Assert.Equal(told is null ? [] : [told], Told(Check(predicted, 100.1, 99.9, 100.0, 100.0, 100.0)));

    // 4 kg over 0.05 m3 are 80 kg/m3; 4.17 % more mass over 0.8 is 5.2 % more dose. A unit whose mass hardly follows its doses has no such explanation.
    [Theory]
    [InlineData(0.8, 5.2083, "a loose density of 1780 instead of 1700 kg/m3 would explain it, or doses +5.2 % where the unit is larger or smaller than predicted; measure both")]
    [InlineData(0.051, 81.7, "a loose density of 1780 instead of 1700 kg/m3 would explain it, or doses +81.7 % where the unit is larger or smaller than predicted; measure both")]
    [InlineData(0.05, null, "a loose density of 1780 instead of 1700 kg/m3 would explain it; measure both")]
    public void What_would_explain_the_mean_is_told(double massPerDose, double? percent, string remedy)
    {
        WeightsReport report = WeightsCheck.Check(Question(96.0, massPerDose, 100.1, 99.9, 100.0, 100.0, 100.0));
        Assert.Equal(remedy, Assert.Single(report.Findings).Remedy);
        Assert.Equal(1780.0, report.ExplainingLooseKilogramsPerCubicMetre, 1e-9);
        Assert.Equal(percent is null, report.ExplainingDoseChange is null);
        Assert.Equal(percent ?? 0.0, 100.0 * report.ExplainingDoseChange ?? 0.0, 0.01);
    }

    // A straight line has no interval: only the 1 % of the mean, 1 kg of 100 kg, decides. Four steps of 0.255 kg are 1.02 kg.
    [Theory]
    [InlineData(0.245, null, "")]
    [InlineData(0.255, "DW3084:0 from `W-1` to `W-5` the weight changes by +1.02 kg +- 0 kg", "measure the needles (valves that no longer shut) and the moisture of the sand")]
    [InlineData(-0.245, null, "")]
    [InlineData(-0.255, "DW3084:0 from `W-1` to `W-5` the weight changes by -1.02 kg +- 0 kg", "measure the needles (tubes and filters that tire) and the loose density of reused mix")]
    public void Drift_of_one_percent_is_told(double step, string? told, string remedy)
    {
        WeightsReport report = Check(100.0, [.. Enumerable.Range(-2, 5).Select(x => 100.0 + x * step)]);
        Assert.Equal(4.0 * step, report.DriftKilograms, 1e-9);
        Assert.Equal(told is null ? [] : [told], Told(report));
        Assert.All(report.Findings, f => Assert.Equal(remedy, f.Remedy));
    }

    // A line of 1 kg a unit and e times -1, 2, 0, -2, 1, which has neither mean nor slope: residual variance 10 e2/3, over the sum of squares 10 a standard error of e/sqrt(3),
    // times 3.182 and four steps 7.349 e: 3.97 kg for 0.54 and 4.04 kg for 0.55, against a change of 4 kg.
    [Theory]
    [InlineData(0.55, null)]
    [InlineData(0.54, "DW3084:0 from `W-1` to `W-5` the weight changes by +4 kg +- 3.97 kg")]
    public void Drift_beyond_its_interval_is_told(double e, string? told)
    {
        WeightsReport report = Check(100.0, 98.0 - e, 99.0 + 2.0 * e, 100.0, 101.0 - 2.0 * e, 102.0 + e);
        Assert.Equal(4.0 * 3.182 / Math.Sqrt(3.0) * e, report.DriftHalfWidthKilograms, 1e-3);
        Assert.Equal(told is null ? [] : [told], Told(report));
    }

    // Rules of the Western Electric handbook as in NIST/SEMATECH e-Handbook, section 6.3.2: each is told at the unit that breaks it, with the one from which it counts. Forty
    // units swing by 1 kg about 100 kg, then a pattern, then both upside down, so that the mean stays; two standard deviations are 2 x 2/1.128 = 3.546 kg.
    [Theory]
    [InlineData("`W-43` is the second of three more than two standard deviations off the mean on the same side, from `W-41` on", 4.5, 0.0, 4.5)]
    [InlineData("`W-45` is the fourth of five more than one standard deviation off the mean on the same side, from `W-41` on", 2.5, 2.5, 0.0, 2.5, 2.5)]
    [InlineData("`W-48` is the eighth in a row on one side of the mean, from `W-41` on", 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5)]
    public void Rule_that_is_broken_is_told_in_words(string told, params double[] pattern)
    {
        double[] swing = [.. Enumerable.Range(0, 40).Select(i => i % 2 == 0 ? 101.0 : 99.0)];
        WeightsReport report = Check(100.0, [.. swing, .. pattern.Select(p => 100.0 + p), .. swing.Select(w => 200.0 - w), .. pattern.Select(p => 100.0 - p)]);
        Assert.StartsWith("DW3082:", Told(report).First(), StringComparison.Ordinal);
        Assert.EndsWith(" " + told, Told(report).First(), StringComparison.Ordinal);
        Assert.Equal(2, report.Findings.Count);
    }

    // Twenty units swing by 1 kg about 100 kg and one is 20 kg heavier: mean 2121/21 = 101 kg less a hair, ranges 19 of 2 kg, and 21 kg: 59/20 = 2.95 kg, limits 3 x 2.95/1.128 and 3.267 x 2.95.
    [Fact]
    public void Point_and_range_beyond_their_limits_are_told_with_them()
    {
        double[] swing = [.. Enumerable.Range(0, 20).Select(i => i % 2 == 0 ? 101.0 : 99.0)];
        Assert.Equal(
            ["DW3082:21 `W-21` weighs 120 kg, outside 93.11 to 108.8 kg", "DW3082:21 `W-21` differs by 21 kg from the unit before, more than 9.64 kg"], Told(Check(100.95, [.. swing, 120.0])).Where(t => t.StartsWith("DW3082", StringComparison.Ordinal)));
    }

    [Fact]
    public void Two_units_are_too_few_and_three_enough()
    {
        Assert.Throws<ArgumentException>(() => Check(100.0, 100.0, 101.0));
        Assert.Empty(Check(100.0, 100.0, 101.0, 99.5).Findings);
    }

    private static WeightsReport Check(double predicted, params double[] kilograms) => WeightsCheck.Check(Question(predicted, 0.8, kilograms));

    private static WeightsQuestion Question(double predicted, double massPerDose, params double[] kilograms) => new()
    {
        Units = [.. kilograms.Select((k, i) => new WeighedUnit($"W-{i + 1}", k, i + 1))],
        File = "weights.csv",
        PredictedKilograms = predicted,
        HardenedCubicMetres = 0.05,
        LooseKilogramsPerCubicMetre = 1700.0,
        MassPerDose = massPerDose,
    };

    private static IEnumerable<string> Told(WeightsReport report) => report.Findings.Select(SmallLog.Say);
}
