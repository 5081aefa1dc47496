using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Mix in stock and to come.</summary>
/// <param name="OnHand">On hand at the start.</param>
/// <param name="Silo">Capacity of the silo.</param>
/// <param name="Deliveries">Deliveries, by date.</param>
public sealed record MixStock(Mass OnHand, Mass Silo, IReadOnlyList<Delivery> Deliveries);
