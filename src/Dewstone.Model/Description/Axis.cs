namespace Dewstone.Model.Description;

/// <summary>An axis of the unit frame.</summary>
public enum Axis
{
    /// <summary>The x axis.</summary>
    X,

    /// <summary>The y axis.</summary>
    Y,

    /// <summary>The z axis, up.</summary>
    Z,
}
