using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>What one needle can do.</summary>
public sealed record Needle
{
    /// <summary>Depth of the tip below the top of the layer.</summary>
    public required Length TipDepth { get; init; }

    /// <summary>Flow while dosing.</summary>
    public required FlowRate Flow { get; init; }

    /// <summary>Least dose.</summary>
    public required Volume Least { get; init; }

    /// <summary>Greatest dose.</summary>
    public required Volume Most { get; init; }

    /// <summary>Pump step.</summary>
    public required Volume Step { get; init; }

    /// <summary>Repeatability of a dose, one standard deviation as a share, 1.</summary>
    public double Repeatability { get; init; }

    /// <summary>Drift to be expected between checks, share, 1.</summary>
    public double Drift { get; init; }
}
