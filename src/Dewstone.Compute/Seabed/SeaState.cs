namespace Dewstone.Compute.Seabed;

/// <summary>The moving water at the unit.</summary>
public sealed record SeaState
{
    /// <summary>Density, kg/m3.</summary>
    public required double WaterDensity { get; init; }

    /// <summary>Greatest speed of the wave, m/s.</summary>
    public required double WaveSpeed { get; init; }

    /// <summary>Greatest acceleration of the wave, m/s2.</summary>
    public required double WaveAcceleration { get; init; }

    /// <summary>Bearing the wave goes to, degrees.</summary>
    public required double WaveTowards { get; init; }

    /// <summary>Speed of the current, m/s.</summary>
    public double CurrentSpeed { get; init; }

    /// <summary>Bearing the current goes to, degrees.</summary>
    public double CurrentTowards { get; init; }
}
