using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using MathNet.Numerics.Distributions;

namespace Dewstone.Compute.Survey;

/// <summary>Weights of many units: in control, as predicted, drifting; and which figure of mix or needles would explain it.</summary>
/// <remarks>
/// Mean: x +- t(0.975, n - 1) s / sqrt(n). Drift: slope of a straight line against the number in the order, +- t(0.975, n - 2) its standard error, times
/// n - 1. A mean that is off by a share r - 1 is explained by a loose density higher by (r - 1) x predicted mass over hardened volume, or by doses higher by
/// (r - 1) over the sensitivity of the mass to the doses.
/// </remarks>
public static class WeightsCheck
{
    /// <summary>Units that are needed at least.</summary>
    public const int LeastUnits = 3;

    private const double LeastShare = 0.01;
    private const double LeastSensitivity = 0.05;

    /// <summary>Checks.</summary>
    /// <param name="question">Weights and prediction.</param>
    /// <returns>What they say.</returns>
    /// <exception cref="ArgumentException">Fewer than three units.</exception>
    public static WeightsReport Check(WeightsQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        int n = question.Units.Count;
        double[] kilograms = [.. question.Units.Select(u => u.Kilograms)], order = [.. Enumerable.Range(1, n).Select(i => (double)i)];
        if (DriftLine.Of(order, kilograms, 0.0) is not { } line)
        {
            throw new ArgumentException($"{n} units are fewer than {LeastUnits}.", nameof(question));
        }

        ControlChart chart = ControlChart.Of(kilograms);
        double deviation = Math.Sqrt(kilograms.Sum(x => (x - chart.Mean) * (x - chart.Mean)) / (n - 1));
        double off = chart.Mean - question.PredictedKilograms, share = off / question.PredictedKilograms;
        WeightsReport report = new()
        {
            Units = question.Units,
            Chart = chart,
            PredictedKilograms = question.PredictedKilograms,
            MeanHalfWidthKilograms = Quantile(n - 1) * deviation / Math.Sqrt(n),
            DriftKilograms = line.Change,
            DriftHalfWidthKilograms = Quantile(n - 2) * line.SlopeError * (n - 1),
            ExplainingLooseKilogramsPerCubicMetre = question.LooseKilogramsPerCubicMetre + off / question.HardenedCubicMetres,
            ExplainingDoseChange = question.MassPerDose > LeastSensitivity ? share / question.MassPerDose : null,
            Findings = [],
        };
        return report with { Findings = [.. Signals(question, chart), .. Mean(question, report), .. Drift(question, report)] };
    }

    private static double Quantile(int degreesOfFreedom) => StudentT.InvCDF(0.0, 1.0, degreesOfFreedom, 0.975);

    private static IEnumerable<Diagnostic> Signals(WeightsQuestion question, ControlChart chart) => chart.Signals.Select(signal =>
    {
        WeighedUnit unit = question.Units[signal.Index];
        string from = $", from `{question.Units[signal.First].Mark}` on";
        string what = signal.Rule switch
        {
            ControlRule.BeyondThree => FormattableString.Invariant($"weighs {unit.Kilograms:0.##} kg, outside {chart.Lower:0.##} to {chart.Upper:0.##} kg"),
            ControlRule.TwoOfThreeBeyondTwo => $"is the second of three more than two standard deviations off the mean on the same side{from}",
            ControlRule.FourOfFiveBeyondOne => $"is the fourth of five more than one standard deviation off the mean on the same side{from}",
            ControlRule.EightOnOneSide => $"is the eighth in a row on one side of the mean{from}",
            _ => FormattableString.Invariant($"differs by {chart.MovingRanges[signal.First]:0.##} kg from the unit before, more than {chart.RangeUpper:0.##} kg"),
        };
        return SurveyFindings.OutOfControl.At($"`{unit.Mark}` {what}", "look at what changed about then: mix, sand, needles, scale", location: new SourceLocation(question.File, unit.Line, 1));
    });

    private static IEnumerable<Diagnostic> Mean(WeightsQuestion question, WeightsReport report)
    {
        double off = report.Chart.Mean - question.PredictedKilograms;
        if (Math.Abs(off) <= report.MeanHalfWidthKilograms || Math.Abs(off) <= LeastShare * question.PredictedKilograms)
        {
            yield break;
        }

        string doses = report.ExplainingDoseChange is { } change ? FormattableString.Invariant($", or doses {100.0 * change:+0.#;-0.#} % where the unit is larger or smaller than predicted") : "";
        yield return SurveyFindings.WeightOff.At(
            FormattableString.Invariant($"the mean is {report.Chart.Mean:0.##} kg +- {report.MeanHalfWidthKilograms:0.##} kg, {question.PredictedKilograms:0.##} kg is predicted ({100.0 * off / question.PredictedKilograms:+0.#;-0.#} %)"),
            FormattableString.Invariant($"a loose density of {report.ExplainingLooseKilogramsPerCubicMetre:0} instead of {question.LooseKilogramsPerCubicMetre:0} kg/m3 would explain it{doses}; measure both"),
            location: new SourceLocation(question.File, 0, 0));
    }

    private static IEnumerable<Diagnostic> Drift(WeightsQuestion question, WeightsReport report)
    {
        if (Math.Abs(report.DriftKilograms) <= report.DriftHalfWidthKilograms || Math.Abs(report.DriftKilograms) < LeastShare * report.Chart.Mean)
        {
            yield break;
        }

        yield return SurveyFindings.WeightDrifts.At(
            FormattableString.Invariant($"from `{question.Units[0].Mark}` to `{question.Units[^1].Mark}` the weight changes by {report.DriftKilograms:+0.##;-0.##} kg +- {report.DriftHalfWidthKilograms:0.##} kg"),
            report.DriftKilograms > 0.0 ? "measure the needles (valves that no longer shut) and the moisture of the sand" : "measure the needles (tubes and filters that tire) and the loose density of reused mix",
            location: new SourceLocation(question.File, 0, 0));
    }
}
