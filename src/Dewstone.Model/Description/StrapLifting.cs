namespace Dewstone.Model.Description;

/// <summary>Lifted by straps around the unit.</summary>
public sealed record StrapLifting : Lifting
{
    /// <summary>The straps.</summary>
    public required IReadOnlyList<StrapLine> Lines { get; init; }
}
