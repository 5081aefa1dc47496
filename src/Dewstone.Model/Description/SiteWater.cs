using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Water at a site.</summary>
public sealed record SiteWater
{
    /// <summary>Depth at the datum.</summary>
    public required Length Depth { get; init; }

    /// <summary>Name of the datum.</summary>
    public string Datum { get; init; } = "chart";

    /// <summary>Low water against the datum.</summary>
    public Length Low { get; init; }

    /// <summary>High water against the datum.</summary>
    public Length High { get; init; }

    /// <summary>Practical salinity, 1.</summary>
    public double Salinity { get; init; } = 35.0;

    /// <summary>Water temperature.</summary>
    public Temperature Temperature { get; init; } = new(10.0);
}
