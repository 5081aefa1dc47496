using System.Numerics;
using System.Runtime.CompilerServices;

namespace Dewstone.Compute.Wetting;

/// <summary>
/// Steps a run of planes in place, from the lowest up: the potentials of three planes are kept aside, and a plane is overwritten only when
/// nobody needs its old content any more. Rows that are dry and have dry neighbours are passed over. One sweep belongs to one thread.
/// </summary>
internal sealed class PlaneSweep
{
    private readonly TransportStepper field;
    private readonly MoisturePotential law;
    private readonly bool[] wetRows;
    private readonly float[] planeLargest;
    private readonly PotentialPlane[] rolling;
    private readonly PotentialPlane before;
    private readonly PotentialPlane after;
    private readonly int lanesToSpare;
    private readonly Vector<float> lastLanes;
    private bool hasBefore;
    private bool hasAfter;

    /// <summary>A sweep without planes.</summary>
    /// <param name="field">The field it steps.</param>
    /// <param name="law">Potential of the law.</param>
    /// <param name="wetRows">Whether a row of the field holds water; index z * Ny + y.</param>
    /// <param name="planeLargest">Largest content of a plane, 1.</param>
    public PlaneSweep(TransportStepper field, MoisturePotential law, bool[] wetRows, float[] planeLargest)
    {
        (this.field, this.law, this.wetRows, this.planeLargest) = (field, law, wetRows, planeLargest);
        PotentialPlane Plane() => new(field.Nx, field.RowStride, field.Ny);
        rolling = [Plane(), Plane(), Plane()];
        (before, after) = (Plane(), Plane());
        lanesToSpare = field.Nx % Vector<float>.Count;
        lastLanes = Vector.AsVectorSingle(Vector.LessThan(Vector<int>.Indices, new Vector<int>(lanesToSpare)));
    }

    /// <summary>First plane.</summary>
    public int First { get; private set; }

    /// <summary>Plane after the last.</summary>
    public int End { get; set; }

    /// <summary>Rows that the last run stepped.</summary>
    public int RowsDone { get; private set; }

    /// <summary>Starts anew at a plane, with tight ends.</summary>
    /// <param name="first">First plane.</param>
    public void Begin(int first) => (First, hasBefore, hasAfter) = (first, false, false);

    /// <summary>Sets the potential of the plane below the first aside, which another sweep is about to overwrite.</summary>
    public void KeepBefore()
    {
        SetPlane(before, First - 1);
        hasBefore = true;
    }

    /// <summary>Sets the potential of the plane above the last aside, which another sweep is about to overwrite.</summary>
    public void KeepAfter()
    {
        SetPlane(after, End);
        hasAfter = true;
    }

    /// <summary>Steps the planes.</summary>
    /// <param name="levelRate">Step over cell edge squared along x and y, times the potential's scale, 1.</param>
    /// <param name="uprightRate">The same along z.</param>
    public void Run(float levelRate, float uprightRate)
    {
        RowsDone = 0;
        PotentialPlane below = before;
        PotentialPlane here = rolling[0];
        SetPlane(here, First);
        for (int z = First; z < End; z++)
        {
            bool isTop = z + 1 == End;
            PotentialPlane above = isTop ? after : rolling[(z + 1 - First) % 3];
            StepPlane(z, here, z > First || hasBefore ? below : null, !isTop || hasAfter ? above : null, !isTop, levelRate, uprightRate);
            (below, here) = (here, above);
        }
    }

