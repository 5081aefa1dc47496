using System.Numerics;
using System.Runtime.CompilerServices;

namespace Dewstone.Compute.Wetting;

/// <summary>
/// Steps the moisture of a box of cells in time: d theta/dt = div(D grad theta), in Kirchhoff's form, explicit Euler, walls tight.
/// </summary>
/// <remarks>
/// <para>Assumptions: no gravity, no uptake by hydration, no air pressure, a bed at rest. Gravity moved the bottom of a 74 mm ball by at most
/// 0.3 mm at a saturated conductivity of 1e-6 m/s (reference run of an independent prototype of the same model).</para>
/// <para>theta' = theta + dt/h^2 [(Phi x- + Phi x+) + (Phi y- + Phi y+) - 4 Phi] + dt/hz^2 [(Phi z- + Phi z+) - 2 Phi].
/// With dt at most 1 / (D(largest theta) (4/h^2 + 2/hz^2)) the step is monotone: no content falls below 0 or rises above the largest
/// before the step. Each cell is computed by the same operations in the same order whatever the vector width, the number of threads and
/// the orientation of the field in x and y, so all these give the same bits.</para>
/// <para>Single precision: a change below 3e-8 in a step is lost. That is nothing over the some hundred or thousand steps of a job, but do
/// not march a nearly steady field for millions of steps.</para>
/// <para>The field is stepped in place: the potentials of three planes are kept aside and a plane is overwritten only when no one needs its
/// old content any more. Rows that are dry and have dry neighbours are passed over.</para>
/// </remarks>
internal sealed class TransportStepper
{
    /// <summary>Share of the largest monotone step that is taken.</summary>
    public const double StepShare = 0.9;

    // Below this many cells a second thread costs more than it brings.
    private const int CellsWorthAThread = 60_000;

    private readonly MoisturePotential law;
    private readonly Vector<float> lastLanes;
    private readonly bool[] wetRows;
    private readonly float[] planeLargest;
    private readonly Sweep[] sweeps;
    private readonly int lanesToSpare;
    private int firstPlane;
    private int endPlane;
    private float levelRate;
    private float uprightRate;

    /// <summary>A dry box, all of it active.</summary>
    /// <param name="nx">Cells along x.</param>
    /// <param name="ny">Cells along y.</param>
    /// <param name="nz">Cells along z.</param>
    /// <param name="cellMetres">Cell edge along x and y, m.</param>
    /// <param name="cellHeightMetres">Cell edge along z, m.</param>
    /// <param name="law">Potential of the law.</param>
    /// <param name="threads">Threads to use, 1 or more.</param>
    public TransportStepper(int nx, int ny, int nz, double cellMetres, double cellHeightMetres, MoisturePotential law, int threads)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(threads, 1);
        (Nx, Ny, Nz) = (nx, ny, nz);
        this.law = law;
        int lanes = Vector<float>.Count;
        RowStride = (nx + 15) / 16 * 16;
        lanesToSpare = nx % lanes;
        lastLanes = Vector.AsVectorSingle(Vector.LessThan(Vector<int>.Indices, new Vector<int>(lanesToSpare)));
        LevelPerSecond = 1.0 / (cellMetres * cellMetres);
        UprightPerSecond = 1.0 / (cellHeightMetres * cellHeightMetres);
        Content = new float[checked(RowStride * ny * nz)];
        wetRows = new bool[ny * nz];
        planeLargest = new float[nz];
        sweeps = new Sweep[threads];
        for (int i = 0; i < threads; i++)
        {
            sweeps[i] = new Sweep(nx, RowStride, ny);
        }

