using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Placement fixed by the unit's file; null members are free.</summary>
public sealed record PlacementWish
{
    /// <summary>Quarter turns about z, counter-clockwise seen from above, 0 to 3.</summary>
    public int? QuarterTurns { get; init; }

    /// <summary>Shift from the centred whole-pitch position, metres, printer frame, after turning.</summary>
    public Point3? Shift { get; init; }

    /// <summary>Whether every other layer is shifted by half a pitch.</summary>
    public bool? ShiftedLayers { get; init; }
}
