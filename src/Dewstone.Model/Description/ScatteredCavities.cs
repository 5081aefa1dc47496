using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Seeded balls scattered on faces or inside, by dart throwing (at most 10,000 throws a hollow).</summary>
public sealed record ScatteredCavities : Cavity
{
    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Least diameter.</summary>
    public required Length LeastDiameter { get; init; }

    /// <summary>Greatest diameter.</summary>
    public required Length GreatestDiameter { get; init; }

    /// <summary>Least distance between the surfaces of two hollows, and between a hollow and a tunnel or other cavity.</summary>
    public required Length Gap { get; init; }

    /// <summary>Faces they open to; none when <see cref="Inside"/>.</summary>
    public FaceSet Faces { get; init; }

    /// <summary>True when they lie inside and break no face.</summary>
    public bool Inside { get; init; }

    /// <summary>Band their centres keep to along each axis, metres, unit frame; null for the whole box.</summary>
    public Band? BandX { get; init; }

    /// <summary>As <see cref="BandX"/>, along y.</summary>
    public Band? BandY { get; init; }

    /// <summary>As <see cref="BandX"/>, along z.</summary>
    public Band? BandZ { get; init; }

    /// <summary>Seed of its random numbers.</summary>
    public required ulong Seed { get; init; }
}
