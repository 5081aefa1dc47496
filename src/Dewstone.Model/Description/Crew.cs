using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Crew that digs out.</summary>
/// <param name="Hours">Working time a day.</param>
/// <param name="DigOut">Time to dig out one unit.</param>
public sealed record Crew(Duration Hours, Duration DigOut);
