using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Bins that circulate between printers and curing places.</summary>
/// <param name="Count">Bins in all.</param>
/// <param name="Change">Time to roll one bin out and the next in.</param>
/// <param name="CuringPlaces">Places where full bins stand to set.</param>
/// <param name="Handling">Greatest mass of a full bin.</param>
/// <param name="SetBeforeDig">Least time from the last layer to dig-out.</param>
public sealed record BinStock(int Count, Duration Change, int CuringPlaces, Mass Handling, Duration SetBeforeDig);
