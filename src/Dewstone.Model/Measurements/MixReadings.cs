namespace Dewstone.Model.Measurements;

/// <summary>One file of measurements of a mix; of one kind, the others are empty.</summary>
public sealed record MixReadings
{
    /// <summary>The file, as shown in findings.</summary>
    public required string File { get; init; }

    /// <summary>Absorption against time.</summary>
    public IReadOnlyList<AbsorptionReading> Absorption { get; init; } = [];

    /// <summary>Test balls.</summary>
    public IReadOnlyList<BallReading> Balls { get; init; } = [];

    /// <summary>Merged pairs.</summary>
    public IReadOnlyList<PairReading> Pairs { get; init; } = [];

    /// <summary>Loose density by container.</summary>
    public IReadOnlyList<DensityReading> Densities { get; init; } = [];
}
