using System.Numerics;
using System.Runtime.CompilerServices;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// A body given by a level field, ready to be looked at. Points are in horizontal cell edges from the grid's lower corner, as the camera has them;
/// z is scaled to cells within.
/// </summary>
internal sealed class Body
{
    // Cells between two looks at the level near the body; its features are never thinner than a few cells.
    private const float Step = 0.9f;

    private static readonly Vector3[] Corners = [new(1f, 1f, 1f), new(1f, -1f, -1f), new(-1f, 1f, -1f), new(-1f, -1f, 1f)];

    private readonly float[] level;
    private readonly CellGrid grid;
    private readonly Bricks bricks;
    private readonly AmbientShade shade;
    private readonly Vector3 toCells;
    private readonly Vector3 last;
    private readonly Vector3 beyond;

    /// <summary>A body.</summary>
    /// <param name="level">Level field, positive inside; index order of the grid.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    public Body(float[] level, CellGrid grid, Parallelism parallelism)
    {
        this.level = level;
        this.grid = grid;
        bricks = Bricks.Of(level, grid, parallelism);
        toCells = new Vector3(1f, 1f, (float)(grid.CellMetres / grid.CellHeightMetres));
        last = new Vector3(grid.Nx - 1.001f, grid.Ny - 1.001f, grid.Nz - 1.001f);
        beyond = new Vector3(grid.Nx - 0.5f, grid.Ny - 0.5f, grid.Nz - 0.5f);
        shade = new AmbientShade(bricks);
    }

    /// <summary>The cells.</summary>
    public CellGrid Grid => grid;

    /// <summary>Level field, positive inside; index order of the grid.</summary>
    public float[] Level => level;

    /// <summary>Lowest height at which there is any of the body, cells; the grid's floor when there is none.</summary>
    /// <returns>The height.</returns>
    public float Foot()
    {
        int plane = grid.Nx * grid.Ny;
        int z = 0;
        while (z < grid.Nz - 1 && !level.AsSpan(z * plane, plane).ContainsAnyInRange(float.Epsilon, float.MaxValue))
        {
            z++;
        }

        return z / toCells.Z;
    }

    /// <summary>Level at a point, interpolated between the eight nearest cell centres.</summary>
    /// <param name="point">The point.</param>
    /// <returns>The level; outside the outermost cell centres that of the nearest place inside.</returns>
    public float At(Vector3 point) => Sample(Vector3.Clamp(point * toCells - new Vector3(0.5f), Vector3.Zero, last));

    /// <summary>Outward normal of the surface through a point; on the top of the bed, up.</summary>
    /// <param name="point">The point.</param>
    /// <returns>Length 1.</returns>
    // Compiled in full at once: a job is drawn once, and would be over before the runtime got round to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public Vector3 Normal(Vector3 point)
    {
        if (point.Z * toCells.Z > grid.Nz - 0.01f)
        {
            return Vector3.UnitZ;
        }

        // Four corners of a tetrahedron give the slope of a straight field as well as six axis points do.
        const float Reach = 0.8f;
        Vector3 slope = Vector3.Zero;
        foreach (Vector3 corner in Corners)
        {
            slope -= At(point + Reach * corner) * corner;
        }

        float length = slope.Length();
        return length > 1e-9f ? slope / length : Vector3.UnitZ;
    }

    /// <summary>Openness of a place to the sky.</summary>
    /// <param name="point">The place.</param>
    /// <param name="normal">Outward, length 1.</param>
    /// <returns>1 in the open, towards 0 in a hole.</returns>
    public float Open(Vector3 point, Vector3 normal) => shade.Open(point * toCells - new Vector3(0.5f), normal);

    /// <summary>Whether the sun reaches a place on the surface.</summary>
    /// <param name="point">The place.</param>
    /// <param name="normal">Outward, length 1.</param>
    /// <param name="sun">Towards the sun, length 1.</param>
    /// <returns>1 or 0; 0 too where the surface looks away.</returns>
    public float Sunlit(Vector3 point, Vector3 normal, Vector3 sun) =>
        Vector3.Dot(normal, sun) > 0f && float.IsPositiveInfinity(Meet(point + 1.5f * normal, sun, 0f, float.PositiveInfinity)) ? 1f : 0f;