        SetActive(0, nz);
    }

    /// <summary>Cells along x.</summary>
    public int Nx { get; }

    /// <summary>Cells along y.</summary>
    public int Ny { get; }

    /// <summary>Cells along z.</summary>
    public int Nz { get; }

    /// <summary>Distance between rows in <see cref="Content"/>, whole vectors; the cells past <see cref="Nx"/> stay 0.</summary>
    public int RowStride { get; }

    /// <summary>Volumetric water content, 1; index (z * Ny + y) * RowStride + x. After writing, call <see cref="Touch"/> for the row.</summary>
    public float[] Content { get; }

    /// <summary>Cell updates done so far.</summary>
    public long CellUpdates { get; private set; }

    private double LevelPerSecond { get; }

    private double UprightPerSecond { get; }

    /// <summary>Chooses the planes that exist and still move; nothing crosses their ends.</summary>
    /// <param name="first">First plane.</param>
    /// <param name="end">Plane after the last.</param>
    public void SetActive(int first, int end) => (firstPlane, endPlane) = (first, end);

    /// <summary>Says that a row was written from outside and how much the wettest of the written cells holds.</summary>
    /// <param name="y">Row.</param>
    /// <param name="z">Plane.</param>
    /// <param name="content">Largest content written, 1.</param>
    public void Touch(int y, int z, float content)
    {
        wetRows[z * Ny + y] |= content > 0f;
        planeLargest[z] = Math.Max(planeLargest[z], content);
    }

    /// <summary>The field without the padding of its rows.</summary>
    /// <returns>Volumetric water content, 1; index (z * Ny + y) * Nx + x. Shares the memory of <see cref="Content"/> when rows need no padding.</returns>
    public float[] TakeContent()
    {
        if (RowStride == Nx)
        {
            return Content;
        }

        float[] packed = new float[Nx * Ny * Nz];
        for (int row = 0; row < Ny * Nz; row++)
        {
            Content.AsSpan(row * RowStride, Nx).CopyTo(packed.AsSpan(row * Nx));
        }

        return packed;
    }

    /// <summary>Largest content among the active cells, 1.</summary>
    /// <returns>0 when all are dry.</returns>
    public float LargestContent()
    {
        float largest = 0f;
        foreach (float plane in planeLargest.AsSpan(firstPlane, endPlane - firstPlane))
        {
            largest = Math.Max(largest, plane);
        }

        return largest;
    }

    /// <summary>The step to take now, s.</summary>
    /// <returns>A monotone step; infinite when nothing moves.</returns>
    public double StableStepSeconds()
    {
        double largest = LargestContent();
        double diffusivity = largest > 0.0 ? law.Diffusivity(largest) : 0.0;
        return StepShare / (diffusivity * (4.0 * LevelPerSecond + 2.0 * UprightPerSecond));
    }

    /// <summary>Moves the water on.</summary>
    /// <param name="seconds">Length of the step, s; at most <see cref="StableStepSeconds"/> over <see cref="StepShare"/>.</param>
    public void Step(double seconds)
    {
        int planes = endPlane - firstPlane;
        if (planes <= 0)
        {
            return;
        }

        levelRate = (float)(seconds * law.Scale * LevelPerSecond);
        uprightRate = (float)(seconds * law.Scale * UprightPerSecond);
        long cells = (long)planes * Ny * Nx;
        int parts = (int)Math.Max(1, Math.Min(Math.Min(sweeps.Length, planes / 2), cells / CellsWorthAThread));
        Divide(parts);
        if (parts == 1)
        {
            RunSweep(0);
        }
        else
        {
            Parallel.For(0, parts, new ParallelOptions { MaxDegreeOfParallelism = parts }, RunSweep);
        }

        for (int i = 0; i < parts; i++)
        {
            CellUpdates += (long)sweeps[i].RowsDone * Nx;
        }
    }

    /// <summary>
    /// Cuts the active planes into runs of about equal work. Where two runs meet, the potentials of both planes are set aside first: each
    /// run overwrites its own plane while the other still needs the old one.
    /// </summary>
    private void Divide(int parts)
    {
        Sweep sweep = sweeps[0];
        (sweep.First, sweep.BeforeIsSet, sweep.AfterIsSet) = (firstPlane, false, false);
        if (parts > 1)
        {
            int allWet = wetRows.AsSpan(firstPlane * Ny, (endPlane - firstPlane) * Ny).Count(true);
            int plane = firstPlane;
            int seen = 0;
            for (int part = 1; part < parts; part++)
            {
                int latest = endPlane - (parts - part);
                for (; plane < latest && ((long)seen * parts < (long)allWet * part || plane <= sweep.First); plane++)
                {
                    seen += wetRows.AsSpan(plane * Ny, Ny).Count(true);
                }

                Sweep next = sweeps[part];
                (sweep.End, sweep.AfterIsSet) = (plane, true);
                (next.First, next.BeforeIsSet, next.AfterIsSet) = (plane, true, false);
                SetPlane(next.Before, plane - 1);
                SetPlane(sweep.After, plane);
                sweep = next;
            }
        }

        sweep.End = endPlane;
    }

    private void SetPlane(PotentialPlane target, int z)
    {
        for (int y = 0; y < Ny; y++)
        {
            SetRow(target, y, z);
        }
    }

    private void SetRow(PotentialPlane target, int y, int z)
    {
        int row = z * Ny + y;
        target.SetRow(y, Content.AsSpan(row * RowStride, RowStride), wetRows[row], law);
    }

    private void RunSweep(int part)
    {
        Sweep sweep = sweeps[part];
        sweep.RowsDone = 0;
        PotentialPlane below = sweep.Before;
        PotentialPlane here = sweep.Rolling[0];
        SetPlane(here, sweep.First);
        for (int z = sweep.First; z < sweep.End; z++)
        {
            bool isTop = z + 1 == sweep.End;
            PotentialPlane above = isTop ? sweep.After : sweep.Rolling[(z + 1 - sweep.First) % 3];
            bool hasBelow = z > sweep.First || sweep.BeforeIsSet;
            bool hasAbove = !isTop || sweep.AfterIsSet;
            Vector<float> largest = Vector<float>.Zero;
            for (int y = 0; y < Ny; y++)
            {
                if (!isTop)
                {
                    SetRow(above, y, z + 1);
                }

                int south = Math.Max(0, y - 1);
                int north = Math.Min(Ny - 1, y + 1);
                if (here.IsWet(y) || here.IsWet(south) || here.IsWet(north) || (hasBelow && below.IsWet(y)) || (hasAbove && above.IsWet(y)))
                {
                    ref float centre = ref here.Row(y);
                    ref float under = ref hasBelow ? ref below.Row(y) : ref centre;
                    ref float over = ref hasAbove ? ref above.Row(y) : ref centre;
                    int row = z * Ny + y;
                    Vector<float> rowLargest =
                        StepRow(ref Content[row * RowStride], ref centre, ref here.Row(south), ref here.Row(north), ref under, ref over);
                    wetRows[row] = Vector.GreaterThanAny(rowLargest, Vector<float>.Zero);
                    largest = Vector.MaxNative(largest, rowLargest);
                    sweep.RowsDone++;
                }
            }

            planeLargest[z] = Largest(largest);
            (below, here) = (here, above);
        }
    }

    private static float Largest(Vector<float> lanes)
    {
        float result = 0f;
        for (int lane = 0; lane < Vector<float>.Count; lane++)
        {
            result = Math.Max(result, lanes[lane]);
        }

        return result;
    }

    // Optimised at its first call: a job is over before the runtime would have got round to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private Vector<float> StepRow(ref float content, ref float centre, ref float south, ref float north, ref float under, ref float over)
    {
        Vector<float> level = new(levelRate);
        Vector<float> upright = new(uprightRate);
        Vector<float> largest = Vector<float>.Zero;
        ref float west = ref Unsafe.Subtract(ref centre, 1);
        ref float east = ref Unsafe.Add(ref centre, 1);
        nuint i = 0;
        nuint full = (nuint)(Nx - lanesToSpare);
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
        Vector<float> twice = centre + centre;
        Vector<float> inPlane = ((west + east) + (south + north)) - (twice + twice);
        Vector<float> upDown = (under + over) - twice;
        return content + (inPlane * level + upDown * upright);
    }

    /// <summary>A run of planes one thread steps, with its potentials.</summary>
    private sealed class Sweep(int cells, int stride, int rows)
    {
        public PotentialPlane[] Rolling { get; } = [new(cells, stride, rows), new(cells, stride, rows), new(cells, stride, rows)];

        public PotentialPlane Before { get; } = new(cells, stride, rows);

        public PotentialPlane After { get; } = new(cells, stride, rows);

        public int First { get; set; }

        public int End { get; set; }

        public bool BeforeIsSet { get; set; }

        public bool AfterIsSet { get; set; }

        public int RowsDone { get; set; }
    }
}
