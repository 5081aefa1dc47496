using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Habitat;

/// <summary>Where a ball can get to from outside, through the water around a solid on the seabed.</summary>
/// <remarks>
/// The ball's centre moves where the distance to the surface is at least its radius, between cells that share a face and from the sides and top of the field; what it reaches is
/// everything within its radius of where its centre can be. Both surfaces lie between the cells (<see cref="SurfaceDistance"/>), so neither step rounds to whole cells. In a square tunnel
/// hardly wider than the ball the corners of where its centre can be are cut: a tenth of the volume is missed at four cells a ball, a twentieth at eight, falling with the cell.
/// </remarks>
internal sealed class BallReach
{
    private const float Excluded = -1f;

    private readonly WaterField field;
    private readonly Parallelism parallelism;

    /// <summary>Prepares a field.</summary>
    /// <param name="field">The field; its margin must hold the largest ball's radius.</param>
    /// <param name="largestMetres">Largest diameter asked, m.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="onSeabed">Whether the seabed stops the ball; else the solid alone does.</param>
    public BallReach(WaterField field, double largestMetres, Parallelism parallelism, bool onSeabed = true)
    {
        (this.field, this.parallelism) = (field, parallelism);
        Edge = field.Size.HalfMeanEdge * 2.0;
        Clearances = SurfaceDistance.Of(
            onSeabed ? field.OnSeabed() : field.Values, field.Shape, field.Size, WaterField.Level, 0.5 * largestMetres + 2.0 * Edge, parallelism);
    }

    /// <summary>Distance of each cell to the surface, negative in solid and seabed, m.</summary>
    public float[] Clearances { get; }

    /// <summary>Mean edge of a cell, m.</summary>
    public double Edge { get; }

    /// <summary>How far each cell lies from where the ball's centre can be, less its radius: below 0 where the ball reaches, m.</summary>
    /// <param name="diameterMetres">The ball, m.</param>
    /// <param name="threads">Threads; no result depends on them.</param>
    /// <param name="tellMetres">Greatest distance told beyond what the ball reaches, m; never less than two cells.</param>
    /// <returns>Index order of the field.</returns>
    public float[] Of(double diameterMetres, Parallelism threads, double tellMetres = 0.0)
    {
        float radius = (float)(0.5 * diameterMetres);
        GridShape shape = field.Shape;
        byte[] fits = new byte[Clearances.Length];
        float[] room = new float[Clearances.Length];
        for (int i = 0; i < fits.Length; i++)
        {
            room[i] = Clearances[i] - radius;
            fits[i] = room[i] >= 0f ? (byte)1 : (byte)0;
        }

        ComponentMap regions = Components.Label(fits, shape, Phase.Set, Connectivity.Faces, threads);
        bool[] isInner = [.. regions.Pieces.Select(piece => !piece.Box.TouchesEdge(shape))];
        for (int i = 0; i < room.Length; i++)
        {
            if (fits[i] != 0 && isInner[regions.Labels[i] - 1])
            {
                room[i] = Excluded;
            }
        }

        float[] distances = SurfaceDistance.Of(room, shape, field.Size, 0f, radius + Math.Max(tellMetres, 2.0 * Edge), threads);
        for (int i = 0; i < distances.Length; i++)
        {
            distances[i] -= radius;
        }

        return distances;
    }

    /// <summary>Volume within the unit's box that the ball reaches.</summary>
    /// <param name="reach">As <see cref="Of"/> gives it.</param>
    /// <returns>m3.</returns>
    public double CubicMetres(float[] reach)
    {
        float[] shares = new float[reach.Length];
        for (int i = 0; i < shares.Length; i++)
        {
            shares[i] = Share(Math.Min(-reach[i], Clearances[i]));
        }

        return field.CubicMetres(shares);
    }

    /// <summary>Water within the unit's box.</summary>
    /// <returns>m3.</returns>
    public double VoidCubicMetres() => field.CubicMetres(Array.ConvertAll(Clearances, Share));

    private float Share(float inside) => Math.Clamp(0.5f + inside / (float)Edge, 0f, 1f);
}
