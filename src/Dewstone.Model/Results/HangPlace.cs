using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>One strap or insert.</summary>
/// <param name="Where">Middle of what bears, metres, unit frame.</param>
/// <param name="Share">Share of the weight on it, 1, by balance; below 0 when it would have to push.</param>
/// <param name="BearingShare">Share of a strap's length under the unit that lies on hardened mix, 0 to 1; 1 for an insert.</param>
/// <param name="BearingPascals">Mean pressure on what bears with the dynamic factor, Pa; 0 for an insert.</param>
public sealed record HangPlace(Point3 Where, double Share, double BearingShare, double BearingPascals);
