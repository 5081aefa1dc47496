namespace Dewstone.Compute.Calibration;

/// <summary>A straight line through points by least squares, with its uncertainty.</summary>
/// <remarks>
/// y = intercept + slope x; x exact, errors of y independent, of one size. Textbook formulas in sums about the means (Draper and Smith 1998, Applied
/// Regression Analysis, chapter 1; from memory). A line through the origin has intercept 0 without error, and its R squared is about 0, not the mean.
/// </remarks>
public sealed record LineFit
{
    /// <summary>Points.</summary>
    public required int Count { get; init; }

    /// <summary>Value at 0, units of y.</summary>
    public required double Intercept { get; init; }

    /// <summary>Slope, units of y over units of x.</summary>
    public required double Slope { get; init; }

    /// <summary>Standard error of the intercept.</summary>
    public required double InterceptError { get; init; }

    /// <summary>Standard error of the slope.</summary>
    public required double SlopeError { get; init; }

    /// <summary>Residual sum of squares.</summary>
    public required double ResidualSquares { get; init; }

    /// <summary>Share of the squares that the line explains, 1.</summary>
    public required double RSquared { get; init; }

    /// <summary>Points less fitted figures.</summary>
    public required int DegreesOfFreedom { get; init; }

    private double MeanX { get; init; }

    private double SquaresX { get; init; }

    private double MeanShare { get; init; }

    /// <summary>Standard deviation of a point about the line, units of y; 0 without freedom.</summary>
    public double ResidualDeviation => DegreesOfFreedom > 0 ? Math.Sqrt(ResidualSquares / DegreesOfFreedom) : 0.0;

    /// <summary>Fits a line.</summary>
    /// <param name="x">Abscissas; at least two different ones.</param>
    /// <param name="y">Ordinates, as many.</param>
    /// <returns>The line.</returns>
    public static LineFit Of(IReadOnlyList<double> x, IReadOnlyList<double> y) => Of(x, y, x.Average(), y.Average(), 2);

    /// <summary>Fits a line through the origin.</summary>
    /// <param name="x">Abscissas; at least one other than 0.</param>
    /// <param name="y">Ordinates, as many.</param>
    /// <returns>The line.</returns>
    public static LineFit ThroughOrigin(IReadOnlyList<double> x, IReadOnlyList<double> y) => Of(x, y, 0.0, 0.0, 1);

    /// <summary>A level line, the mean.</summary>
    /// <param name="y">Ordinates, one or more.</param>
    /// <returns>The line, of slope 0 without error.</returns>
    public static LineFit Level(IReadOnlyList<double> y)
    {
        double mean = y.Average(), squares = y.Sum(value => (value - mean) * (value - mean));
        return new LineFit
        {
            Count = y.Count,
            Intercept = mean,
            Slope = 0.0,
            InterceptError = y.Count > 1 ? Math.Sqrt(squares / (y.Count - 1.0) / y.Count) : 0.0,
            SlopeError = 0.0,
            ResidualSquares = squares,
            RSquared = 0.0,
            DegreesOfFreedom = y.Count - 1,
            SquaresX = double.PositiveInfinity,
            MeanShare = 1.0,
        };
    }

    /// <summary>The line at an abscissa.</summary>
    /// <param name="x">Abscissa.</param>
    /// <returns>Ordinate.</returns>
    public double At(double x) => Intercept + Slope * x;

    /// <summary>Standard error of the line at an abscissa.</summary>
    /// <param name="x">Abscissa.</param>
    /// <returns>Units of y.</returns>
    public double ErrorAt(double x) => ResidualDeviation * Math.Sqrt(MeanShare / Count + (x - MeanX) * (x - MeanX) / SquaresX);

    /// <summary>The abscissa at which one new reading would have been made, and its standard error.</summary>
    /// <remarks>x = (y - intercept)/slope; error = s/|slope| sqrt(1 + 1/n + (x - mean)^2/Sxx), the usual first-order form (from memory).</remarks>
    /// <param name="y">The new reading.</param>
    /// <returns>Abscissa and standard error.</returns>
    public (double X, double Error) Inverse(double y)
    {
        double x = (y - Intercept) / Slope, off = x - MeanX;
        return (x, ResidualDeviation / Math.Abs(Slope) * Math.Sqrt(1.0 + MeanShare / Count + off * off / SquaresX));
    }

    private static LineFit Of(IReadOnlyList<double> x, IReadOnlyList<double> y, double meanX, double meanY, int fitted)
    {
        if (x.Count != y.Count || x.Count < fitted)
        {
            throw new ArgumentException($"{x.Count} abscissas, {y.Count} ordinates.", nameof(x));
        }

        double xx = 0.0, xy = 0.0, yy = 0.0;
        for (int i = 0; i < x.Count; i++)
        {
            double dx = x[i] - meanX, dy = y[i] - meanY;
            (xx, xy, yy) = (xx + dx * dx, xy + dx * dy, yy + dy * dy);
        }

        if (!(xx > 0.0))
        {
            throw new ArgumentException("All abscissas are equal.", nameof(x));
        }

        double slope = xy / xx, rss = 0.0;
        for (int i = 0; i < x.Count; i++)
        {
            double residual = y[i] - meanY - slope * (x[i] - meanX);
            rss += residual * residual;
        }

        int freedom = x.Count - fitted;
        double variance = freedom > 0 ? rss / freedom : 0.0;
        return new LineFit
        {
            Count = x.Count,
            Intercept = meanY - slope * meanX,
            Slope = slope,
            InterceptError = fitted == 2 ? Math.Sqrt(variance * (1.0 / x.Count + meanX * meanX / xx)) : 0.0,
            SlopeError = Math.Sqrt(variance / xx),
            ResidualSquares = rss,
            RSquared = yy > 0.0 ? 1.0 - rss / yy : 1.0,
            DegreesOfFreedom = freedom,
            MeanX = meanX,
            SquaresX = xx,
            MeanShare = fitted == 2 ? 1.0 : 0.0,
        };
    }
}
