namespace Dewstone.Model.Description;

/// <summary>A hollow of one simple form; may be closed, may open to a face.</summary>
public sealed record FormedCavity : Cavity
{
    /// <summary>Its form.</summary>
    public required SolidForm Form { get; init; }
}
