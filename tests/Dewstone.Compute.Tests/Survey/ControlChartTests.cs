using Dewstone.Compute.Survey;

namespace Dewstone.Compute.Tests.Survey;

public sealed class ControlChartTests
{
    // Flow rate of ten batches. Source: NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.2, worked example: mean 50.81, mean moving range
    // 1.8778 (from the ten values), limits 55.8041 and 45.8159 with d2 = 1.128.
    [Fact]
    public void Limits_are_those_of_the_handbooks_example()
    {
        ControlChart chart = ControlChart.Of([49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]);
        Assert.Equal(50.81, chart.Mean, 1e-9);
        Assert.Equal(1.8778, chart.MeanMovingRange, 5e-5);
        Assert.Equal(55.8041, chart.Upper, 1e-4);
        Assert.Equal(45.8159, chart.Lower, 1e-4);
        Assert.DoesNotContain(chart.Signals, s => s.Rule == ControlRule.BeyondThree);
    }

    // 2/sqrt(pi) is the mean range of two standard normal values: E|x1 - x2| of N(0, 2). Closed form.
    [Fact]
    public void Constant_of_ranges_of_two_is_the_closed_form() => Assert.Equal(ControlChart.D2, 2.0 / Math.Sqrt(Math.PI), 5e-4);

    // D4 = 1 + 3 d3 / d2 with d3 = sqrt(2 - 4/pi), the standard deviation of the same range. Closed form.
    [Fact]
    public void Limit_of_ranges_is_the_closed_form() =>
        Assert.Equal(ControlChart.D4, 1.0 + 3.0 * Math.Sqrt(2.0 - 4.0 / Math.PI) / (2.0 / Math.Sqrt(Math.PI)), 1e-3);

    [Theory]
    [InlineData(ControlRule.BeyondThree, 12, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 9)]
    [InlineData(ControlRule.EightOnOneSide, 15, -1, -1, -2, -1, -2, -1, -2, -1, 1, 2, 1, 2, 1, 2, 1, 2)]
    public void Rule_that_is_broken_is_named_with_the_point_that_completes_it(ControlRule rule, int index, params int[] pattern)
    {
        // A small alternating wobble gives the moving range; the pattern stands on top of it.
        double[] values = [.. pattern.Select((p, i) => 100.0 + p + (i % 2 == 0 ? 0.2 : -0.2))];
        ControlChart chart = ControlChart.Of(values);
        Assert.Contains(chart.Signals, s => s.Rule == rule && s.Index == Math.Min(index, values.Length - 1));
    }

    [Fact]
    public void Two_of_three_and_four_of_five_count_on_one_side_only()
    {
        // Mean 0 by symmetry; the wobble between makes the mean moving range, and so the standard deviation, known.
        double[] wobble = [.. Enumerable.Range(0, 40).Select(i => i % 2 == 0 ? 1.0 : -1.0)];
        double deviation = 2.0 / ControlChart.D2;
        ControlChart same = ControlChart.Of([.. wobble, 2.2 * deviation, 0.5, 2.2 * deviation, .. wobble.Select(w => -w), -2.2 * deviation, -0.5, -2.2 * deviation]);
        Assert.Equal(2, same.Signals.Count(s => s.Rule == ControlRule.TwoOfThreeBeyondTwo));
        ControlChart opposite = ControlChart.Of([.. wobble, 2.2 * deviation, 0.5, -2.2 * deviation, .. wobble]);
        Assert.DoesNotContain(opposite.Signals, s => s.Rule == ControlRule.TwoOfThreeBeyondTwo);
        Assert.DoesNotContain(ControlChart.Of(wobble).Signals, _ => true);
    }

