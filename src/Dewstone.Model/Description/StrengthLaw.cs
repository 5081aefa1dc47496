namespace Dewstone.Model.Description;

/// <summary>How compressive strength follows from water, air and age.</summary>
public sealed record StrengthLaw
{
    /// <summary>True for gel/space ratio with the air left in the bed; false when measured cubes decide.</summary>
    public bool GelSpaceWithAir { get; init; }

    /// <summary>Cement class for the age factor: S, N or R.</summary>
    public string CementClass { get; init; } = "N";

    /// <summary>Cubes cut from the same bed.</summary>
    public IReadOnlyList<MeasuredStrength> Measured { get; init; } = [];
}
