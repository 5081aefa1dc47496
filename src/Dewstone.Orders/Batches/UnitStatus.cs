namespace Dewstone.Orders.Batches;

/// <summary>How far a unit is.</summary>
/// <param name="Mark">Its mark.</param>
/// <param name="Bin">Its bin.</param>
/// <param name="State">How far.</param>
/// <param name="Record">Its record; null when it has none.</param>
public sealed record UnitStatus(string Mark, string Bin, WorkState State, UnitRecord? Record);
