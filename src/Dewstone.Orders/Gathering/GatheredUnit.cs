using Dewstone.Orders.Batches;
using Dewstone.Orders.Listing;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Gathering;

/// <summary>A unit that is ready to be printed.</summary>
/// <param name="Ordered">As ordered.</param>
/// <param name="Record">What its run says of it.</param>
/// <param name="AtSea">As those see it who set it down.</param>
public sealed record GatheredUnit(OrderedUnit Ordered, UnitRecord Record, SeaUnit AtSea);
