using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>Volumes of hydrating cement paste (Powers' model as given by Jensen and Hansen).</summary>
/// <remarks>
/// Assumes plain Portland cement, sealed: no water comes in or goes. With p = (w/c) / (w/c + rho_w / rho_c) the first share of water and a the share of cement hydrated:
/// unhydrated cement (1 - p)(1 - a), gel solids 1.52 (1 - p) a, gel water 0.60 (1 - p) a, capillary water p - 1.32 (1 - p) a, shrinkage 0.20 (1 - p) a. Source: Jensen
/// and Hansen, 2001, "Water-entrained cement-based materials: I", Cement and Concrete Research 31, 647 (from memory).
/// </remarks>
public static class PasteModel
{
    /// <summary>Volumes at a share of the cement hydrated.</summary>
    /// <param name="waterCement">Water/cement by mass, above 0.</param>
    /// <param name="hydrated">Share of the cement hydrated, 0 to 1.</param>
    /// <param name="cementDensity">Density of the cement grains, kg/m3.</param>
    /// <param name="waterDensity">Density of the water, kg/m3.</param>
    /// <returns>The volumes; null when the water does not suffice for so much hydration.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A figure out of range.</exception>
    public static PasteVolumes? Of(double waterCement, double hydrated, double cementDensity, double waterDensity = 1000.0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(waterCement);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(cementDensity);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(waterDensity);
        if (!(hydrated is >= 0.0 and <= 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(hydrated), hydrated, "From 0 to 1.");
        }

        double water = waterCement / (waterCement + waterDensity / cementDensity), gone = (1.0 - water) * hydrated, left = water - 1.32 * gone;
        return left < 0.0 ? null : new PasteVolumes(1.0 - water - gone, 1.52 * gone, 0.60 * gone, left, 0.20 * gone);
    }
}
