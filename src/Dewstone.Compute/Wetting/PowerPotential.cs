using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;

namespace Dewstone.Compute.Wetting;

/// <summary>D = D1 s^m, so Phi = D1 (porosity - residual)/(m + 1) s^(m + 1).</summary>
internal sealed class PowerPotential(WettingLaw law, double porosity) : MoisturePotential(law, porosity)
{
    // At s = 10^(-30/(m + 1)) the potential is 1e-30 of that at saturation: no flux worth moving. Below it is taken as 0, because powers
    // that leave the normal range of single precision cost a hundred times a normal one, and every front is lined with such traces.
    private static readonly float[] LeastSaturations =
        [1e-15f, 1e-10f, 3e-8f, 1e-6f, 1e-5f, 5e-5f, 1.8e-4f, 4.6e-4f, 1e-3f, 1.9e-3f, 3.2e-3f, 5e-3f];

    // Clamped because this is set before the base class has refused an exponent out of range.
    private readonly float leastSaturation = LeastSaturations[Math.Clamp(law.Exponent, 1, 12) - 1];

    /// <summary>A whole power known to the compiler, so that each exponent gets its own straight run of multiplications.</summary>
    private interface IWholePower
    {
        static abstract int Value { get; }
    }

    /// <inheritdoc/>
    public override double Scale => AtSaturation * Range / (Exponent + 1);

    /// <inheritdoc/>
    public override double Diffusivity(double content) => AtSaturation * Elementary.WholePower(Saturation(content), Exponent);

    /// <inheritdoc/>
    public override void Fill(ReadOnlySpan<float> content, Span<float> potential)
    {
        switch (Exponent + 1)
        {
            case 2: Fill<P2>(content, potential); break;
            case 3: Fill<P3>(content, potential); break;
            case 4: Fill<P4>(content, potential); break;
            case 5: Fill<P5>(content, potential); break;
            case 6: Fill<P6>(content, potential); break;
            case 7: Fill<P7>(content, potential); break;
            case 8: Fill<P8>(content, potential); break;
            case 9: Fill<P9>(content, potential); break;
            case 10: Fill<P10>(content, potential); break;
            case 11: Fill<P11>(content, potential); break;
            case 12: Fill<P12>(content, potential); break;
            default: Fill<P13>(content, potential); break;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Fill<TPower>(ReadOnlySpan<float> content, Span<float> potential)
        where TPower : struct, IWholePower
    {
        Vector<float> residual = new((float)Residual);
        Vector<float> inverse = new((float)(1.0 / Range));
        Vector<float> least = new(leastSaturation);
        ReadOnlySpan<Vector<float>> from = MemoryMarshal.Cast<float, Vector<float>>(content);
        Span<Vector<float>> to = MemoryMarshal.Cast<float, Vector<float>>(potential)[..from.Length];
        for (int i = 0; i < from.Length; i++)
        {
            Vector<float> s = (from[i] - residual) * inverse;
            to[i] = Raise<TPower>(Vector.ConditionalSelect(Vector.GreaterThan(s, least), s, Vector<float>.Zero));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<float> Raise<TPower>(Vector<float> s)
        where TPower : struct, IWholePower
    {
        Vector<float> s2 = s * s;
        if (TPower.Value < 4)
        {
            return TPower.Value == 2 ? s2 : s2 * s;
        }

        Vector<float> s4 = s2 * s2;
        Vector<float> result = TPower.Value >= 8 ? s4 * s4 : s4;
        if (TPower.Value >= 8 && (TPower.Value & 4) != 0)
        {
            result *= s4;
        }

        if ((TPower.Value & 2) != 0)
        {
            result *= s2;
        }

        return (TPower.Value & 1) != 0 ? result * s : result;
    }

    private readonly struct P2 : IWholePower { public static int Value => 2; }

    private readonly struct P3 : IWholePower { public static int Value => 3; }

    private readonly struct P4 : IWholePower { public static int Value => 4; }

    private readonly struct P5 : IWholePower { public static int Value => 5; }

    private readonly struct P6 : IWholePower { public static int Value => 6; }

    private readonly struct P7 : IWholePower { public static int Value => 7; }

    private readonly struct P8 : IWholePower { public static int Value => 8; }

    private readonly struct P9 : IWholePower { public static int Value => 9; }

    private readonly struct P10 : IWholePower { public static int Value => 10; }

    private readonly struct P11 : IWholePower { public static int Value => 11; }

    private readonly struct P12 : IWholePower { public static int Value => 12; }

    private readonly struct P13 : IWholePower { public static int Value => 13; }
}
