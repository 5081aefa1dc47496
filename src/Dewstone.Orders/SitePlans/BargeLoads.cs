namespace Dewstone.Orders.SitePlans;

/// <summary>The trips that carry an order out.</summary>
/// <param name="Trips">The trips.</param>
/// <param name="LeastTrips">No way of loading needs fewer.</param>
/// <param name="TooHeavy">Marks of the units that no trip can carry.</param>
public sealed record BargeLoads(IReadOnlyList<BargeTrip> Trips, int LeastTrips, IReadOnlyList<string> TooHeavy);
