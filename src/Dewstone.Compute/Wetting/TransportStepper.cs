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
/// </remarks>
internal sealed class TransportStepper
{
    /// <summary>Share of the largest monotone step that is taken.</summary>
    public const double StepShare = 0.9;

    // Below this many cells a second thread costs more than it brings.
    private const int CellsWorthAThread = 60_000;

    private readonly MoisturePotential law;
    private readonly bool[] wetRows;
    private readonly float[] planeLargest;
    private readonly PlaneSweep[] sweeps;
    private int firstPlane;
    private int endPlane;

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
        RowStride = (nx + 15) / 16 * 16;
        LevelPerSecond = 1.0 / (cellMetres * cellMetres);
        UprightPerSecond = 1.0 / (cellHeightMetres * cellHeightMetres);
        Content = new float[checked(RowStride * ny * nz)];
        wetRows = new bool[ny * nz];
        planeLargest = new float[nz];
        sweeps = new PlaneSweep[threads];
        for (int i = 0; i < threads; i++)
        {
            sweeps[i] = new PlaneSweep(this, law, wetRows, planeLargest);
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

    /// <summary>First plane that exists and still moves, and the plane after the last.</summary>
    public (int First, int End) Active => (firstPlane, endPlane);

    /// <summary>Mix that has set between cells that still move; null for none.</summary>
    public SetMix? Walls { get; set; }

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

        float levelRate = (float)(seconds * law.Scale * LevelPerSecond);
        float uprightRate = (float)(seconds * law.Scale * UprightPerSecond);
        long cells = (long)planes * Ny * Nx;
        int parts = (int)Math.Max(1, Math.Min(Math.Min(sweeps.Length, planes / 2), cells / CellsWorthAThread));
        Walls?.BeforeStep();
        Divide(parts);
        if (parts == 1)
        {
            sweeps[0].Run(levelRate, uprightRate);
        }
        else
        {
            Parallel.For(0, parts, new ParallelOptions { MaxDegreeOfParallelism = parts }, i => sweeps[i].Run(levelRate, uprightRate));
        }

        for (int i = 0; i < parts; i++)
        {
            CellUpdates += (long)sweeps[i].RowsDone * Nx;
        }

        Walls?.AfterStep(levelRate, uprightRate);
    }

    /// <summary>
    /// Cuts the active planes into runs of about equal work. Where two runs meet, the potentials of both planes are set aside first: each
    /// run overwrites its own plane while the other still needs the old one.
    /// </summary>
    private void Divide(int parts)
    {
        PlaneSweep sweep = sweeps[0];
        sweep.Begin(firstPlane);
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

                PlaneSweep next = sweeps[part];
                sweep.End = plane;
                next.Begin(plane);
                next.KeepBefore();
                sweep.KeepAfter();
                sweep = next;
            }
        }

        sweep.End = endPlane;
    }
}
