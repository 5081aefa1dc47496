using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A delivery of mix.</summary>
/// <param name="On">Day.</param>
/// <param name="Mass">Mass.</param>
public sealed record Delivery(DateOnly On, Mass Mass);
