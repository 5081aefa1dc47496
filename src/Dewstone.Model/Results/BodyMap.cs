namespace Dewstone.Model.Results;

/// <summary>The main hardened piece in coarse bricks, for drawing. Index order (z Ny + y) Nx + x, x east, y north, z up; lower corner and edges in the unit frame.</summary>
public sealed record BodyMap
{
    /// <summary>Bricks along x.</summary>
    public required int Nx { get; init; }

    /// <summary>Bricks along y.</summary>
    public required int Ny { get; init; }

    /// <summary>Bricks along z.</summary>
    public required int Nz { get; init; }

    /// <summary>Lower corner, metres, unit frame.</summary>
    public required Quantities.Point3 Corner { get; init; }

    /// <summary>Edges of a brick, metres, unit frame.</summary>
    public required Quantities.Size3 Edges { get; init; }

    /// <summary>Share of a brick that is hardened, 0 to 1.</summary>
    public required float[] Filled { get; init; }

    /// <summary>Mean strength at 28 days of what is hardened in it, Pa.</summary>
    public required float[] Pascals { get; init; }

    /// <summary>Principal tension over cracking stress at 28 days when lifted, or on the worse pair of edges where no lifting is said, 1; empty when not computed.</summary>
    public float[] Use { get; init; } = [];
}