    /// <summary>Follows a sight line until it meets the body.</summary>
    /// <param name="from">A point of the line.</param>
    /// <param name="direction">Its direction, length 1.</param>
    /// <param name="start">Where to begin, cells from <paramref name="from"/>; ahead of it nothing counts.</param>
    /// <param name="end">Where to stop at the latest.</param>
    /// <returns>Distance to the body; <paramref name="start"/> or the entry into the grid when it begins inside the body; infinite when it is not met.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public float Meet(Vector3 from, Vector3 direction, float start, float end)
    {
        Vector3 origin = from * toCells - new Vector3(0.5f), way = direction * toCells;
        Vector3 inverse = new(Inverse(way.X), Inverse(way.Y), Inverse(way.Z));
        // The bed reaches half a cell beyond the outermost cell centres; there it is as in them.
        Vector3 nearer = (new Vector3(-0.5f) - origin) * inverse, farther = (beyond - origin) * inverse;
        Vector3 enters = Vector3.Min(nearer, farther), leaves = Vector3.Max(nearer, farther);
        float t = Math.Max(start, Math.Max(enters.X, Math.Max(enters.Y, enters.Z)));
        float stop = Math.Min(end, Math.Min(leaves.X, Math.Min(leaves.Y, leaves.Z)));
        float before = t, valueBefore = 0f;
        while (t <= stop)
        {
            Vector3 p = Vector3.Clamp(origin + t * way, Vector3.Zero, last);
            int bx = (int)p.X >> 2, by = (int)p.Y >> 2, bz = (int)p.Z >> 2;
            int free = bricks.Distance[(bz * bricks.Ny + by) * bricks.Nx + bx];
            if (free > 0)
            {
                float leap = Math.Min(Exit(origin.X, inverse.X, bx, free), Math.Min(Exit(origin.Y, inverse.Y, by, free), Exit(origin.Z, inverse.Z, bz, free)));
                t = Math.Max(leap, t) + 0.02f;
                before = t;
                valueBefore = 0f;
                continue;
            }

            float value = Sample(p);
            if (value > 0f)
            {
                return valueBefore < 0f ? Crossing(origin, way, before, valueBefore, t, value) : t;
            }

            before = t;
            valueBefore = value;
            // The last look is at the very end, so that bodies followed piece by piece have no gaps between the pieces.
            t = t < stop ? Math.Min(t + Step, stop) : float.PositiveInfinity;
        }

        return float.PositiveInfinity;
    }

    private static float Inverse(float component) => 1f / (MathF.Abs(component) < 1e-7f ? 1e-7f : component);

    // Where the line leaves the block of empty bricks around brick b along one axis.
    private static float Exit(float origin, float inverse, int b, int free)
    {
        int bound = inverse > 0f ? (b + free) * Bricks.Side : (b - free + 1) * Bricks.Side;
        return (bound - origin) * inverse;
    }

    // Two false positions: the level is nearly straight where it crosses 0.
    private float Crossing(Vector3 origin, Vector3 way, float outside, float valueOutside, float inside, float valueInside)
    {
        float t = outside + (inside - outside) * valueOutside / (valueOutside - valueInside);
        float value = Sample(Vector3.Clamp(origin + t * way, Vector3.Zero, last));
        return value > 0f
            ? outside + (t - outside) * valueOutside / (valueOutside - value)
            : t + (inside - t) * value / (value - valueInside);
    }

    private float Sample(Vector3 p)
    {
        int x = (int)p.X, y = (int)p.Y, z = (int)p.Z;
        float tx = p.X - x, ty = p.Y - y, tz = p.Z - z;
        int nx = grid.Nx, plane = nx * grid.Ny, at = z * plane + y * nx + x;
        float[] f = level;
        float low = Row(f, at, nx, tx, ty), high = Row(f, at + plane, nx, tx, ty);
        return low + tz * (high - low);
    }

    private static float Row(float[] f, int at, int nx, float tx, float ty)
    {
        float near = f[at] + tx * (f[at + 1] - f[at]);
        float far = f[at + nx] + tx * (f[at + nx + 1] - f[at + nx]);
        return near + ty * (far - near);
    }
}
