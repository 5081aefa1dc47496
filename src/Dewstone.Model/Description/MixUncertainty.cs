namespace Dewstone.Model.Description;

/// <summary>One standard deviation of uncertain figures, as a share of the figure.</summary>
/// <param name="Diffusivity">Of the diffusivity, 1.</param>
/// <param name="Threshold">Of the hardening water/cement, 1.</param>
/// <param name="LooseDensity">Of the loose density, 1.</param>
public sealed record MixUncertainty(double Diffusivity, double Threshold, double LooseDensity)
{
    /// <summary>How their errors go together; null when each goes by itself.</summary>
    public MixCorrelation? Correlation { get; init; }
}
