namespace Dewstone.Orders.SitePlans;

/// <summary>Where a unit stands at sea.</summary>
public sealed record StandingUnit
{
    /// <summary>The unit.</summary>
    public required SeaUnit Unit { get; init; }

    /// <summary>Row, from 1.</summary>
    public required int Row { get; init; }

    /// <summary>Place in its row, from 1.</summary>
    public required int Place { get; init; }

    /// <summary>Bearing of the unit's +y, degrees clockwise from true north.</summary>
    public required double HeadingDegrees { get; init; }

    /// <summary>Middle of its footprint about the anchor.</summary>
    public required GroundPoint Middle { get; init; }

    /// <summary>Position of the middle, to <see cref="SiteLayout.Decimals"/> decimals of a degree.</summary>
    public required GeographicPosition Position { get; init; }

    /// <summary>Corners of the footprint, counter-clockwise seen from above, to as many decimals.</summary>
    public required IReadOnlyList<GeographicPosition> Corners { get; init; }
}
