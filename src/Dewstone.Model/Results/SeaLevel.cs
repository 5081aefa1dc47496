namespace Dewstone.Model.Results;

/// <summary>The design wave at one level of the water.</summary>
public sealed record SeaLevel
{
    /// <summary>Name: low or high.</summary>
    public required string Name { get; init; }

    /// <summary>Depth, m.</summary>
    public required double DepthMetres { get; init; }

    /// <summary>Water over the unit, m; below 0 when it stands out.</summary>
    public required double CoverMetres { get; init; }

    /// <summary>Height by the site's rule, m.</summary>
    public required double AskedMetres { get; init; }

    /// <summary>Height the depth bears, m.</summary>
    public required double DepthLimitMetres { get; init; }

    /// <summary>Height by steepness, m.</summary>
    public required double SteepnessLimitMetres { get; init; }

    /// <summary>Height by Goda, for comparison, m.</summary>
    public required double GodaLimitMetres { get; init; }

    /// <summary>Height used, m: asked, but not above the depth's or steepness's limit.</summary>
    public double HeightMetres => Math.Min(AskedMetres, Math.Min(DepthLimitMetres, SteepnessLimitMetres));

    /// <summary>Whether the waves asked for break here.</summary>
    public bool Breaks => HeightMetres < AskedMetres;

    /// <summary>Wave length, m.</summary>
    public required double LengthMetres { get; init; }

    /// <summary>Greatest speed of the wave at the unit's top (at the surface when it stands out), m/s.</summary>
    public required double SpeedMetresPerSecond { get; init; }

    /// <summary>Greatest acceleration there, m/s2.</summary>
    public required double AccelerationMetresPerSecondSquared { get; init; }

    /// <summary>Share of the waves' height that a row of such units lets pass, 0.075 to 0.80.</summary>
    public required double Transmission { get; init; }

    /// <summary>Whether that formula was measured for such a freeboard.</summary>
    public required bool TransmissionInRange { get; init; }
}
