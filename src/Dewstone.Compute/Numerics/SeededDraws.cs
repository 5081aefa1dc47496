namespace Dewstone.Compute.Numerics;

/// <summary>The random numbers of one feature of a description: a function of (seed, feature index, draw) and nothing else.</summary>
/// <remarks>
/// The feature's own seed is output number "feature" of a SplitMix64 with the description's seed; its draws are the outputs of a SplitMix64
/// with that seed. So a draw can be looked up in any order, and features with one seed do not repeat each other.
/// </remarks>
/// <param name="seed">Seed as the description states it.</param>
/// <param name="feature">Index of the feature, from 0.</param>
public sealed class SeededDraws(ulong seed, int feature)
{
    private readonly ulong own = SplitMix64.Output(seed, (ulong)feature);

    /// <summary>A draw as 64 bits.</summary>
    /// <param name="draw">Number of the draw, from 0.</param>
    /// <returns>64 random bits.</returns>
    public ulong Word(ulong draw) => SplitMix64.Output(own, draw);

    /// <summary>A draw as a fraction.</summary>
    /// <param name="draw">Number of the draw, from 0.</param>
    /// <returns>A multiple of 2^-53, 0 or more and under 1.</returns>
    public double Fraction(ulong draw) => SplitMix64.Fraction(Word(draw));
}
