using MathNet.Numerics.LinearAlgebra;

namespace Dewstone.Compute.Calibration;

/// <summary>Figures of a mix fitted to observations of several kinds, each kind with a scatter of its own that the residuals tell.</summary>
/// <remarks>
/// Residuals are logarithms of measured over computed. Scatter of a kind: its residual squares over its redundancy, the number of its observations less the
/// trace of its part of the hat matrix, repeated until it stands (simplified estimation of variance components after Helmert and Foerstner, from memory).
/// Few readings may agree by chance and would then outweigh all others, so a scatter below the usual one is drawn towards it, which counts as some readings
/// more (moderated variances, Smyth 2004, Statistical Applications in Genetics and Molecular Biology 3:3, equation 7; from memory). Weights that come from few
/// readings also make the result less sure than it looks: variance x (1 + 4 sum of w(1 - w)/freedom), w the share of a kind (Meier 1953, Biometrics 9:59; from
/// memory, stated there for a weighted mean).
/// </remarks>
internal sealed class WeightedFit
{
    /// <summary>Readings as which the usual scatter of a kind counts. Our choice.</summary>
    private const double UsualFreedom = 4.0;

    /// <summary>Redundancy from which a kind's own scatter is believed when it is above the usual one.</summary>
    private const double LeastRedundancy = 1.5;

    private const double LogStep = 1e-3;
    private const int Rounds = 6;

    /// <summary>How far from its start a logarithm is sought: a factor of about 50. Beyond it the model has nothing to say.</summary>
    private const double FarthestLog = 4.0;

    private readonly IReadOnlyList<MixObservation> observations;
    private readonly MixForward forward;
    private readonly int[] free;
    private readonly double[] begin;
    private readonly double[] logarithms;
    private readonly double[] leverages;
    private readonly double[] freedom = new double[MixFigures.Count];
    private readonly HashSet<MeasuredKind> moderated;

    private WeightedFit(IReadOnlyList<MixObservation> observations, MixForward forward, int[] free, MixFigures start)
    {
        (this.observations, this.forward, this.free) = (observations, forward, free);
        begin = start.Logarithms();
        logarithms = [.. begin];
        leverages = new double[observations.Count];
        Scatter = observations.Select(one => one.Kind).Distinct().Order().ToDictionary(kind => kind, MixObservations.UsualScatter);
        Redundancy = Scatter.Keys.ToDictionary(kind => kind, _ => 0.0);
        moderated = [.. Scatter.Keys];
    }

    /// <summary>The fitted figures; those not free as they were.</summary>
    public MixFigures Figures => MixFigures.Of(logarithms);

    /// <summary>Scatter of each kind, one standard deviation as a share.</summary>
    public Dictionary<MeasuredKind, double> Scatter { get; }

    /// <summary>Redundancy of each kind.</summary>
    public Dictionary<MeasuredKind, double> Redundancy { get; }

    /// <summary>Which figures are fitted.</summary>
    public IReadOnlyList<int> Free => free;

    /// <summary>Covariance of the logarithms of all figures, those not free taken as exact. Row and column as in <see cref="MixFigures.Names"/>.</summary>
    public double[,] Covariance { get; } = new double[MixFigures.Count, MixFigures.Count];

    /// <summary>How the logarithms of the fitted figures follow those of figures that are not free: fitted down, not free across; 0 elsewhere.</summary>
    private double[,] Follows { get; } = new double[MixFigures.Count, MixFigures.Count];

    /// <summary>Observations less fitted figures.</summary>
    public int DegreesOfFreedom => observations.Count - free.Length;

    /// <summary>Whether the search ended where it was fenced in.</summary>
    public bool EndsAtFence => free.Any(j => !(Math.Abs(logarithms[j] - begin[j]) < FarthestLog));

    /// <summary>Sum of squares of residuals over their usual scatter: for comparing laws.</summary>
    public double UsualSquares => Residuals().Select((residual, i) => residual / MixObservations.UsualScatter(observations[i].Kind)).Sum(share => share * share);

    /// <summary>Fits.</summary>
    /// <param name="observations">Observations; more than free figures.</param>
    /// <param name="forward">The model.</param>
    /// <param name="free">Which figures are fitted, rising.</param>
    /// <param name="start">Where to start; the values of those not free.</param>
    public static WeightedFit Of(IReadOnlyList<MixObservation> observations, MixForward forward, int[] free, MixFigures start)
    {
        WeightedFit fit = new(observations, forward, free, start);
        for (int round = 0; round < Rounds && free.Length > 0; round++)
        {
            fit.Round(isLast: round == Rounds - 1);
        }

        return fit;
    }

