using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Seeded smooth bumpiness that removes 0 to its amplitude from the named faces.</summary>
public sealed record Relief
{
    /// <summary>Largest depth removed.</summary>
    public required Length Amplitude { get; init; }

    /// <summary>Shortest wavelength.</summary>
    public required Length ShortestLength { get; init; }

    /// <summary>Longest wavelength; at least the shortest.</summary>
    public required Length LongestLength { get; init; }

    /// <summary>Faces it works on.</summary>
    public required FaceSet Faces { get; init; }

    /// <summary>Seed of its random numbers.</summary>
    public required ulong Seed { get; init; }
}
