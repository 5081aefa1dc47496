using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;

namespace Dewstone.Compute.Calibration;

/// <summary>A wetting law without units: diffusivity over that at saturation as a function of the effective saturation s, 0 to 1, residual content 0.</summary>
/// <remarks>
/// The wetting of a bed that was dry obeys ds/dt = D1 div(d(s) grad s). Lengths over a length L and times over L^2/D1 leave ds/dt = div(d grad s): one
/// solution serves every diffusivity, dose and porosity. Potential: integral of d from 0 to s, as in the wetting itself.
/// </remarks>
/// <param name="IsPower">True for d = s^m, false for d = exp(m (s - 1)).</param>
/// <param name="Exponent">m, a whole number from 1 to 12.</param>
internal readonly record struct SaturationLaw(bool IsPower, int Exponent)
{
    /// <summary>Power of s that is nearly straight across a front, for placing it between cells; the choice of the jobs' own surface.</summary>
    /// <param name="saturation">Saturation at the place sought.</param>
    /// <returns>1 or more.</returns>
    public int FrontPower(double saturation) => Math.Max(1, (IsPower ? Exponent : (int)(Exponent * saturation + 0.5)) - 1);

    /// <summary>The law of a mix, with another exponent.</summary>
    /// <param name="law">The mix's law.</param>
    /// <param name="exponent">Exponent, 1 to 12.</param>
    /// <returns>The law.</returns>
    public static SaturationLaw Of(WettingLaw law, int exponent) => new(law is PowerLaw, exponent);

    /// <summary>Diffusivity over that at saturation.</summary>
    /// <param name="saturation">s, 0 to 1.</param>
    /// <returns>d, 1.</returns>
    public double Diffusivity(double saturation) => IsPower ? Elementary.WholePower(saturation, Exponent) : Math.Exp(Exponent * (saturation - 1.0));

    /// <summary>Potentials of a run of cells.</summary>
    /// <param name="saturation">s of each.</param>
    /// <param name="potential">Receives the potentials.</param>
    public void Fill(ReadOnlySpan<double> saturation, Span<double> potential)
    {
        double dry = IsPower ? 0.0 : Math.Exp(-Exponent), scale = 1.0 / (IsPower ? Exponent + 1 : Exponent);
        for (int i = 0; i < saturation.Length; i++)
        {
            double s = saturation[i];
            potential[i] = scale * (IsPower ? Elementary.WholePower(s, Exponent + 1) : Math.Exp(Exponent * (s - 1.0)) - dry);
        }
    }
}
