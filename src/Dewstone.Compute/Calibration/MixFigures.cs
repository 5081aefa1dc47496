namespace Dewstone.Compute.Calibration;

/// <summary>The figures of a mix that measurements can tell.</summary>
/// <param name="Diffusivity">At saturation, m2/s.</param>
/// <param name="Threshold">Least water/cement that sets, 1.</param>
/// <param name="LooseDensity">As spread, kg/m3.</param>
public readonly record struct MixFigures(double Diffusivity, double Threshold, double LooseDensity)
{
    /// <summary>How many there are.</summary>
    public const int Count = 3;

    /// <summary>Their names, in order.</summary>
    public static IReadOnlyList<string> Names { get; } = ["diffusivity", "hardening threshold", "loose density"];

    /// <summary>Natural logarithms in order: all figures are above 0, and their errors are shares.</summary>
    /// <returns>Three logarithms.</returns>
    internal double[] Logarithms() => [Math.Log(Diffusivity), Math.Log(Threshold), Math.Log(LooseDensity)];

    /// <summary>The figures of their logarithms.</summary>
    /// <param name="logarithms">Three logarithms.</param>
    internal static MixFigures Of(IReadOnlyList<double> logarithms) => new(Math.Exp(logarithms[0]), Math.Exp(logarithms[1]), Math.Exp(logarithms[2]));
}
