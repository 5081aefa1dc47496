namespace Dewstone.Orders.Scheduling;

/// <summary>A stretch of time in which work can be done.</summary>
/// <param name="From">Begin, minutes.</param>
/// <param name="To">End, minutes.</param>
public readonly record struct TimeWindow(int From, int To);
