using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;
using MathNet.Numerics.Statistics;

namespace Dewstone.Compute.Studies;

/// <summary>Puts the figures of all trials together, requirement by requirement.</summary>
internal static class TrialTally
{
    /// <summary>The tally.</summary>
    /// <param name="question">The job, with its own figures.</param>
    /// <param name="figures">Requirements of each trial, then those of the job as planned on the same cells.</param>
    /// <param name="inputs">What each trial drew of each input.</param>
    /// <returns>One a requirement, in the job's order.</returns>
    /// <exception cref="InvalidOperationException">A trial was judged by other requirements than the job.</exception>
    public static IReadOnlyList<TrialedRequirement> Of(TrialsQuestion question, IReadOnlyList<RequirementResult>[] figures, double[][] inputs)
    {
        List<TrialedRequirement> tally = [];
        for (int i = 0; i < question.Requirements.Count; i++)
        {
            RequirementResult nominal = question.Requirements[i];
            RequirementResult[] found = [.. figures.Select(one => one.Count == question.Requirements.Count && one[i].Key == nominal.Key
                ? one[i] : throw new InvalidOperationException($"The trials do not judge {nominal.Key.Path} where the job does."))];
            RequirementResult[] trials = found[..^1];
            double[] values = [.. trials.Select(trial => trial.Value).Order()];
            int met = trials.Count(trial => trial.Met);
            WilsonInterval share = WilsonInterval.Of(met, trials.Length);
            tally.Add(new TrialedRequirement
            {
                Nominal = nominal,
                Unperturbed = found[^1].Value,
                Met = met,
                ShareLow = share.Low,
                ShareHigh = share.High,
                Percentile5 = Percentile(values, 0.05),
                Median = Percentile(values, 0.5),
                Percentile95 = Percentile(values, 0.95),
                Driver = Driver(question.Spreads.Inputs(), inputs, [.. trials.Select(trial => trial.Margin)]),
            });
        }

        return tally;
    }

    /// <summary>The input whose ranks go most with those of a margin.</summary>
    /// <remarks>
    /// Spearman's rank correlation. It is told only beyond 1.96/sqrt(n - 1): without a link 5 in 100 of single inputs get there (large-sample form of its
    /// distribution, from memory).
    /// </remarks>
    /// <param name="names">The inputs.</param>
    /// <param name="inputs">What each trial drew of each.</param>
    /// <param name="margins">The margin of each trial.</param>
    /// <returns>The input, the first of equals; null when nothing stands out.</returns>
    internal static TrialDriver? Driver(IReadOnlyList<TrialInput> names, double[][] inputs, double[] margins)
    {
        TrialDriver? most = null;
        for (int input = 0; input < names.Count; input++)
        {
            double correlation = names[input].Spread > 0.0 ? Correlation.Spearman(inputs.Select(drawn => drawn[input]), margins) : 0.0;
            if (Math.Abs(correlation) * Math.Sqrt(margins.Length - 1.0) >= 1.96 && Math.Abs(correlation) > Math.Abs(most?.RankCorrelation ?? 0.0))
            {
                most = new TrialDriver(names[input].Name, correlation);
            }
        }

        return most;
    }

    // Between the ordered values, position 1 + (n - 1) share: the seventh of Hyndman and Fan's definitions.
    private static double Percentile(double[] ordered, double share) => SortedArrayStatistics.QuantileCustom(ordered, share, QuantileDefinition.R7);
}
