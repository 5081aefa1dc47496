using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A current.</summary>
/// <param name="Speed">Speed.</param>
/// <param name="Direction">Direction it goes to, clockwise from true north.</param>
public sealed record SeaCurrent(Speed Speed, Angle Direction);
