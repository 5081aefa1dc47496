using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>The seabed.</summary>
public sealed record SeabedSoil
{
    /// <summary>Kind of soil.</summary>
    public required SoilKind Soil { get; init; }

    /// <summary>Friction coefficient between unit and seabed, 1.</summary>
    public required double Friction { get; init; }

    /// <summary>Angle of internal friction; null on clay.</summary>
    public Angle? FrictionAngle { get; init; }

    /// <summary>Undrained shear strength; null on sand.</summary>
    public Pressure? UndrainedStrength { get; init; }

    /// <summary>Stiffness (Young's modulus) under slow load; null when not said.</summary>
    public Pressure? Stiffness { get; init; }

    /// <summary>Effective (submerged) unit weight.</summary>
    public required UnitWeight EffectiveWeight { get; init; }

    /// <summary>Median grain size; null when not said.</summary>
    public Length? Grain { get; init; }

    /// <summary>By which method sand is judged.</summary>
    public BearingMethod Method { get; init; }

    /// <summary>Slope from the horizontal.</summary>
    public Angle Slope { get; init; }
}
