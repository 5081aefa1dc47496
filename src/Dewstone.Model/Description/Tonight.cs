using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>What was measured on the night; null members were not measured.</summary>
public sealed record Tonight
{
    /// <summary>Label of the mix batch; empty when not given.</summary>
    public string MixBatch { get; init; } = "";

    /// <summary>Density of the bed as spread tonight.</summary>
    public Density? LooseDensity { get; init; }

    /// <summary>Temperature of the bed.</summary>
    public Temperature? BedTemperature { get; init; }

    /// <summary>Temperature of the liquid.</summary>
    public Temperature? LiquidTemperature { get; init; }

    /// <summary>Temperature while curing.</summary>
    public Temperature? CuringTemperature { get; init; }
}
