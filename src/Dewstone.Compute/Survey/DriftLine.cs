namespace Dewstone.Compute.Survey;

/// <summary>A straight line through measured values, by ordinary least squares, with the standard error of its slope.</summary>
/// <remarks>
/// y = a + b x; b = Sxy / Sxx; s(b) = s / sqrt(Sxx), s^2 = sum of squared residuals / (n - 2). Draper and Smith, Applied Regression Analysis, 1998,
/// sections 1.2 and 1.4 (from memory); held against NIST StRD Norris in the tests.
/// </remarks>
internal readonly record struct DriftLine
{
    private DriftLine(int count, double slope, double intercept, double error, double first, double last, double residual) =>
        (Count, Slope, Intercept, SlopeError, First, Last, ResidualDeviation) = (count, slope, intercept, error, first, last, residual);

    /// <summary>Values.</summary>
    public int Count { get; }

    /// <summary>Slope b, y a unit of x.</summary>
    public double Slope { get; }

    /// <summary>Intercept a.</summary>
    public double Intercept { get; }

    /// <summary>Standard error of the slope.</summary>
    public double SlopeError { get; }

    /// <summary>Least x.</summary>
    public double First { get; }

    /// <summary>Greatest x.</summary>
    public double Last { get; }

    /// <summary>Standard deviation of the residuals.</summary>
    public double ResidualDeviation { get; }

    /// <summary>How much the line rises from the first x to the last.</summary>
    public double Change => Slope * (Last - First);

    /// <summary>Fits.</summary>
    /// <param name="x">Where.</param>
    /// <param name="y">Values, as many.</param>
    /// <param name="leastDeviation">Standard deviation that the values have at least, so that three exact values prove nothing; 0 for none.</param>
    /// <returns>The line; null with fewer than three values or with all at one place.</returns>
    public static DriftLine? Of(ReadOnlySpan<double> x, ReadOnlySpan<double> y, double leastDeviation)
    {
        int n = x.Length;
        if (n < 3)
        {
            return null;
        }

        double meanX = 0.0, meanY = 0.0, first = double.PositiveInfinity, last = double.NegativeInfinity;
        for (int i = 0; i < n; i++)
        {
            meanX += x[i] / n;
            meanY += y[i] / n;
            (first, last) = (Math.Min(first, x[i]), Math.Max(last, x[i]));
        }

        double sxx = 0.0, sxy = 0.0;
        for (int i = 0; i < n; i++)
        {
            sxx += (x[i] - meanX) * (x[i] - meanX);
            sxy += (x[i] - meanX) * (y[i] - meanY);
        }

        if (!(sxx > 0.0))
        {
            return null;
        }

        double slope = sxy / sxx, squares = 0.0;
        for (int i = 0; i < n; i++)
        {
            double residual = y[i] - meanY - slope * (x[i] - meanX);
            squares += residual * residual;
        }

        double deviation = Math.Sqrt(squares / (n - 2));
        return new DriftLine(n, slope, meanY - slope * meanX, Math.Max(deviation, leastDeviation) / Math.Sqrt(sxx), first, last, deviation);
    }

    /// <summary>The line at a place.</summary>
    /// <param name="x">Where.</param>
    /// <returns>a + b x.</returns>
    public double At(double x) => Intercept + Slope * x;
}
