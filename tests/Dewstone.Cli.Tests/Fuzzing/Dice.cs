using CsCheck;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Draws of one case; the same number and seed give the same draws.</summary>
/// <param name="number">Number of the case.</param>
/// <param name="seed">Seed of the run.</param>
internal sealed class Dice(uint number, ulong seed)
{
    private readonly PCG source = new(number, seed);

    /// <summary>A whole number from 0, below a bound.</summary>
    public int Below(int bound) => (int)source.Next((uint)bound);

    /// <summary>True once in so many draws.</summary>
    public bool OnceIn(int draws) => Below(draws) == 0;

    /// <summary>One of several.</summary>
    public T Of<T>(IReadOnlyList<T> choices) => choices[Below(choices.Count)];
}
