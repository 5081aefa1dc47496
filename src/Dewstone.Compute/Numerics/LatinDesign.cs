namespace Dewstone.Compute.Numerics;

/// <summary>A seeded Latin hypercube: each input's range is cut into as many strata of equal probability as there are trials, and each is drawn from once.</summary>
/// <remarks>
/// Source: McKay, Beckman, Conover 1979, A Comparison of Three Methods for Selecting Values of Input Variables in the Analysis of Output from a Computer
/// Code, Technometrics 21:239. Strata are shuffled by Fisher and Yates's rule; every input has draws of its own.
/// </remarks>
internal sealed class LatinDesign
{
    private readonly ulong seed;
    private readonly int[][] strata;

    /// <summary>A design.</summary>
    /// <param name="inputs">Inputs, 0 or more.</param>
    /// <param name="trials">Trials, 1 or more.</param>
    /// <param name="seed">Seed, any value.</param>
    public LatinDesign(int inputs, int trials, ulong seed)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        this.seed = seed;
        Trials = trials;
        strata = new int[inputs][];
        for (int input = 0; input < inputs; input++)
        {
            strata[input] = Shuffled(new SeededDraws(seed, input), trials);
        }
    }

    /// <summary>Trials.</summary>
    public int Trials { get; }

    /// <summary>Which stratum a trial draws from.</summary>
    /// <param name="input">Input, from 0.</param>
    /// <param name="trial">Trial, from 0.</param>
    /// <returns>The stratum, from 0, lowest values first.</returns>
    public int Stratum(int input, int trial) => strata[input][trial];

    /// <summary>Where in the input's range a trial draws, anywhere in its stratum.</summary>
    /// <param name="input">Input, from 0.</param>
    /// <param name="trial">Trial, from 0.</param>
    /// <returns>0 or more and under 1.</returns>
    public double Fraction(int input, int trial) => (strata[input][trial] + new SeededDraws(seed, input).Fraction((ulong)(Trials + trial))) / Trials;

    private static int[] Shuffled(SeededDraws draws, int trials)
    {
        int[] order = new int[trials];
        for (int i = 0; i < trials; i++)
        {
            int j = (int)(draws.Fraction((ulong)i) * (i + 1));
            (order[i], order[j]) = (order[j], i);
        }

        return order;
    }
}
