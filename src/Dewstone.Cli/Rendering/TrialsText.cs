using Dewstone.Compute.Studies;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>How the trials came out, in words.</summary>
internal static class TrialsText
{
    /// <summary>The words.</summary>
    /// <param name="trials">The trials.</param>
    /// <returns>What was drawn, a line for each requirement, how much of the solid is in doubt.</returns>
    public static IEnumerable<string> Of(TrialsReport trials)
    {
        string few = trials.Trials < TrialsCheck.FewestTrials ? $"; fewer than {TrialsCheck.FewestTrials} cannot show {100.0 * TrialsCheck.SureShare:0} %" : "";
        yield return $"{trials.Trials} on {trials.Grid.CellsPerPitch} cells a voxel, seed {trials.Seed}{few}";
        yield return $"drawn, one standard deviation: {string.Join(", ", trials.Inputs.Select(Spread))}";
        foreach (TrialedRequirement r in trials.Requirements)
        {
            string of = r.Nominal.Feature.Length == 0 ? r.Nominal.Quantity : $"{r.Nominal.Quantity} of {r.Nominal.Feature}";
            string middle = WordLine.Figure(r.Median, r.Nominal.Unit);
            yield return $"{r.Met} of {trials.Trials} meet {of} (Wilson {100.0 * r.ShareLow:0} to {100.0 * r.ShareHigh:0} %): "
                + $"{middle}, 90 % from {WordLine.Figure(r.Percentile5, r.Nominal.Unit)} to {WordLine.Figure(r.Percentile95, r.Nominal.Unit)}";
        }

        yield return $"{trials.DoubtfulCubicMetres * 1000.0:0.0} L harden in some and not in others";
    }

    private static string Spread(TrialInput input)
    {
        string spread = input.Unit == "K" ? $"{input.Spread:0.#} K" : $"{100.0 * input.Spread:0.#} %";
        return input.Spread > 0.0 ? $"{input.Name} {spread}" : $"{input.Name} none ({input.Basis})";
    }
}
