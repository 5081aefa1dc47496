namespace Dewstone.Compute.Numerics;

/// <summary>The generator SplitMix64: a counter that is stirred. Any output can be computed by its number alone.</summary>
/// <remarks>
/// Output n (from 0) of a generator with seed s is mix(s + (n + 1) g), all modulo 2^64.
/// Source: Steele, Lea, Flood 2014, Fast Splittable Pseudorandom Number Generators, figure 13 (gamma) and the mixer with the constants of
/// Stafford's variant 13, as in the public reference code.
/// </remarks>
public static class SplitMix64
{
    private const ulong Gamma = 0x9E3779B97F4A7C15UL;
    private const ulong FirstFactor = 0xBF58476D1CE4E5B9UL;
    private const ulong SecondFactor = 0x94D049BB133111EBUL;

    /// <summary>An output of the generator.</summary>
    /// <param name="seed">Seed, any value.</param>
    /// <param name="number">Number of the output, from 0.</param>
    /// <returns>64 random bits.</returns>
    public static ulong Output(ulong seed, ulong number)
    {
        unchecked
        {
            ulong z = seed + (number + 1) * Gamma;
            z = (z ^ (z >> 30)) * FirstFactor;
            z = (z ^ (z >> 27)) * SecondFactor;
            return z ^ (z >> 31);
        }
    }

    /// <summary>The upper 53 bits as a fraction.</summary>
    /// <param name="word">64 random bits.</param>
    /// <returns>A multiple of 2^-53, 0 or more and under 1.</returns>
    public static double Fraction(ulong word) => (word >> 11) * (1.0 / (1UL << 53));
}
