using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using MathNet.Numerics;

namespace Dewstone.Compute.Calibration;

/// <summary>Fits diffusivity, hardening threshold and loose density of a mix to the yard's tests, and says how sure they are.</summary>
/// <remarks>
/// Model: the wetting of the jobs (see <see cref="BallHistory"/>, <see cref="PairHistory"/>, <see cref="Sorptivity"/>), without walls, free surface and pump
/// time. Weighted least squares on logarithms, see <see cref="WeightedFit"/>; intervals by Student's t with the freedom of the kinds that tell the figure. The window of
/// hardening is taken as given: of balls only diffusivity x window is told. Figures the data do not tell keep the given mix's values, and what that mix says
/// they are uncertain by goes on into the fitted ones.
/// </remarks>
public static class MixCalibrator
{
    /// <summary>Correlation beyond which two figures count as not told apart.</summary>
    public const double MostCorrelation = 0.9;

    /// <summary>How much better another exponent must fit than the mix's own: gain of squares over the best one's squares a degree of freedom.</summary>
    public const double ExponentGain = 4.0;

    private static readonly string[] Units = ["m2/s", "1", "kg/m3"];

    // The first to be given up is the one that the tests tell least.
    private static readonly int[] GivenUpFirst = [1, 2, 0];

    /// <summary>A figure more uncertain than this, one standard deviation as a share, is not told by the data. Diffusivity, threshold, density; our choice.</summary>
    public static IReadOnlyList<double> MostSpreads { get; } = [0.5, 0.2, 0.1];

    /// <summary>Calibrates.</summary>
    /// <param name="question">Mix and data.</param>
    /// <param name="cancellationToken">Looked at once an exponent.</param>
    /// <returns>The new mix with its uncertainty, or the findings that forbid it.</returns>
    public static MixCalibration Calibrate(MixQuestion question, CancellationToken cancellationToken = default) =>
        Calibrate(question, exponent => new LawTables(SaturationLaw.Of(question.Mix.Wetting, exponent)), cancellationToken);

    /// <summary>The same with tables that are shared between calls.</summary>
    internal static MixCalibration Calibrate(MixQuestion question, Func<int, LawTables> tables, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(question);
        DryMix mix = question.Mix;
        List<Diagnostic> findings = [];
        if (mix.Wetting.Residual > 0.0)
        {
            return new MixCalibration
            {
                Findings =
                [
                    CalibrationFindings.ResidualContent.At(
                        $"the residual content is {mix.Wetting.Residual}; the fit knows laws without one", "set it to 0 in the mix to begin from",
                        new KeyPath(DescriptionKind.Mix, "wetting.residual")),
                ],
            };
        }

        IReadOnlyList<MixObservation> observations = MixObservations.Of(question.Data, mix, findings);
        List<ExponentTrial> tried = [];
        Dictionary<int, WeightedFit> fits = [];
        foreach (int exponent in question.Exponents.Append(mix.Wetting.Exponent).Distinct().Order())
        {
            cancellationToken.ThrowIfCancellationRequested();
            try
            {
                WeightedFit fit = Fit(observations, new MixForward(mix, tables(exponent)), mix);
                if (!fit.EndsAtFence)
                {
                    fits[exponent] = fit;
                    tried.Add(new ExponentTrial(exponent, fit.UsualSquares));
                }
            }
            catch (NonConvergenceException)
            {
                // An exponent that leads nowhere is not in the list of those tried.
            }
        }

        if (!fits.TryGetValue(mix.Wetting.Exponent, out WeightedFit? given) && fits.Count == 0)
        {
            return new MixCalibration { Findings = [.. findings, NoFit(question, "the search for the best figures did not come to an end")] };
        }

        ExponentTrial best = tried.MinBy(trial => trial.Squares)!;
        double gain = ExponentGain * best.Squares / Math.Max(1, fits[best.Exponent].DegreesOfFreedom);
        int chosen = given is not null && given.UsualSquares - best.Squares <= gain ? mix.Wetting.Exponent : best.Exponent;
        return Report(question, observations, fits[chosen], chosen, tried, findings);
    }

    // A figure is fitted when it is foreseen to be told, and then is. What is foreseen comes from figures that may be far off: twice the limit will do.
    private static WeightedFit Fit(IReadOnlyList<MixObservation> observations, MixForward forward, DryMix mix)
    {
        MixFigures start = new(mix.Wetting.AtSaturation.SquareMetresPerSecond, mix.Hardening.WaterCement, mix.LooseDensity.KilogramsPerCubicMetre);
        List<int> free = [.. Enumerable.Range(0, MixFigures.Count)];
        while (free.Count > 0 && GiveUp(free, WeightedFit.Foreseen(observations, forward, free, start), 2.0))
        {
        }

        while (free.Count > observations.Count)
        {
            free.Remove(GivenUpFirst.First(free.Contains));
        }

        WeightedFit fit;
        do
        {
            fit = WeightedFit.Of(observations, forward, [.. free], start);
        }
        while (!fit.EndsAtFence && GiveUp(free, [.. free.Select(figure => Math.Sqrt(fit.Covariance[figure, figure]))], 1.0));
        return fit;
    }

