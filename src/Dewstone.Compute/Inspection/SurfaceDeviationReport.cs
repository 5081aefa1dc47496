namespace Dewstone.Compute.Inspection;

/// <summary>How far the hardened surface lies from the wanted one. Lengths in metres.</summary>
public sealed record SurfaceDeviationReport
{
    /// <summary>Mean of the distances from each surface to the other, weighted by area, metres; enclosed dry pockets left out. 0 when there is no surface.</summary>
    public required double MeanMetres { get; init; }

    /// <summary>The distance that 95 % of both surfaces' area keep below, metres; enclosed dry pockets left out.</summary>
    public required double Percentile95Metres { get; init; }

    /// <summary>Mean of the same distances with a sign, metres: above 0 where too much hardened.</summary>
    public required double SignedMeanMetres { get; init; }

    /// <summary>Share of the wanted solid deeper than <see cref="SurfaceDeviation.DeepMetres"/> that did not harden, 0 to 1.</summary>
    public required double DeepUnsetShare { get; init; }

    /// <summary>Area of the walls of dry pockets that the hardened solid encloses where solid was wanted, square metres.</summary>
    public required double PocketSquareMetres { get; init; }

    /// <summary>Volume inside the hardened surface, cubic metres.</summary>
    public required double HardenedCubicMetres { get; init; }

    /// <summary>Volume inside the wanted surface, cubic metres.</summary>
    public required double TargetCubicMetres { get; init; }
}
