using Dewstone.Compute.Studies;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Studies;

public sealed class TrialDrawsTests
{
    private const int Trials = 400;

    private static TrialSetting[] Draw(JobDescription job, TrialSpreads? spreads = null)
    {
        TrialsQuestion question = TriedJob.Question(job, Trials);
        TrialDraws draws = new(job, question.Doses, spreads ?? question.Spreads, Trials, 5);
        return [.. Enumerable.Range(0, Trials).Select(draws.Of)];
    }

    private static (double Mean, double Deviation) Of(IEnumerable<double> values)
    {
        double[] all = [.. values];
        double mean = all.Average();
        return (mean, Math.Sqrt(all.Sum(x => (x - mean) * (x - mean)) / all.Length));
    }

    /// <summary>
    /// Each factor is log-normal with mean 1 and the spread asked for, exactly; a stratified sample of 400 keeps the mean to a ten-thousandth and loses
    /// no more than 2 % of the deviation in its tails.
    /// </summary>
    [Fact]
    public void Bed_is_drawn_with_the_mean_and_the_spread_asked_for()
    {
        JobDescription job = TriedJob.Job();
        TrialSetting[] drawn = Draw(job);
        (double Planned, double Spread, Func<JobDescription, double> Of)[] inputs =
        [
            (1700.0, 0.02 * 1700.0, j => j.LooseDensity.KilogramsPerCubicMetre),
            (3.2e-6, 0.20 * 3.2e-6, j => j.Mix.Wetting.AtSaturation.SquareMetresPerSecond),
            (0.22, 0.05 * 0.22, j => j.Mix.Hardening.WaterCement),
            (20.0, 2.0, j => j.BedTemperature.Celsius),
        ];
        foreach ((double planned, double spread, Func<JobDescription, double> figure) in inputs)
        {
            (double mean, double deviation) = Of(drawn.Select(setting => figure(setting.Job)));
            Assert.Equal(planned, mean, 0.005 * spread);
            Assert.Equal(spread, deviation, 0.02 * spread);
        }
    }

    /// <summary>
    /// Correlations asked for come out of 400 draws to three standard errors of a correlation, (1 - r^2)/sqrt(400) (large samples; Fisher 1915), and each
    /// figure keeps its own spread.
    /// </summary>
    [Fact]
    public void Calibrated_mix_is_drawn_with_its_correlations()
    {
        JobDescription job = TriedJob.Job();
        TrialSpreads spreads = TriedJob.Question(job, Trials).Spreads with { Correlation = new MixCorrelation(0.4, -0.9, -0.2) };
        TrialSetting[] drawn = Draw(job, spreads);
        double[] diffusivity = [.. drawn.Select(setting => Math.Log(setting.Job.Mix.Wetting.AtSaturation.SquareMetresPerSecond))];
        double[] threshold = [.. drawn.Select(setting => Math.Log(setting.Job.Mix.Hardening.WaterCement))];
        double[] density = [.. drawn.Select(setting => Math.Log(setting.Job.LooseDensity.KilogramsPerCubicMetre))];
        foreach ((double expected, double[] a, double[] b) in new[] { (0.4, diffusivity, threshold), (-0.9, diffusivity, density), (-0.2, threshold, density) })
        {
            (double meanA, double deviationA) = Of(a);
            (double meanB, double deviationB) = Of(b);
            Assert.Equal(expected, a.Zip(b, (x, y) => (x - meanA) * (y - meanB)).Average() / (deviationA * deviationB), 3.0 * (1.0 - expected * expected) / 20.0);
        }

        Assert.Equal(0.05, Of(threshold).Deviation, 0.005);
        Assert.Equal(0.02, Of(density).Deviation, 0.002);
    }

