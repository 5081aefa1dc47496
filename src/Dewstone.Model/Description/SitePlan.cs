using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Layout of an order's units at sea.</summary>
public sealed record SitePlan
{
    /// <summary>Latitude of the anchor point, degrees, north positive.</summary>
    public required double AnchorLatitudeDegrees { get; init; }

    /// <summary>Longitude of the anchor point, degrees, east positive.</summary>
    public required double AnchorLongitudeDegrees { get; init; }

    /// <summary>Bearing of the rows, clockwise from true north.</summary>
    public Angle Heading { get; init; }

    /// <summary>Clear distance between units.</summary>
    public required Length Spacing { get; init; }

    /// <summary>Number of rows.</summary>
    public required int Rows { get; init; }
}
