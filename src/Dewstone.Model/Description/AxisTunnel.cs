using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A straight tunnel along an axis, through the whole box.</summary>
public sealed record AxisTunnel : Tunnel
{
    /// <summary>Direction it runs in.</summary>
    public required Axis Along { get; init; }

    /// <summary>A point of its centre line, metres, unit frame; the component along the axis is 0 and means nothing.</summary>
    public required Point3 At { get; init; }
}
