using Dewstone.Compute.Studies;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Studies;

public sealed class TrialsStudyTests
{
    private static double Range(TrialedRequirement requirement) => requirement.Percentile95 - requirement.Percentile5;

    private static TrialedRequirement Of(TrialsReport report, string id) => report.Requirements.Single(r => r.Nominal.Id == id);

    /// <summary>The nominal figures are those of the whole inspection on the same cells, so this holds the trials' shorter way against it too.</summary>
    [Fact]
    public void Trials_without_spread_all_equal_the_inspected_job()
    {
        TrialsQuestion question = TriedJob.Question(TriedJob.Job(), 3);
        TrialsReport report = TriedJob.Run(question with { Spreads = question.Spreads.Times(0.0) });

        Assert.Equal(
            ["mass.max", "water_cement.share", "shape_match.min", "wall.min", "loose_pieces.max", "trapped_mix.max", "clear"],
            report.Requirements.Select(r => r.Nominal.Id));
        Assert.All(report.Requirements, r =>
        {
            Assert.Equal(
                [r.Nominal.Value, r.Nominal.Value, r.Nominal.Value, r.Nominal.Value],
                new[] { r.Unperturbed, r.Percentile5, r.Median, r.Percentile95 });
            Assert.Equal(r.Nominal.Met ? 3 : 0, r.Met);
            Assert.Null(r.Driver);
        });
        Assert.Equal(0.0, report.DoubtfulCubicMetres);
        Assert.Contains((ushort)3, report.HardenedTrials);
        Assert.InRange(report.Requirements[^1].Median, 0.01, 0.1);
    }

    [Fact]
    public void Twice_the_spread_widens_what_comes_out()
    {
        TrialsQuestion question = TriedJob.Question(TriedJob.Job(), 30);
        TrialsReport once = TriedJob.Run(question), twice = TriedJob.Run(question with { Spreads = question.Spreads.Times(2.0) });

        Assert.InRange(Range(Of(twice, "mass.max")) / Range(Of(once, "mass.max")), 1.5, 2.5);
        Assert.True(Range(Of(twice, "shape_match.min")) > 1.2 * Range(Of(once, "shape_match.min")));
        Assert.True(twice.DoubtfulCubicMetres > once.DoubtfulCubicMetres && once.DoubtfulCubicMetres > 0.0);
    }

    /// <summary>The limit is put at the job's own mass, so that it is met with nothing to spare.</summary>
    [Fact]
    public void Requirement_at_the_edge_is_met_by_some_and_missed_by_others()
    {
        TrialsQuestion question = TriedJob.Question(TriedJob.Job(), 20);
        Mass own = new(question.Requirements[0].Value);
        ReefUnit edge = TriedJob.Unit with { Require = TriedJob.Unit.Require with { MaxMass = own } };
        TrialsReport report = TriedJob.Run(TriedJob.Question(TriedJob.Job(edge), 20));
        TrialedRequirement mass = Of(report, "mass.max");

        Assert.True(mass.Nominal.Met);
        Assert.InRange(mass.Met, 4, 16);
        Assert.True(mass.Percentile5 < own.Kilograms && mass.Percentile95 > own.Kilograms);
        Assert.Contains(TrialsCheck.Check(report), finding => finding is { Code: "DW3035", Key.Path: "require.mass.max" });
    }

    [Fact]
    public void Any_number_of_threads_gives_the_same_bits()
    {
        TrialsQuestion question = TriedJob.Question(TriedJob.Job(), 7);
        TrialsReport one = TriedJob.Run(question, 1);
        foreach (int threads in new[] { 2, 3 })
        {
            TrialsReport more = TriedJob.Run(question, threads);
            Assert.Equal(one.HardenedTrials, more.HardenedTrials);
            Assert.Equal(one.Requirements, more.Requirements);
        }
    }

    [Fact]
    public void Another_seed_draws_other_trials()
    {
        TrialsQuestion question = TriedJob.Question(TriedJob.Job(), 4);

        Assert.NotEqual(TriedJob.Run(question).HardenedTrials, TriedJob.Run(question with { Seed = 2 }).HardenedTrials);
    }

    [Fact]
    public void Cancelling_stops_between_trials()
    {
        TrialsQuestion question = TriedJob.Question(TriedJob.Job(), 400);
        using CancellationTokenSource stop = new();
        int told = 0;
        AfterThird progress = new(() =>
        {
            if (Interlocked.Increment(ref told) == 3)
            {
                stop.Cancel();
            }
        });

        Assert.ThrowsAny<OperationCanceledException>(() => TrialsStudy.Run(question, new Parallelism(2), progress, stop.Token));
        Assert.InRange(told, 3, 10);
    }

    private sealed class AfterThird(Action then) : IProgress<Progress>
    {
        public void Report(Progress value) => then();
    }
}