    [Fact]
    public void Bed_measured_tonight_is_taken_as_measured()
    {
        TrialSetting[] drawn = Draw(TriedJob.Job(tonight: new Tonight { BedTemperature = new Temperature(11.5), LooseDensity = new Density(1650.0) }));

        Assert.All(drawn, setting => Assert.Equal(11.5, setting.Job.BedTemperature.Celsius));
        Assert.Equal(1650.0, drawn.Average(setting => setting.Job.LooseDensity.KilogramsPerCubicMetre), 0.2);
    }

    [Fact]
    public void Drift_is_one_draw_a_needle_and_repeatability_one_a_dose()
    {
        JobDescription job = TriedJob.Job();
        TrialsQuestion question = TriedJob.Question(job, Trials);
        TrialSpreads drift = question.Spreads with { Repeatability = [.. question.Spreads.Repeatability.Select(_ => 0.0)] };
        TrialSpreads single = question.Spreads with { Drift = 0.0 };
        int[] given = [.. Enumerable.Range(0, question.Doses.CentiMillilitres.Length).Where(i => question.Doses.CentiMillilitres[i] > 0)];
        double Factor(TrialSetting setting, int position) => setting.DosesCubicMetres[position] / (question.Doses.CentiMillilitres[position] / 1e8);

        // Straight layers: positions above each other belong to one needle.
        TrialSetting first = Draw(job, drift)[0];
        int layer = question.Doses.Lattice.Columns * question.Doses.Lattice.Rows;
        Assert.All(given.GroupBy(i => i % layer), needle => Assert.Single(needle.Select(i => Math.Round(Factor(first, i), 12)).Distinct()));
        Assert.True(given.Select(i => Math.Round(Factor(first, i), 12)).Distinct().Count() > 10);

        (double mean, double deviation) = Of(Draw(job, single).SelectMany(setting => given.Select(i => Factor(setting, i))));
        Assert.Equal(1.0, mean, 0.001);
        Assert.Equal(0.02, deviation, 0.0004);
        (mean, deviation) = Of(Draw(job, drift).Select(setting => Factor(setting, given[0])));
        Assert.Equal(1.0, mean, 0.001);
        Assert.Equal(0.05, deviation, 0.001);
    }

    [Fact]
    public void Needle_with_a_repeatability_of_its_own_scatters_by_that()
    {
        NeedleTable table = new() { Needles = [new NeedleState { Column = 4, Row = 3, Repeatability = 0.10 }] };
        JobDescription job = TriedJob.Job(needles: table);
        TrialSpreads spreads = TrialSpreads.Of(job);

        Assert.Equal(0.10, spreads.Repeatability[2 * job.Printer.Head.Columns + 3]);
        Assert.Equal(0.02, spreads.Repeatability[0]);
        Assert.Equal(0.10, spreads.Inputs().Single(input => input.Name == TrialSpreads.RepeatabilityName).Spread);
    }

    [Fact]
    public void Mix_without_uncertainty_is_taken_as_exact_and_that_is_said()
    {
        JobDescription job = TriedJob.Job();
        TrialSpreads spreads = TrialSpreads.Of(job with { Mix = job.Mix with { Uncertainty = null } });

        Assert.All(spreads.Inputs().Take(3), input => Assert.Equal((0.0, "the mix gives no uncertainty"), (input.Spread, input.Basis)));
        Assert.Equal((2.0, "not measured tonight"), (spreads.Inputs()[3].Spread, spreads.Inputs()[3].Basis));
    }

    /// <summary>A density whose spread would reach that of the grains: there is always a hundredth left for water.</summary>
    [Fact]
    public void Bed_is_never_drawn_without_pores()
    {
        JobDescription job = TriedJob.Job();
        TrialSetting[] drawn = Draw(job, TrialSpreads.Of(job) with { LooseDensity = 0.5, Threshold = 0.5 });

        Assert.All(drawn, setting => Assert.True(setting.Job.Mix.Porosity(setting.Job.LooseDensity) >= 0.01 - 1e-12));
        Assert.Contains(drawn, setting => setting.Job.Mix.Porosity(setting.Job.LooseDensity) < 0.0100001);
    }
}
