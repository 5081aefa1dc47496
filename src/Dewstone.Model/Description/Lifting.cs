using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>How the finished unit is lifted.</summary>
public abstract record Lifting
{
    /// <summary>Angle of the sling legs from the horizontal.</summary>
    public Angle SlingAngle { get; init; } = new(60.0);

    /// <summary>Factor on the static load for hoisting, 1.</summary>
    public double DynamicFactor { get; init; } = 1.2;
}
