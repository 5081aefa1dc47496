using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
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

    // A level as low as this is that of all eight cells around, which are then a cell or more away from the body: twice the step does not lead past it.
    private const float Outermost = -0.999f;

    private readonly sbyte[] level;
    private readonly SampledField field;
    private readonly CellGrid grid;
    private readonly Bricks bricks;
    private readonly AmbientShade shade;
    private readonly Vector3 toCells;
    private readonly Vector128<float> last;
    private readonly Vector128<float> beyond;

    /// <summary>A body.</summary>
    /// <param name="level">Level field in steps, positive inside; index order of the grid.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    public Body(sbyte[] level, CellGrid grid, Parallelism parallelism)
    {
        this.level = level;
        this.grid = grid;
        bricks = Bricks.Of(level, grid, parallelism);
        field = new SampledField(level, grid.Nx, grid.Ny, grid.Nz);
        toCells = new Vector3(1f, 1f, (float)(grid.CellMetres / grid.CellHeightMetres));
        last = new Vector3(grid.Nx - 1.001f, grid.Ny - 1.001f, grid.Nz - 1.001f).AsVector128();
        beyond = new Vector3(grid.Nx - 0.5f, grid.Ny - 0.5f, grid.Nz - 0.5f).AsVector128();
        shade = new AmbientShade(bricks);
    }

    /// <summary>The cells.</summary>
    public CellGrid Grid => grid;

    /// <summary>Level field in steps, positive inside; index order of the grid.</summary>
    public sbyte[] Level => level;

    /// <summary>Lowest height at which there is any of the body, cells; the grid's floor when there is none.</summary>
    /// <returns>The height.</returns>
    public float Foot()
    {
        int plane = grid.Nx * grid.Ny;
        int z = 0;
        while (z < grid.Nz - 1 && !level.AsSpan(z * plane, plane).ContainsAnyInRange((sbyte)1, sbyte.MaxValue))
        {
            z++;
        }

        return z / toCells.Z;
    }

    /// <summary>How far sight lines of a camera may go before they can meet the body.</summary>
    /// <param name="camera">The camera.</param>
    /// <param name="foot">What of the body lies below this height does not count, cells.</param>
    /// <param name="top">Nor what lies above this.</param>
    /// <returns>The distances.</returns>
    public Approach From(ViewCamera camera, float foot = float.NegativeInfinity, float top = float.PositiveInfinity) =>
        new(bricks, Bricks.Side / toCells.Z, camera, foot, top);

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
        Vector128<float> middle = (point * toCells - new Vector3(0.5f)).AsVector128(), reach = (Reach * toCells).AsVector128();
        float all = field.At(middle + reach), east = field.At(middle + reach * Vector128.Create(1f, -1f, -1f, 0f));
        float north = field.At(middle + reach * Vector128.Create(-1f, 1f, -1f, 0f)), up = field.At(middle + reach * Vector128.Create(-1f, -1f, 1f, 0f));
        Vector3 slope = new(north + up - all - east, east + up - all - north, east + north - all - up);
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
        Vector128<float> origin = (from * toCells - new Vector3(0.5f)).AsVector128(), way = (direction * toCells).AsVector128();
        Vector128<float> tiny = Vector128.Create(1e-7f);
        Vector128<float> inverse = Vector128<float>.One / Vector128.ConditionalSelect(Vector128.LessThan(Vector128.Abs(way), tiny), tiny, way);
        Vector128<int> forward = Vector128.GreaterThan(inverse, Vector128<float>.Zero).AsInt32();
        // The bed reaches half a cell beyond the outermost cell centres; there it is as in them.
        Vector128<float> nearer = (Vector128.Create(-0.5f) - origin) * inverse, farther = (beyond - origin) * inverse;
        float t = Math.Max(start, Largest(Vector128.MinNative(nearer, farther)));
        float stop = Math.Min(end, Least(Vector128.MaxNative(nearer, farther)));
        float before = t, valueBefore = 0f;
        while (t <= stop)
        {
            Vector128<float> p = Vector128.MinNative(Vector128.MaxNative(origin + t * way, Vector128<float>.Zero), last);
            Vector128<int> brick = Vector128.ConvertToInt32Native(p) >> 2;
            int free = bricks.Distance[(brick[2] * bricks.Ny + brick[1]) * bricks.Nx + brick[0]];
            if (free > 0)
            {
                // Where the line leaves the block of empty bricks around this one.
                Vector128<int> bound = brick + Vector128.ConditionalSelect(forward, Vector128.Create(free), Vector128.Create(1 - free));
                t = Math.Max(Least((Vector128.ConvertToSingle(bound << 2) - origin) * inverse), t) + 0.02f;
                before = t;
                valueBefore = 0f;
                continue;
            }

            float value = field.At(p);
            if (value > 0f)
            {
                return valueBefore < 0f ? Crossing(origin, way, before, valueBefore, t, value) : t;
            }

            before = t;
            valueBefore = value;
            // The last look is at the very end, so that bodies followed piece by piece have no gaps between the pieces.
            t = t < stop ? Math.Min(value > Outermost ? t + Step : t + 2f * Step, stop) : float.PositiveInfinity;
        }

        return float.PositiveInfinity;
    }

    private static float Largest(Vector128<float> three) => Math.Max(three[0], Math.Max(three[1], three[2]));

    private static float Least(Vector128<float> three) => Math.Min(three[0], Math.Min(three[1], three[2]));

    // False positions, of which two are enough where the level is nearly straight, and a third after a long step.
    private float Crossing(Vector128<float> origin, Vector128<float> way, float outside, float valueOutside, float inside, float valueInside)
    {
        for (int halved = valueOutside > Outermost ? 1 : 0; halved < 2; halved++)
        {
            float t = outside + (inside - outside) * valueOutside / (valueOutside - valueInside), value = field.At(origin + t * way);
            (outside, valueOutside, inside, valueInside) = value > 0f ? (outside, valueOutside, t, value) : (t, value, inside, valueInside);
        }

        return outside + (inside - outside) * valueOutside / (valueOutside - valueInside);
    }
}