    private void StepPlane(
        int z, PotentialPlane here, PotentialPlane? below, PotentialPlane? above, bool fillsAbove, float levelRate, float uprightRate)
    {
        Vector<float> largest = Vector<float>.Zero;
        for (int y = 0; y < field.Ny; y++)
        {
            if (fillsAbove)
            {
                SetRow(above!, y, z + 1);
            }

            int south = Math.Max(0, y - 1);
            int north = Math.Min(field.Ny - 1, y + 1);
            bool isWetBeside = here.IsWet(y) || here.IsWet(south) || here.IsWet(north);
            if (isWetBeside || (below is not null && below.IsWet(y)) || (above is not null && above.IsWet(y)))
            {
                // A wall is a neighbour that is like the cell itself.
                ref float centre = ref here.Row(y);
                ref float under = ref below is null ? ref centre : ref below.Row(y);
                ref float over = ref above is null ? ref centre : ref above.Row(y);
                int row = z * field.Ny + y;
                Vector<float> rowLargest = StepRow(
                    ref field.Content[row * field.RowStride], ref centre, ref here.Row(south), ref here.Row(north), ref under, ref over,
                    new Vector<float>(levelRate), new Vector<float>(uprightRate));
                wetRows[row] = Vector.GreaterThanAny(rowLargest, Vector<float>.Zero);
                largest = Vector.MaxNative(largest, rowLargest);
                RowsDone++;
            }
        }

        planeLargest[z] = 0f;
        for (int lane = 0; lane < Vector<float>.Count; lane++)
        {
            planeLargest[z] = Math.Max(planeLargest[z], largest[lane]);
        }
    }

    private void SetPlane(PotentialPlane target, int z)
    {
        for (int y = 0; y < field.Ny; y++)
        {
            SetRow(target, y, z);
        }
    }

    private void SetRow(PotentialPlane target, int y, int z)
    {
        int row = z * field.Ny + y;
        target.SetRow(y, field.Content.AsSpan(row * field.RowStride, field.RowStride), wetRows[row], law);
    }

    // Returns the largest new content, lane by lane. Optimised at its first call: a job is over before the runtime would have come round to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Vector<float> StepRow(
        ref float content, ref float centre, ref float south, ref float north, ref float under, ref float over, Vector<float> level,
        Vector<float> upright)
    {
        Vector<float> largest = Vector<float>.Zero;
        ref float west = ref Unsafe.Subtract(ref centre, 1);
        ref float east = ref Unsafe.Add(ref centre, 1);
        nuint i = 0;
        nuint full = (nuint)(field.Nx - lanesToSpare);
        for (; i < full; i += (nuint)Vector<float>.Count)
        {
            Vector<float> next = StepCells(
                Vector.LoadUnsafe(ref content, i), Vector.LoadUnsafe(ref centre, i), Vector.LoadUnsafe(ref west, i), Vector.LoadUnsafe(ref east, i),
                Vector.LoadUnsafe(ref south, i), Vector.LoadUnsafe(ref north, i), Vector.LoadUnsafe(ref under, i), Vector.LoadUnsafe(ref over, i),
                level, upright);
            next.StoreUnsafe(ref content, i);
            largest = Vector.MaxNative(largest, next);
        }

        if (lanesToSpare > 0)
        {
            Vector<float> next = StepCells(
                Vector.LoadUnsafe(ref content, i), Vector.LoadUnsafe(ref centre, i), Vector.LoadUnsafe(ref west, i), Vector.LoadUnsafe(ref east, i),
                Vector.LoadUnsafe(ref south, i), Vector.LoadUnsafe(ref north, i), Vector.LoadUnsafe(ref under, i), Vector.LoadUnsafe(ref over, i),
                level, upright);
            next = Vector.ConditionalSelect(lastLanes, next, Vector<float>.Zero);
            next.StoreUnsafe(ref content, i);
            largest = Vector.MaxNative(largest, next);
        }

        return largest;
    }

    // Opposite neighbours are added first, then the pairs: turning or mirroring the field in x and y changes no bit.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<float> StepCells(
        Vector<float> content, Vector<float> centre, Vector<float> west, Vector<float> east, Vector<float> south, Vector<float> north,
        Vector<float> under, Vector<float> over, Vector<float> level, Vector<float> upright)
    {
        // Doubled by multiplying: the same bits, and 2 to 5 % more cells a second (medians of five), because the adders have enough to do.
        Vector<float> inPlane = ((west + east) + (south + north)) - centre * 4f;
        Vector<float> upDown = (under + over) - centre * 2f;
        return content + (inPlane * level + upDown * upright);
    }
}
