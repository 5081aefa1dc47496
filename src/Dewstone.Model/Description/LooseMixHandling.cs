using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>What becomes of loose mix at dig-out.</summary>
/// <param name="LostInBin">Mass that stays in the bin or is lost each time.</param>
/// <param name="Reusable">Share of the rest that can be spread again, 0 to 1.</param>
public sealed record LooseMixHandling(Mass LostInBin, double Reusable);
