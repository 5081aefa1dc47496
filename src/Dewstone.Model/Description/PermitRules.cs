using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>What a permit allows at a site.</summary>
/// <param name="HeightShare">Greatest height over the depth at low water, 1; null for none.</param>
/// <param name="LeastDepth">Least depth at low water in which units may stand; null for none.</param>
/// <param name="Source">Where the rules come from; empty when not said.</param>
public sealed record PermitRules(double? HeightShare, Length? LeastDepth, string Source);
