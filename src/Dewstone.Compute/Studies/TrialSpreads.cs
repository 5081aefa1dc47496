using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>How uncertain the inputs of a job are: one standard deviation of each, as a share of the figure unless said.</summary>
public sealed record TrialSpreads
{
    /// <summary>Name of the drift of needles among the inputs.</summary>
    public const string DriftName = "needle drift";

    /// <summary>Name of the repeatability of doses among the inputs.</summary>
    public const string RepeatabilityName = "dose repeatability";

    /// <summary>Bed temperature that was not measured, kelvin; chosen, no source.</summary>
    public const double UnmeasuredBedKelvin = 2.0;

    /// <summary>Density of the bed as spread.</summary>
    public double LooseDensity { get; init; }

    /// <summary>Diffusivity at saturation.</summary>
    public double Diffusivity { get; init; }

    /// <summary>Water/cement at which the mix sets.</summary>
    public double Threshold { get; init; }

    /// <summary>Temperature of the bed, kelvin.</summary>
    public double BedKelvin { get; init; }

    /// <summary>Drift of a needle since its last check, one draw a needle.</summary>
    public double Drift { get; init; }

    /// <summary>Repeatability of a dose, one draw a dose, for each needle of the head: column first, then row.</summary>
    public IReadOnlyList<double> Repeatability { get; init; } = [];

    /// <summary>How the errors of diffusivity, threshold and loose density go together; null when each goes by itself.</summary>
    public MixCorrelation? Correlation { get; init; }

    /// <summary>Where the spreads of the mix come from, for people.</summary>
    public string MixBasis { get; init; } = "";

    /// <summary>Where the spread of the bed's temperature comes from, for people.</summary>
    public string BedBasis { get; init; } = "";

    /// <summary>The spreads of a job; what its files say nothing of is taken as exact, but for a bed temperature that was not measured.</summary>
    /// <param name="job">Mix, printer, needles and tonight.</param>
    /// <returns>The spreads.</returns>
    public static TrialSpreads Of(JobDescription job)
    {
        ArgumentNullException.ThrowIfNull(job);
        MixUncertainty? mix = job.Mix.Uncertainty;
        HeadNeedles needles = HeadNeedles.Of(job.Printer, job.Needles);
        double[] repeatability = new double[needles.Columns * needles.Rows];
        for (int slot = 0; slot < repeatability.Length; slot++)
        {
            repeatability[slot] = needles.State(slot % needles.Columns + 1, slot / needles.Columns + 1)?.Repeatability ?? job.Printer.Needle.Repeatability;
        }

        bool isMeasured = job.Tonight?.BedTemperature is not null;
        return new TrialSpreads
        {
            LooseDensity = mix?.LooseDensity ?? 0.0,
            Diffusivity = mix?.Diffusivity ?? 0.0,
            Threshold = mix?.Threshold ?? 0.0,
            BedKelvin = isMeasured ? 0.0 : UnmeasuredBedKelvin,
            Drift = job.Printer.Needle.Drift,
            Repeatability = repeatability,
            Correlation = mix?.Correlation,
            MixBasis = mix is null ? "the mix gives no uncertainty"
                : mix.Correlation is null ? "uncertainty of the mix" : "uncertainty of the mix, correlated as calibrated",
            BedBasis = isMeasured ? "measured tonight" : "not measured tonight",
        };
    }

    /// <summary>All of them multiplied.</summary>
    /// <param name="factor">Factor, 0 or more.</param>
    /// <returns>The spreads.</returns>
    public TrialSpreads Times(double factor) => this with
    {
        LooseDensity = factor * LooseDensity,
        Diffusivity = factor * Diffusivity,
        Threshold = factor * Threshold,
        BedKelvin = factor * BedKelvin,
        Drift = factor * Drift,
        Repeatability = [.. Repeatability.Select(share => factor * share)],
    };

    /// <summary>The inputs in the order of <see cref="TrialSetting.Inputs"/>.</summary>
    /// <returns>Names and spreads.</returns>
    public IReadOnlyList<TrialInput> Inputs() =>
    [
        new("loose density", LooseDensity, "1", MixBasis),
        new("diffusivity", Diffusivity, "1", MixBasis),
        new("hardening threshold", Threshold, "1", MixBasis),
        new("bed temperature", BedKelvin, "K", BedBasis),
        new(DriftName, Drift, "1", "needles of the printer"),
        new(RepeatabilityName, Repeatability.DefaultIfEmpty().Max(), "1", "worst needle of the printer"),
    ];
}
