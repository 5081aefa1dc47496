using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A simple body placed in the unit frame.</summary>
public abstract record SolidForm
{
    /// <summary>Centre, metres, unit frame.</summary>
    public required Point3 Centre { get; init; }
}
