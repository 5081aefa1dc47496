namespace Dewstone.Compute.Survey;

/// <summary>Individuals and moving-range control chart.</summary>
/// <remarks>
/// Moving range MR_i = |x_i - x_(i-1)|; standard deviation s = mean MR / d2 with d2 = 1.128 for ranges of two; limits mean +- 3 s; upper limit of the
/// moving range D4 x mean MR with D4 = 3.267, lower limit 0. ISO 7870-2, Control charts, part 2: Shewhart control charts (constants from memory);
/// NIST/SEMATECH e-Handbook of Statistical Methods, section 6.3.2.2, whose worked example is a test. Rules beside the limits: Western Electric, as in section
/// 6.3.2. Do not use it on fewer than about eight values, nor on values that follow each other by nature.
/// </remarks>
public sealed class ControlChart
{
    /// <summary>Mean range of two normal values over their standard deviation, 1.</summary>
    public const double D2 = 1.128;

    /// <summary>Upper limit of a range of two over the mean range, 1.</summary>
    public const double D4 = 3.267;

    private ControlChart(IReadOnlyList<double> values, double[] ranges)
    {
        Values = values;
        MovingRanges = ranges;
        Mean = values.Sum() / values.Count;
        MeanMovingRange = ranges.Sum() / ranges.Length;
        Signals = Find();
    }

    /// <summary>Values in their order.</summary>
    public IReadOnlyList<double> Values { get; }

    /// <summary>Moving ranges; one fewer than values.</summary>
    public IReadOnlyList<double> MovingRanges { get; }

    /// <summary>Mean of the values.</summary>
    public double Mean { get; }

    /// <summary>Mean of the moving ranges.</summary>
    public double MeanMovingRange { get; }

    /// <summary>Standard deviation from the moving ranges.</summary>
    public double Deviation => MeanMovingRange / D2;

    /// <summary>Upper limit of the values.</summary>
    public double Upper => Mean + 3.0 * Deviation;

    /// <summary>Lower limit of the values.</summary>
    public double Lower => Mean - 3.0 * Deviation;

    /// <summary>Upper limit of the moving ranges.</summary>
    public double RangeUpper => D4 * MeanMovingRange;

    /// <summary>Broken rules: by rule, then in order; a pattern that goes on is told once.</summary>
    public IReadOnlyList<ControlSignal> Signals { get; }

    /// <summary>The chart of values.</summary>
    /// <param name="values">Two or more, in the order in which they came about.</param>
    /// <returns>The chart.</returns>
    /// <exception cref="ArgumentException">Fewer than two values.</exception>
    public static ControlChart Of(IReadOnlyList<double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        if (values.Count < 2)
        {
            throw new ArgumentException("A moving range needs two values.", nameof(values));
        }

        double[] ranges = new double[values.Count - 1];
        for (int i = 0; i < ranges.Length; i++)
        {
            ranges[i] = Math.Abs(values[i + 1] - values[i]);
        }

        return new ControlChart(values, ranges);
    }

    private List<ControlSignal> Find()
    {
        List<ControlSignal> found = [];
        for (int i = 0; i < Values.Count; i++)
        {
            if (Math.Abs(Values[i] - Mean) > 3.0 * Deviation)
            {
                found.Add(new ControlSignal(i, i, ControlRule.BeyondThree));
            }
        }

        Pattern(found, ControlRule.TwoOfThreeBeyondTwo, 3, 2, 2.0);
        Pattern(found, ControlRule.FourOfFiveBeyondOne, 5, 4, 1.0);
        Pattern(found, ControlRule.EightOnOneSide, 8, 8, 0.0);
        for (int i = 0; i < MovingRanges.Count; i++)
        {
            if (MovingRanges[i] > RangeUpper)
            {
                found.Add(new ControlSignal(i + 1, i, ControlRule.RangeBeyond));
            }
        }

        return found;
    }

    private void Pattern(List<ControlSignal> found, ControlRule rule, int among, int needed, double deviations)
    {
        foreach (int side in (ReadOnlySpan<int>)[1, -1])
        {
            bool goesOn = false;
            for (int end = among - 1; end < Values.Count; end++)
            {
                int beyond = 0;
                for (int i = end - among + 1; i <= end; i++)
                {
                    beyond += IsBeyond(i, side, deviations) ? 1 : 0;
                }

                bool isBroken = beyond >= needed && IsBeyond(end, side, deviations);
                if (isBroken && !goesOn)
                {
                    found.Add(new ControlSignal(end, end - among + 1, rule));
                }

                goesOn = isBroken;
            }
        }
    }

    private bool IsBeyond(int i, int side, double deviations) => side * (Values[i] - Mean) > deviations * Deviation;
}
