namespace Dewstone.Model.Description;

/// <summary>A zone of the body that openings do not cut.</summary>
public sealed record KeepZone
{
    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>Its form.</summary>
    public required SolidForm Form { get; init; }
}