    private static bool GiveUp(List<int> free, double[] spreads, double slack)
    {
        int[] loose = [.. GivenUpFirst.Where(figure => free.Contains(figure) && !(spreads[free.IndexOf(figure)] < slack * MostSpreads[figure]))];
        return loose.Length > 0 && free.Remove(loose[0]);
    }

    private static MixCalibration Report(
        MixQuestion question, IReadOnlyList<MixObservation> observations, WeightedFit fit, int exponent, IReadOnlyList<ExponentTrial> tried, List<Diagnostic> findings)
    {
        DryMix mix = question.Mix;
        double[] residuals = fit.Residuals();
        MixObservation[] seen = [.. observations.Select((one, i) => one with
        {
            Fitted = one.Measured / Math.Exp(residuals[i]),
            LeftOutResidual = Math.Exp(residuals[i] / Math.Max(1e-6, 1.0 - fit.Leverage(i))) - 1.0,
        })];
        double[,] covariance = fit.Total([mix.Uncertainty?.Diffusivity ?? 0.0, mix.Uncertainty?.Threshold ?? 0.0, mix.Uncertainty?.LooseDensity ?? 0.0]);
        FittedFigure[] figures = Figures(fit, covariance);
        double[] correlations = Correlations(covariance);
        KindReport[] kinds = [.. fit.Scatter.Keys.Select(kind => FitJudge.Of(kind, seen, fit))];
        findings.AddRange(FitJudge.Findings(figures, correlations, kinds, seen, fit));
        DryMix? made = Made(question, fit.Figures, exponent, figures, correlations);
        if (made is null || observations.Count == 0)
        {
            findings.Add(NoFit(question, observations.Count == 0 ? "no reading could be used" : "the fit ended outside of what a mix can be"));
        }

        return new MixCalibration
        {
            Mix = findings.Exists(finding => finding.Severity == Severity.Error) ? null : made,
            Figures = figures,
            Correlations = correlations,
            Exponents = tried,
            Kinds = kinds,
            Observations = seen,
            Findings = findings,
        };
    }

    private static Diagnostic NoFit(MixQuestion question, string why) => CalibrationFindings.NoFit.At(
        why, "check units, window and mix against the yard's sheets", location: new SourceLocation(question.Data[0].File, 0, 0));

    private static FittedFigure[] Figures(WeightedFit fit, double[,] covariance)
    {
        double[] values = [fit.Figures.Diffusivity, fit.Figures.Threshold, fit.Figures.LooseDensity];
        return [.. values.Select((value, j) =>
        {
            double spread = Math.Sqrt(covariance[j, j]);
            bool fitted = fit.Free.Contains(j);
            double reach = fitted ? Math.Exp(StudentQuantile.TwoSided(fit.Freedom(j)) * spread) : 1.0;
            return new FittedFigure(MixFigures.Names[j], Units[j], fitted, value, value / reach, value * reach, spread);
        })];
    }

    private static double[] Correlations(double[,] covariance)
    {
        double[] correlations = new double[MixFigures.Count * MixFigures.Count];
        for (int j = 0; j < MixFigures.Count; j++)
        {
            for (int k = 0; k < MixFigures.Count; k++)
            {
                double size = Math.Sqrt(covariance[j, j] * covariance[k, k]);
                correlations[j * MixFigures.Count + k] = j == k ? 1.0 : size > 0.0 ? covariance[j, k] / size : 0.0;
            }
        }

        return correlations;
    }

    // Ranges as the mix file takes them.
    private static DryMix? Made(MixQuestion question, MixFigures fitted, int exponent, FittedFigure[] figures, double[] correlations)
    {
        DryMix mix = question.Mix;
        MixFigures rounded = new(SignificantFigures.Six(fitted.Diffusivity), SignificantFigures.Six(fitted.Threshold), SignificantFigures.Six(fitted.LooseDensity));
        Density density = new(rounded.LooseDensity);
        bool can = rounded.Diffusivity is >= 1e-12 and <= 1.0 && rounded.Threshold is >= 0.01 and <= 2.0 && rounded.LooseDensity is >= 200.0 and <= 5000.0
            && mix.Porosity(density) is > 0.0 and < 1.0;
        return !can ? null : mix with
        {
            Origin = new MixOrigin(MixOriginKind.Calibration, question.Reference),
            LooseDensity = density,
            Wetting = mix.Wetting with { AtSaturation = new Diffusivity(rounded.Diffusivity), Exponent = exponent },
            Hardening = mix.Hardening with { WaterCement = rounded.Threshold },
            Uncertainty = new MixUncertainty(SignificantFigures.Six(figures[0].Spread), SignificantFigures.Six(figures[1].Spread), SignificantFigures.Six(figures[2].Spread))
            {
                Correlation = new MixCorrelation(
                    SignificantFigures.Six(correlations[1]), SignificantFigures.Six(correlations[2]), SignificantFigures.Six(correlations[5])),
            },
        };
    }
}