    /// <summary>How uncertain figures would be, fitted together to observations of usual scatter: standard deviations of their logarithms, to first order.</summary>
    /// <param name="observations">Observations.</param>
    /// <param name="forward">The model.</param>
    /// <param name="free">Which figures.</param>
    /// <param name="at">Where the model is taken as straight.</param>
    /// <returns>One a free figure; at most 1000, for what nothing tells.</returns>
    public static double[] Foreseen(IReadOnlyList<MixObservation> observations, MixForward forward, IReadOnlyList<int> free, MixFigures at)
    {
        double[] centre = at.Logarithms();
        double[] Model(double[] parameters)
        {
            MixFigures figures = With(centre, free, parameters);
            return [.. observations.Select(one => Math.Log(one.Model(forward, figures)) / MixObservations.UsualScatter(one.Kind))];
        }

        Matrix<double> jacobian = NonlinearFit.JacobianAt(Model, [.. free.Select(j => centre[j])], [.. free.Select(_ => LogStep)], observations.Count);
        Matrix<double> normal = jacobian.TransposeThisAndMultiply(jacobian);
        for (int j = 0; j < free.Count; j++)
        {
            normal[j, j] += 1e-6;
        }

        return [.. normal.Inverse().Diagonal().Select(variance => Math.Sqrt(Math.Abs(variance)))];
    }

    /// <summary>Residuals, logarithms of measured over computed.</summary>
    public double[] Residuals()
    {
        MixFigures figures = Figures;
        return [.. observations.Select(one => Math.Log(one.Measured / one.Model(forward, figures)))];
    }

    /// <summary>
    /// Effective degrees of freedom of a figure's variance (Welch 1947 and Satterthwaite 1946: a sum of variances that are known with their own freedom each).
    /// </summary>
    /// <param name="figure">A fitted figure.</param>
    /// <returns>1 or more.</returns>
    public double Freedom(int figure) => freedom[figure];

    /// <summary>Covariance of the logarithms of all figures, with what the figures that are not free are uncertain by.</summary>
    /// <param name="assumed">One standard deviation of each figure, used for those not free; 0 for exact.</param>
    /// <returns>Row and column as in <see cref="MixFigures.Names"/>.</returns>
    public double[,] Total(IReadOnlyList<double> assumed)
    {
        double[,] total = (double[,])Covariance.Clone();
        foreach (int held in Enumerable.Range(0, MixFigures.Count).Except(free))
        {
            double variance = assumed[held] * assumed[held];
            double Slope(int figure) => figure == held ? 1.0 : Follows[figure, held];
            for (int j = 0; j < MixFigures.Count; j++)
            {
                for (int k = 0; k < MixFigures.Count; k++)
                {
                    total[j, k] += Slope(j) * Slope(k) * variance;
                }
            }
        }

        return total;
    }

    /// <summary>Share of an observation in its own fitted value, 0 to 1.</summary>
    /// <param name="index">Observation.</param>
    public double Leverage(int index) => leverages[index];

    /// <summary>Degrees of freedom with which the scatter of a kind is known.</summary>
    /// <param name="kind">The kind.</param>
    public double KnownBy(MeasuredKind kind) => Redundancy[kind] + (moderated.Contains(kind) ? UsualFreedom : 0.0);

    /// <summary>Residual of an observation over its standard deviation, the scatter of its kind taken from the others.</summary>
    /// <param name="index">Observation.</param>
    public double Studentized(int index)
    {
        MeasuredKind kind = observations[index].Kind;
        double residual = Math.Log(observations[index].Measured / observations[index].Model(forward, Figures)), spare = Math.Max(1e-6, 1.0 - leverages[index]);
        double own = residual * residual / spare, all = Scatter[kind] * Scatter[kind] * KnownBy(kind);
        return residual / Math.Sqrt(spare * Math.Max(all - own, 1e-3 * all) / (KnownBy(kind) - 1.0));
    }

