namespace Dewstone.Model.Results;

/// <summary>From which drawn size a feature comes out, at the luckiest and at the worst place against the needles.</summary>
/// <param name="BestMetres">At the luckiest place, metres; null when not even the largest size tried does.</param>
/// <param name="WorstMetres">At the worst place, metres; null when not even the largest size tried does.</param>
public readonly record struct SizeLimit(double? BestMetres, double? WorstMetres);
