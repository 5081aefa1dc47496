using Dewstone.Model.Description;
using Dewstone.Model.Measurements;

namespace Dewstone.Compute.Calibration;

/// <summary>What to calibrate a mix with.</summary>
public sealed record MixQuestion
{
    /// <summary>The mix to begin from: its solids, liquid, law and window hold, and its figures where the data tell none.</summary>
    public required DryMix Mix { get; init; }

    /// <summary>Tables of measurements.</summary>
    public required IReadOnlyList<MixReadings> Data { get; init; }

    /// <summary>Exponents to try, 1 to 12 each; empty for the mix's own.</summary>
    public IReadOnlyList<int> Exponents { get; init; } = [];

    /// <summary>What the new mix says after <c>from: calibration</c>: files and hashes.</summary>
    public required string Reference { get; init; }
}