    private static MixFigures With(double[] logarithms, IReadOnlyList<int> free, double[] parameters)
    {
        double[] all = [.. logarithms];
        for (int j = 0; j < free.Count; j++)
        {
            all[free[j]] = Math.Clamp(parameters[j], logarithms[free[j]] - FarthestLog, logarithms[free[j]] + FarthestLog);
        }

        return MixFigures.Of(all);
    }

    private void Round(bool isLast)
    {
        double[] scales = [.. observations.Select(one => 1.0 / Scatter[one.Kind])];
        double[] observed = [.. observations.Select((one, i) => Math.Log(one.Measured) * scales[i])];
        double[] Model(double[] parameters)
        {
            MixFigures figures = With(begin, free, parameters);
            return [.. observations.Select((one, i) => Math.Log(one.Model(forward, figures)) * scales[i])];
        }

        NonlinearFit fit = NonlinearFit.Of(Model, observed, [.. free.Select(j => logarithms[j])], [.. free.Select(_ => LogStep)]);
        for (int j = 0; j < free.Length; j++)
        {
            logarithms[free[j]] = fit.Parameters[j];
        }

        Matrix<double> cofactors = fit.Cofactors;
        for (int i = 0; i < leverages.Length; i++)
        {
            Vector<double> row = fit.Jacobian.Row(i);
            leverages[i] = row * (cofactors * row);
        }

        Renew(Residuals(), keep: isLast);
        Matrix<double> shares = cofactors * fit.Jacobian.Transpose();
        double[] widening = new double[free.Length];
        for (int j = 0; j < free.Length; j++)
        {
            (freedom[free[j]], double inflation) = Confidence(shares.Row(j));
            widening[j] = Math.Sqrt(inflation);
        }

        for (int j = 0; j < free.Length; j++)
        {
            for (int k = 0; k < free.Length; k++)
            {
                Covariance[free[j], free[k]] = widening[j] * widening[k] * cofactors[j, k];
            }
        }

        if (isLast)
        {
            Follow(shares);
        }
    }

    private void Follow(Matrix<double> shares)
    {
        foreach (int held in Enumerable.Range(0, MixFigures.Count).Except(free))
        {
            double[] above = [.. logarithms], below = [.. logarithms];
            above[held] += LogStep;
            below[held] -= LogStep;
            (MixFigures high, MixFigures low) = (MixFigures.Of(above), MixFigures.Of(below));
            Vector<double> change = Vector<double>.Build.DenseOfEnumerable(
                observations.Select(one => Math.Log(one.Model(forward, high) / one.Model(forward, low)) / (2.0 * LogStep * Scatter[one.Kind])));
            Vector<double> follows = -(shares * change);
            for (int j = 0; j < free.Length; j++)
            {
                Follows[free[j], held] = follows[j];
            }
        }
    }

    // Effective freedom of a figure's variance, and how much larger it is for weights that are themselves estimates.
    private (double Freedom, double Inflation) Confidence(Vector<double> shares)
    {
        double sum = shares * shares, parts = 0.0, weights = 0.0;
        foreach (MeasuredKind kind in Redundancy.Keys)
        {
            double part = Enumerable.Range(0, observations.Count).Where(i => observations[i].Kind == kind).Sum(i => shares[i] * shares[i]) / sum;
            parts += part * part / KnownBy(kind);
            weights += part * (1.0 - part) / KnownBy(kind);
        }

        return (Math.Max(1.0, 1.0 / parts), 1.0 + 4.0 * weights);
    }

    // In the last round the scatter stays what the covariance was computed with.
    private void Renew(double[] residuals, bool keep)
    {
        foreach (MeasuredKind kind in Redundancy.Keys)
        {
            int[] own = [.. Enumerable.Range(0, observations.Count).Where(i => observations[i].Kind == kind)];
            Redundancy[kind] = own.Length - own.Sum(i => leverages[i]);
            double usual = MixObservations.UsualScatter(kind);
            if (!keep)
            {
                double squares = own.Sum(i => residuals[i] * residuals[i]), redundancy = Redundancy[kind];
                bool drawn = redundancy < LeastRedundancy || squares < redundancy * usual * usual;
                Scatter[kind] = Math.Sqrt(drawn ? (squares + UsualFreedom * usual * usual) / (redundancy + UsualFreedom) : squares / redundancy);
                _ = drawn ? moderated.Add(kind) : moderated.Remove(kind);
            }
        }
    }
}
