using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;

namespace Dewstone.Compute.Wetting;

/// <summary>
/// D = D1 exp(b (s - 1)), so Phi = D1 (porosity - residual)/b exp(-b) (exp(b s) - 1). The exponential is our own, (P(b s/16))^16 with the
/// Taylor polynomial of degree 7, so that its bits are the same everywhere and a dry cell has exactly no potential. Relative error below
/// 2e-6 for b = 8 and 5e-5 for b = 12, always the same function of the content, so it acts as a law that differs by that much.
/// </summary>
internal sealed class ExponentialPotential(WettingLaw law, double porosity) : MoisturePotential(law, porosity)
{
    /// <inheritdoc/>
    public override double Scale => AtSaturation * Range / Exponent * Elementary.Exp(-Exponent);

    /// <inheritdoc/>
    public override double Diffusivity(double content) => AtSaturation * Elementary.Exp(Exponent * (Saturation(content) - 1.0));

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public override void Fill(ReadOnlySpan<float> content, Span<float> potential)
    {
        Vector<float> residual = new((float)Residual);
        Vector<float> inverse = new((float)(Exponent / (16.0 * Range)));
        ReadOnlySpan<Vector<float>> from = MemoryMarshal.Cast<float, Vector<float>>(content);
        Span<Vector<float>> to = MemoryMarshal.Cast<float, Vector<float>>(potential)[..from.Length];
        for (int i = 0; i < from.Length; i++)
        {
            to[i] = RaiseLessOne(Vector.MaxNative(from[i] - residual, Vector<float>.Zero) * inverse);
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<float> RaiseLessOne(Vector<float> y)
    {
        Vector<float> p = y * (1f / 5040f) + new Vector<float>(1f / 720f);
        p = p * y + new Vector<float>(1f / 120f);
        p = p * y + new Vector<float>(1f / 24f);
        p = p * y + new Vector<float>(1f / 6f);
        p = p * y + new Vector<float>(0.5f);
        p = p * y + Vector<float>.One;
        p = p * y + Vector<float>.One;
        p *= p;
        p *= p;
        p *= p;
        return p * p - Vector<float>.One;
    }
}
