namespace Dewstone.Model.Results;

/// <summary>Strength at an age under the curing temperature in force.</summary>
/// <param name="Days">Age, d.</param>
/// <param name="EquivalentDays">Equivalent age at 20 degC, d.</param>
/// <param name="MeanPascals">Mean over the hardened volume, Pa.</param>
/// <param name="WeakPascals">Strength that 5 % of the hardened volume does not reach, Pa.</param>
public sealed record StrengthAtAge(double Days, double EquivalentDays, double MeanPascals, double WeakPascals);
