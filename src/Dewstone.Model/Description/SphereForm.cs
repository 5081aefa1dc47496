using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>A ball.</summary>
public sealed record SphereForm : SolidForm
{
    /// <summary>Diameter.</summary>
    public required Length Diameter { get; init; }
}
