using Dewstone.Compute.Numerics;
using Dewstone.Compute.Studies;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Studies;

/// <summary>Finding DW3035, and the input that drives a margin.</summary>
public sealed class TrialsCheckTests
{
    private static IReadOnlyList<Diagnostic> Check(int met, int trials, double value = 0.85, TrialDriver? driver = null)
    {
        WilsonInterval share = WilsonInterval.Of(met, trials);
        TrialedRequirement requirement = new()
        {
            Nominal = new RequirementResult
            {
                Id = RequirementIds.MinShapeMatch,
                Key = new KeyPath(DescriptionKind.Unit, "require.shape_match.min"),
                Quantity = "match",
                Op = ">=",
                Limit = 0.8,
                Value = value,
                Unit = "1",
            },
            Unperturbed = value,
            Met = met,
            ShareLow = share.Low,
            ShareHigh = share.High,
            Percentile5 = value,
            Median = value,
            Percentile95 = value,
            Driver = driver,
        };
        return TrialsCheck.Check(new TrialsReport
        {
            Trials = trials,
            Seed = 1,
            Grid = CellGrid.Over(LimitsStudy.OneVoxel(Samples.YardPrinter()), 4),
            Inputs = [],
            Requirements = [requirement],
            HardenedTrials = [],
        });
    }

    [Fact]
    public void Requirement_met_as_computed_but_often_missed_is_a_warning_with_what_drives_it()
    {
        Diagnostic finding = Assert.Single(Check(18, 20, driver: new TrialDriver("diffusivity", 0.71)));

        Assert.Equal(("DW3035", Severity.Warning, "require.shape_match.min"), (finding.Code, finding.Severity, finding.Key!.Path));
        Assert.Equal("match: 18 of 20 trials meet it, 70 to 97 % of prints with 95 % confidence; misses go with low diffusivity (rank correlation 0.71)", finding.Message);
        Assert.StartsWith("calibrate the mix", finding.Remedy);
        Assert.Contains("misses go with more water by needle drift", Assert.Single(Check(18, 20, driver: new TrialDriver("needle drift", -0.5))).Message);
        Assert.Contains("no single input stands out", Assert.Single(Check(18, 20)).Message);
    }

    /// <summary>99 of 100: from 94.6 %. 20 of 20 say only that 84 % are sure, yet nothing speaks against it. A requirement missed as computed has an error of its own.</summary>
    [Fact]
    public void Requirement_seldom_missed_or_missed_as_computed_raises_nothing()
    {
        Assert.Empty(Check(99, 100));
        Assert.Empty(Check(20, 20));
        Assert.Empty(Check(3, 20, value: 0.7));
    }

    [Fact]
    public void Fewest_trials_are_the_least_that_can_show_the_sure_share()
    {
        Assert.True(WilsonInterval.Of(TrialsCheck.FewestTrials, TrialsCheck.FewestTrials).Low >= TrialsCheck.SureShare);
        Assert.True(WilsonInterval.Of(TrialsCheck.FewestTrials - 1, TrialsCheck.FewestTrials - 1).Low < TrialsCheck.SureShare);
    }

    /// <summary>
    /// Ten trials; the margin falls with input b but for two neighbouring swaps. Without ties 1 - 6 sum(d^2)/(n (n^2 - 1)), d the differences of ranks
    /// (Spearman 1904; from memory). Told only beyond 1.96/sqrt(9) = 0.65; input c has no spread.
    /// </summary>
    [Fact]
    public void Driver_is_the_input_whose_ranks_go_most_with_the_margin()
    {
        double[] margins = [9, 8, 6, 7, 5, 4, 2, 3, 1, 0];
        double[] weak = [3, 1, 4, 1.5, 9, 2, 6, 5, 3.5, 8];
        double[][] inputs = [.. Enumerable.Range(0, 10).Select(trial => new[] { weak[trial], trial, trial })];
        TrialInput[] names = [new("a", 0.1, "1", ""), new("b", 0.1, "1", ""), new("c", 0.0, "1", "")];
        double squares = Enumerable.Range(0, 10).Sum(trial => (margins[trial] - trial) * (margins[trial] - trial));

        TrialDriver driver = TrialTally.Driver(names, inputs, margins)!;

        Assert.Equal("b", driver.Input);
        Assert.Equal(1.0 - 6.0 * squares / (10.0 * 99.0), driver.RankCorrelation, 1e-12);
        Assert.Null(TrialTally.Driver(names, inputs, [1, 1, 1, 1, 1, 1, 1, 1, 1, 1]));
        Assert.Null(TrialTally.Driver(names, inputs, [3, 9, 4, 0, 2, 5, 7, 1, 8, 6]));
    }
}
