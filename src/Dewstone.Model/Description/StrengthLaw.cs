namespace Dewstone.Model.Description;

/// <summary>How compressive strength follows from water, air and age.</summary>
public sealed record StrengthLaw
{
    /// <summary>Which rule; measured cubes override all others.</summary>
    public StrengthRule Rule { get; init; } = StrengthRule.GelSpaceWithAir;

    /// <summary>Cement class for the age factor: S, N or R.</summary>
    public string CementClass { get; init; } = "N";

    /// <summary>Whether the bed is compacted so that next to no air stays: only then rules without air hold.</summary>
    public bool Compacted { get; init; }

    /// <summary>Cubes cut from the same bed.</summary>
    public IReadOnlyList<MeasuredStrength> Measured { get; init; } = [];
}
