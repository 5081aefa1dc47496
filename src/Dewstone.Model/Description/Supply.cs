using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Water supply of the printer.</summary>
/// <param name="Flow">Greatest total flow.</param>
/// <param name="Tank">Tank volume.</param>
public sealed record Supply(FlowRate Flow, Volume Tank);