    // Western Electric, as in NIST/SEMATECH e-Handbook, section 6.3.2: four of the last five points beyond one standard deviation on one side.
    [Theory]
    [InlineData(2, 1.2, 1.2, 0.3, 1.2, 1.2)]
    [InlineData(0, 1.2, 1.2, 0.3, 0.3, 1.2)]
    [InlineData(0, 1.2, -1.2, 0.3, 1.2, 1.2)]
    [InlineData(0, 0.9, 1.2, 0.3, 1.2, 1.2)]
    public void Four_of_five_beyond_one_deviation_are_told_with_their_first_and_last(int told, params double[] deviations)
    {
        // Twice the pattern, the second time upside down, so that the mean is 0 by symmetry.
        double[] wobble = [.. Enumerable.Range(0, 40).Select(i => i % 2 == 0 ? 1.0 : -1.0)];
        double[] pattern = [.. deviations.Select(d => d * 2.0 / ControlChart.D2)];
        ControlChart chart = ControlChart.Of([.. wobble, .. pattern, .. wobble.Select(w => -w), .. pattern.Select(p => -p)]);
        ControlSignal[] expected = [new(44, 40, ControlRule.FourOfFiveBeyondOne), new(89, 85, ControlRule.FourOfFiveBeyondOne)];
        Assert.Equal(expected.Take(told), chart.Signals.Where(s => s.Rule == ControlRule.FourOfFiveBeyondOne));
    }

    // A point x among swings of 1 either way, and -x among as many: 78 ranges of 2 and 3 of x + 1, so that three standard deviations are 3 (156 + 3 (x + 1))/(81 x 1.128):
    // 5.782 for 5.7 and 5.802 for 5.9. Source of the rule: NIST/SEMATECH e-Handbook, section 6.3.2.
    [Theory]
    [InlineData(5.7, 0)]
    [InlineData(5.9, 2)]
    public void Point_beyond_three_deviations_is_told_on_both_sides(double x, int told)
    {
        double[] wobble = [.. Enumerable.Range(0, 40).Select(i => i % 2 == 0 ? 1.0 : -1.0)];
        ControlChart chart = ControlChart.Of([.. wobble, x, .. wobble.Select(w => -w), -x]);
        ControlSignal[] expected = [new(40, 40, ControlRule.BeyondThree), new(81, 81, ControlRule.BeyondThree)];
        Assert.Equal(expected.Take(told), chart.Signals.Where(s => s.Rule == ControlRule.BeyondThree));
    }

    // A rule that goes on being broken is told once; after a point within it is told anew.
    [Theory]
    [InlineData(ControlRule.EightOnOneSide, 1, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5)]
    [InlineData(ControlRule.TwoOfThreeBeyondTwo, 1, 2.2, 2.2, 2.2)]
    [InlineData(ControlRule.TwoOfThreeBeyondTwo, 2, 2.2, 2.2, 0.5, 2.2)]
    public void Broken_rule_is_told_once_until_it_is_kept(ControlRule rule, int told, params double[] deviations)
    {
        double[] wobble = [.. Enumerable.Range(0, 40).Select(i => i % 2 == 0 ? 1.0 : -1.0)];
        double[] pattern = [.. deviations.Select(d => d * 2.0 / ControlChart.D2)];
        Assert.Equal(2 * told, ControlChart.Of([.. wobble, .. pattern, .. wobble.Select(w => -w), .. pattern.Select(p => -p)]).Signals.Count(s => s.Rule == rule));
    }

    // Forty ranges of 2 and one of 8: mean 88/41 = 2.146, upper limit 3.267 x 2.146 = 7.01; of 7, 6.93; of 6.9, 6.92.
    [Theory]
    [InlineData(8.0, 1)]
    [InlineData(7.0, 1)]
    [InlineData(6.9, 0)]
    public void Range_beyond_its_limit_is_told_at_its_second_value(double jump, int told)
    {
        double[] values = [.. Enumerable.Range(0, 42).Select(i => (i % 2 == 0 ? 1.0 : -1.0) + (i > 20 ? jump + 2.0 : 0.0))];
        ControlSignal[] expected = [new(21, 20, ControlRule.RangeBeyond)];
        Assert.Equal(expected.Take(told), ControlChart.Of(values).Signals.Where(s => s.Rule == ControlRule.RangeBeyond));
    }
}
