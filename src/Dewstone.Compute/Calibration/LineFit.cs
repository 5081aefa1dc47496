namespace Dewstone.Compute.Calibration;

/// <summary>A straight line through points by least squares, with its uncertainty.</summary>
/// <remarks>
/// y = intercept + slope x; x exact, errors of y independent, of one size. Textbook formulas in sums about the means (Draper and Smith 1998, Applied
/// Regression Analysis, chapter 1; from memory).
/// </remarks>
public sealed record LineFit
{
    /// <summary>Figures fitted.</summary>
    private const int Fitted = 2;

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

    /// <summary>Standard deviation of a point about the line, units of y; 0 without freedom.</summary>
    public double ResidualDeviation => DegreesOfFreedom > 0 ? Math.Sqrt(ResidualSquares / DegreesOfFreedom) : 0.0;

    /// <summary>Fits a line.</summary>
    /// <param name="x">Abscissas; at least two different ones.</param>
    /// <param name="y">Ordinates, as many.</param>
    /// <returns>The line.</returns>
    public static LineFit Of(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        if (x.Count != y.Count || x.Count < Fitted)
        {
            throw new ArgumentException($"{x.Count} abscissas, {y.Count} ordinates.", nameof(x));
        }

        double meanX = x.Average(), meanY = y.Average(), xx = 0.0, xy = 0.0, yy = 0.0;
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

        int freedom = x.Count - Fitted;
        double variance = freedom > 0 ? rss / freedom : 0.0;
        return new LineFit
        {
            Count = x.Count,
            Intercept = meanY - slope * meanX,
            Slope = slope,
            InterceptError = Math.Sqrt(variance * (1.0 / x.Count + meanX * meanX / xx)),
            SlopeError = Math.Sqrt(variance / xx),
            ResidualSquares = rss,
            RSquared = yy > 0.0 ? 1.0 - rss / yy : 1.0,
            DegreesOfFreedom = freedom,
            MeanX = meanX,
            SquaresX = xx,
        };
    }

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
        };
    }

    /// <summary>The line at an abscissa.</summary>
    /// <param name="x">Abscissa.</param>
    /// <returns>Ordinate.</returns>
    public double At(double x) => Intercept + Slope * x;

    /// <summary>Standard error of the line at an abscissa.</summary>
    /// <param name="x">Abscissa.</param>
    /// <returns>Units of y.</returns>
    public double ErrorAt(double x) => ResidualDeviation * Math.Sqrt(1.0 / Count + (x - MeanX) * (x - MeanX) / SquaresX);
}
