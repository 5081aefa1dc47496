using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A tunnel along a polyline; round section only.</summary>
public sealed record PathTunnel : Tunnel
{
    /// <summary>Corners of the centre line, metres, unit frame, two or more.</summary>
    public required IReadOnlyList<Point3> Path { get; init; }
}
