using Dewstone.Compute.Dosing;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>Draws the trials of a job: a Latin hypercube over the bed's inputs and the drift of every needle, and a draw for each dose.</summary>
/// <remarks>
/// Densities, diffusivities, thresholds and doses are multiplied by a log-normal factor of mean 1 and the spread's standard deviation, so that none falls
/// below 0; the temperature is normal. The thousands of single doses average out over any place that matters, and are drawn one by one without strata.
/// The three figures of a calibrated mix are drawn together, by Cholesky's factor of their correlations. A bed is never drawn so dense that less than a hundredth of it is left for water, nor a threshold below the content where water stops moving.
/// </remarks>
internal sealed class TrialDraws
{
    /// <summary>Inputs of the bed: loose density, diffusivity, threshold, temperature.</summary>
    public const int BedInputs = 4;

    private const double LeastRoom = 0.01;

    private readonly JobDescription job;
    private readonly DosePlan doses;
    private readonly TrialSpreads spreads;
    private readonly ulong seed;
    private readonly int[] needles;

    /// <summary>The draws of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="doses">Its doses as rounded.</param>
    /// <param name="spreads">How uncertain its inputs are.</param>
    /// <param name="trials">Trials, 1 or more.</param>
    /// <param name="seed">Seed, any value.</param>
    public TrialDraws(JobDescription job, DosePlan doses, TrialSpreads spreads, int trials, ulong seed)
    {
        (this.job, this.doses, this.spreads, this.seed) = (job, doses, spreads, seed);
        Head head = job.Printer.Head;
        Design = new LatinDesign(BedInputs + head.Columns * head.Rows, trials, seed);
        DoseRounder rounder = new(job, doses.Lattice);
        needles = new int[doses.Lattice.Columns * doses.Lattice.Rows];
        for (int position = 0; position < needles.Length; position++)
        {
            (int column, int row) = rounder.Needle(position);
            needles[position] = (row - 1) * head.Columns + column - 1;
        }
    }

    /// <summary>The design: the bed's inputs, then one input a needle, column first, then row.</summary>
    public LatinDesign Design { get; }

    /// <summary>The job as planned.</summary>
    public TrialSetting Planned => new(job, Array.ConvertAll(doses.CentiMillilitres, dose => dose / 1e8), new double[BedInputs + 2]);

    /// <summary>A trial.</summary>
    /// <param name="trial">Trial, from 0.</param>
    /// <returns>Bed and doses.</returns>
    public TrialSetting Of(int trial)
    {
        double[] inputs = new double[BedInputs + 2];
        for (int input = 0; input < BedInputs; input++)
        {
            inputs[input] = Normal(input, trial);
        }

        // A mix whose correlations cannot be is refused when it is read.
        if (spreads.Correlation?.Factor() is { } factor)
        {
            (double density, double diffusivity, double threshold) = (inputs[0], inputs[1], inputs[2]);
            inputs[2] = factor.TD * diffusivity + factor.TT * threshold;
            inputs[0] = factor.RD * diffusivity + factor.RT * threshold + factor.RR * density;
        }

        double[] given = Doses(trial, out inputs[BedInputs], out inputs[BedInputs + 1]);
        return new TrialSetting(Bed(inputs), given, inputs);
    }

    private JobDescription Bed(double[] inputs)
    {
        DryMix mix = job.Mix;
        double planned = job.LooseDensity.KilogramsPerCubicMetre, residual = mix.Wetting.Residual;
        double grains = (1.0 - mix.Porosity(job.LooseDensity)) / planned;
        double loose = Math.Min(planned * Factor(spreads.LooseDensity, inputs[0]), Math.Max(planned, (1.0 - residual - LeastRoom) / grains));
        double driest = (residual + LeastRoom) * mix.Liquid.Density.KilogramsPerCubicMetre / mix.BinderKilogramsPerCubicMetre(new Density(loose));
        double threshold = Math.Max(
            mix.Hardening.WaterCement * Factor(spreads.Threshold, inputs[2]), Math.Min(mix.Hardening.WaterCement, driest));
        return job with
        {
            Mix = mix with
            {
                Wetting = mix.Wetting with
                {
                    AtSaturation = new Diffusivity(mix.Wetting.AtSaturation.SquareMetresPerSecond * Factor(spreads.Diffusivity, inputs[1])),
                },
                Hardening = mix.Hardening with { WaterCement = threshold },
            },
            Tonight = (job.Tonight ?? new Tonight()) with
            {
                LooseDensity = new Density(loose),
                BedTemperature = new Temperature(job.BedTemperature.Celsius + spreads.BedKelvin * inputs[3]),
            },
        };
    }

    private double[] Doses(int trial, out double byDrift, out double byRepeatability)
    {
        double[] drift = new double[spreads.Repeatability.Count];
        for (int needle = 0; needle < drift.Length; needle++)
        {
            drift[needle] = Factor(spreads.Drift, Normal(BedInputs + needle, trial));
        }

        SeededDraws draws = new(seed, BedInputs + drift.Length + trial);
        double[] given = new double[doses.CentiMillilitres.Length];
        double planned = 0.0;
        (byDrift, byRepeatability) = (0.0, 0.0);
        for (int position = 0; position < given.Length; position++)
        {
            if (doses.CentiMillilitres[position] == 0)
            {
                continue;
            }

            int needle = needles[position % needles.Length];
            double dose = doses.CentiMillilitres[position] / 1e8, drifted = drift[needle];
            double once = Factor(spreads.Repeatability[needle], NormalQuantile.At(draws.Fraction((ulong)position)));
            given[position] = dose * drifted * once;
            planned += dose;
            byDrift += dose * (drifted - 1.0);
            byRepeatability += dose * (once - 1.0);
        }

        (byDrift, byRepeatability) = planned > 0.0 ? (byDrift / planned, byRepeatability / planned) : (0.0, 0.0);
        return given;
    }

    private double Normal(int input, int trial) => NormalQuantile.At(Design.Fraction(input, trial));

    // Log-normal of mean 1: exp(s z - s^2/2) with s^2 = ln(1 + share^2).
    private static double Factor(double share, double deviations)
    {
        if (share <= 0.0)
        {
            return 1.0;
        }

        double square = Elementary.Log(1.0 + share * share);
        return Elementary.Exp(Math.Sqrt(square) * deviations - 0.5 * square);
    }
}
