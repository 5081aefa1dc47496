using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Moisture diffusivity as a function of the effective saturation s = (theta - residual)/(porosity - residual), 0 to 1.</summary>
public abstract record WettingLaw
{
    /// <summary>Diffusivity at saturation.</summary>
    public required Diffusivity AtSaturation { get; init; }

    /// <summary>Exponent, a whole number from 1 to 12.</summary>
    public required int Exponent { get; init; }

    /// <summary>Residual volumetric water content below which nothing moves, 1.</summary>
    public double Residual { get; init; }
}
