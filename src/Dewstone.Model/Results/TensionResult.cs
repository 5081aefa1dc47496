using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>Tension in a unit under one load case, at the place where it comes nearest to cracking.</summary>
/// <param name="Case">How it is held.</param>
/// <param name="TensionPascals">Largest principal tension there, mean over a ball of one pitch across, Pa.</param>
/// <param name="CrackingPascals">Cracking stress there at 28 days, Pa.</param>
/// <param name="Where">The place, metres, unit frame.</param>
/// <param name="FactorAtLift">Cracking stress over tension at the age of lifting, 1.</param>
/// <param name="Overturns">Whether the supports would have to pull: the unit does not stay on them.</param>
public sealed record TensionResult(LoadCase Case, double TensionPascals, double CrackingPascals, Point3 Where, double FactorAtLift, bool Overturns)
{
    /// <summary>Cracking stress over tension at 28 days, 1.</summary>
    public double Factor => CrackingPascals / TensionPascals;
}
