namespace Dewstone.Orders.Scheduling;

/// <summary>Mix that arrives.</summary>
/// <param name="At">When, minutes.</param>
/// <param name="Kilograms">How much.</param>
public readonly record struct StockDelivery(int At, int Kilograms);
