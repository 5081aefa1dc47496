using Dewstone.Model.Description;

namespace Dewstone.Compute.Wetting;

/// <summary>
/// Kirchhoff's potential of a diffusivity law: Phi(theta) = integral of D from the residual content to theta. The flux between two cells is
/// the difference of their potentials over their distance, which is the flux with the integral-averaged D. (A harmonic average would hold
/// the front fast on a dry bed, an arithmetic one is only first order: Maddix, Sampaio, Gerritsen 2018, "Numerical artifacts in the
/// discontinuous generalized porous medium equation", arXiv 1709.02581.)
/// </summary>
internal abstract class MoisturePotential
{
    /// <summary>The law's residual content, 1, and the content it can move, 1.</summary>
    /// <param name="law">The law.</param>
    /// <param name="porosity">Pore volume per volume of bed, 1.</param>
    protected MoisturePotential(WettingLaw law, double porosity)
    {
        double range = porosity - law.Residual;
        if (!(range > 0.0) || !(law.Residual >= 0.0) || !(porosity < 1.0))
        {
            throw new ArgumentOutOfRangeException(nameof(porosity), porosity, "Above the residual content, below 1.");
        }

        if (law.Exponent is < 1 or > 12)
        {
            throw new ArgumentOutOfRangeException(nameof(law), law.Exponent, "The exponent is a whole number from 1 to 12.");
        }

        if (!(law.AtSaturation.SquareMetresPerSecond > 0.0))
        {
            throw new ArgumentOutOfRangeException(nameof(law), law.AtSaturation.SquareMetresPerSecond, "A diffusivity above 0 m2/s.");
        }

        Residual = law.Residual;
        Range = range;
        Exponent = law.Exponent;
        AtSaturation = law.AtSaturation.SquareMetresPerSecond;
    }

    /// <summary>Content below which nothing moves, 1.</summary>
    protected double Residual { get; }

    /// <summary>Porosity less residual content, 1.</summary>
    protected double Range { get; }

    /// <summary>Exponent of the law, 1.</summary>
    protected int Exponent { get; }

    /// <summary>Diffusivity at saturation, m2/s.</summary>
    protected double AtSaturation { get; }

    /// <summary>What <see cref="Fill"/>'s values are multiplied by to give Phi, m2/s. Held apart to keep single precision away from its ends.</summary>
    public abstract double Scale { get; }

    /// <summary>The diffusivity at a content, m2/s.</summary>
    /// <param name="content">Volumetric water content, 1.</param>
    /// <returns>D, m2/s; 0 at or below the residual content for a power law.</returns>
    public abstract double Diffusivity(double content);

    /// <summary>Potential over <see cref="Scale"/> of a run of cells.</summary>
    /// <param name="content">Volumetric water content, 1; a whole number of vectors.</param>
    /// <param name="potential">Receives the values, 1; as long as <paramref name="content"/>.</param>
    public abstract void Fill(ReadOnlySpan<float> content, Span<float> potential);

    /// <summary>The potential of a law.</summary>
    /// <param name="law">The law.</param>
    /// <param name="porosity">Pore volume per volume of bed, 1.</param>
    /// <returns>Its potential.</returns>
    public static MoisturePotential Of(WettingLaw law, double porosity) => law switch
    {
        PowerLaw => new PowerPotential(law, porosity),
        ExponentialLaw => new ExponentialPotential(law, porosity),
        _ => throw new ArgumentException($"No potential for {law.GetType().Name}.", nameof(law)),
    };

    /// <summary>Effective saturation at a content, 0 to 1.</summary>
    /// <param name="content">Volumetric water content, 1.</param>
    /// <returns>(content - residual)/(porosity - residual), not below 0.</returns>
    protected double Saturation(double content) => Math.Max(0.0, (content - Residual) / Range);
}
