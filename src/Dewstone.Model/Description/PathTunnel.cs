using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>
/// A tunnel along a polyline, round or rectangular. A rectangular section keeps its width level: width runs horizontally across the way,
/// height across both; in an upright stretch the width keeps the direction it had in the stretch before (else after, else x). Bends are
/// mitred.
/// </summary>
public sealed record PathTunnel : Tunnel
{
    /// <summary>Corners of the centre line, metres, unit frame, two or more.</summary>
    public required IReadOnlyList<Point3> Path { get; init; }
}
