using Dewstone.Model.Diagnostics;
using MathNet.Numerics.Distributions;

namespace Dewstone.Compute.Calibration;

/// <summary>Judges a fit of a mix: lack of fit, single measurements that decide, figures that are not told or not told apart.</summary>
internal static class FitJudge
{
    private const double Level = 0.01;
    private const int FewestRepeats = 3;
    private const double MostOverUsual = 2.0;

    /// <summary>How a kind agrees.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="observations">All observations with their residuals.</param>
    /// <param name="fit">The fit.</param>
    public static KindReport Of(MeasuredKind kind, IReadOnlyList<MixObservation> observations, WeightedFit fit)
    {
        int[] own = [.. Enumerable.Range(0, observations.Count).Where(i => observations[i].Kind == kind)];
        double[] residuals = [.. own.Select(i => Math.Log(observations[i].Measured / observations[i].Fitted))];
        double all = 0.0, pure = 0.0;
        int repeats = 0, trials = 0;
        foreach (IGrouping<string, int> trial in Enumerable.Range(0, own.Length).GroupBy(i => observations[own[i]].Trial))
        {
            double mean = trial.Average(i => residuals[i]);
            pure += trial.Sum(i => (residuals[i] - mean) * (residuals[i] - mean));
            all += trial.Sum(i => residuals[i] * residuals[i]);
            repeats += trial.Count() - 1;
            trials++;
        }

        double spare = fit.Redundancy[kind] - repeats;
        bool tells = repeats >= FewestRepeats && pure > 0.0 && spare >= 1.0;
        return new KindReport(
            kind, own.Length, fit.Scatter[kind], fit.Redundancy[kind] < 1.0,
            Math.Sqrt(own.Average(i => observations[i].LeftOutResidual * observations[i].LeftOutResidual)),
            tells ? 1.0 - FisherSnedecor.CDF(spare, repeats, (all - pure) / spare / (pure / repeats)) : null);
    }

    /// <summary>What to tell.</summary>
    /// <param name="figures">The figures.</param>
    /// <param name="correlations">Their correlations, row by row.</param>
    /// <param name="kinds">How each kind agrees.</param>
    /// <param name="observations">All observations with their residuals.</param>
    /// <param name="fit">The fit.</param>
    public static IEnumerable<Diagnostic> Findings(
        IReadOnlyList<FittedFigure> figures, double[] correlations, IReadOnlyList<KindReport> kinds, IReadOnlyList<MixObservation> observations, WeightedFit fit) =>
        [.. Untold(figures), .. Entangled(figures, correlations), .. kinds.SelectMany(kind => LackOfFit(kind, observations)), .. Decisive(observations, fit)];

    private static IEnumerable<Diagnostic> Untold(IReadOnlyList<FittedFigure> figures)
    {
        string[] tests =
        [
            "time the absorption of a column of loose mix",
            "make test balls from the smallest dose to the largest, and time the absorption of a column",
            "weigh loose mix struck off in a container, or the dry mass of test balls",
        ];
        return figures.Select((figure, j) => (figure, test: tests[j])).Where(one => !one.figure.Fitted).Select(one => CalibrationFindings.Untold.At(
            $"these data do not tell the {one.figure.Name}; it stays {one.figure.Value:G4}{(one.figure.Unit == "1" ? "" : " ")}{one.figure.Unit.TrimStart('1')} as in the given mix",
            $"{one.test}, and calibrate with all tables together"));
    }

    private static IEnumerable<Diagnostic> Entangled(IReadOnlyList<FittedFigure> figures, double[] correlations)
    {
        for (int j = 0; j < figures.Count; j++)
        {
            for (int k = j + 1; k < figures.Count; k++)
            {
                double correlation = correlations[j * figures.Count + k];
                if (Math.Abs(correlation) > MixCalibrator.MostCorrelation)
                {
                    yield return CalibrationFindings.Entangled.At(
                        $"the errors of {figures[j].Name} and {figures[k].Name} go together with a correlation of {correlation:0.000}",
                        k == 2 ? "weigh loose mix struck off in a container" : "time the absorption of a column, which tells the diffusivity alone; add balls of the smallest doses");
                }
            }
        }
    }

    private static IEnumerable<Diagnostic> LackOfFit(KindReport kind, IReadOnlyList<MixObservation> observations)
    {
        MixObservation first = observations.First(one => one.Kind == kind.Kind);
        SourceLocation place = new(first.File, 0, 0);
        if (kind.LackOfFit < Level)
        {
            yield return CalibrationFindings.LackOfFit.At(
                $"{FitWords.Of(kind.Kind)} miss{(kind.Kind is MeasuredKind.BallWater or MeasuredKind.LooseDensity ? "es" : "")} the fitted law by more than repeats scatter (chance {kind.LackOfFit:0.0e+0})",
                "look at the residuals; try --exponent scan, or another law", location: place);
        }
        else if (kind.LackOfFit is null && kind.Scatter > MostOverUsual * MixObservations.UsualScatter(kind.Kind))
        {
            yield return CalibrationFindings.LackOfFit.At(
                $"{FitWords.Of(kind.Kind)}: residuals of {kind.Scatter:0.0 %}, usual are {MixObservations.UsualScatter(kind.Kind):0.0 %}",
                "repeat each test three times, so that scatter and law can be told apart", location: place);
        }
    }

    private static IEnumerable<Diagnostic> Decisive(IReadOnlyList<MixObservation> observations, WeightedFit fit)
    {
        for (int i = 0; i < observations.Count; i++)
        {
            MixObservation one = observations[i];
            if (Math.Abs(fit.Studentized(i)) > StudentQuantile.TwoSided(fit.KnownBy(one.Kind) - 1.0, 1.0 - Level / observations.Count))
            {
                yield return CalibrationFindings.LeaveOneOut.At(
                    $"{FitWords.Of(one.Kind)}: a fit without this measurement is off by {one.LeftOutResidual:+0.0 %;-0.0 %} from it", "look at the yard's sheet and repeat this test",
                    location: new SourceLocation(one.File, one.Line, 1));
            }
        }
    }
}
