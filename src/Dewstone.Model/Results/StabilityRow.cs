namespace Dewstone.Model.Results;

/// <summary>Forces and factors of safety of one heading, water level and phase; enough to work them out again by hand.</summary>
public sealed record StabilityRow
{
    /// <summary>Bearing of the unit's +y, degrees.</summary>
    public required double HeadingDegrees { get; init; }

    /// <summary>Phase after the crest, degrees.</summary>
    public required double PhaseDegrees { get; init; }

    /// <summary>Speed of the wave, along its way, m/s.</summary>
    public required double WaveSpeed { get; init; }

    /// <summary>Acceleration of the wave, along its way, m/s2.</summary>
    public required double WaveAcceleration { get; init; }

    /// <summary>Speed of wave and current together, m/s.</summary>
    public required double FlowSpeed { get; init; }

    /// <summary>Bearing it goes to, degrees.</summary>
    public required double FlowDegrees { get; init; }

    /// <summary>Area of the unit that it meets, m2.</summary>
    public required double SquareMetres { get; init; }

    /// <summary>Drag along the flow, N.</summary>
    public required double DragNewtons { get; init; }

    /// <summary>Height of the drag above the seabed, m.</summary>
    public required double DragHeightMetres { get; init; }

    /// <summary>Inertia along the wave's way, N.</summary>
    public required double InertiaNewtons { get; init; }

    /// <summary>Lift, N.</summary>
    public required double LiftNewtons { get; init; }

    /// <summary>Drag and inertia together, N.</summary>
    public required double HorizontalNewtons { get; init; }

    /// <summary>Weight under water, N.</summary>
    public required double SubmergedNewtons { get; init; }

    /// <summary>Against sliding, 1.</summary>
    public required double Sliding { get; init; }

    /// <summary>Bearing of the normal of the edge it would turn over, degrees, clockwise from true north.</summary>
    public required double EdgeDegrees { get; init; }

    /// <summary>From that edge to the weight, m.</summary>
    public required double WeightArmMetres { get; init; }

    /// <summary>From that edge to the lift, m.</summary>
    public required double LiftArmMetres { get; init; }

    /// <summary>Against overturning, 1.</summary>
    public required double Overturning { get; init; }
}
