using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>A test block with round holes right through it, a pitch and a half of solid or more around each, in rows.</summary>
/// <remarks>
/// Centre lines lie half a cell beside the place asked for, in line with cell centres: there the measure of the largest ball has no bias by the cells.
/// </remarks>
internal sealed class HoleBlock
{
    private const double SolidSteps = 1.5;
    private const int LengthSteps = 4;
    private readonly BlockFrame frame;
    private readonly List<(double Diameter, double U, double V, int Place)> holes = [];
    private readonly double length;

    /// <summary>A block.</summary>
    /// <param name="frame">Holes run along its axis.</param>
    /// <param name="rows">Each row: its holes by diameter, metres, and place.</param>
    /// <param name="phases">For each place the phase along u and along v.</param>
    /// <param name="cells">Cells a voxel side.</param>
    public HoleBlock(BlockFrame frame, IReadOnlyList<(double Diameter, int Place)[]> rows, IReadOnlyList<(double U, double V)> phases, int cells)
    {
        this.frame = frame;
        length = LengthSteps * frame.StepA;
        double solidU = SolidSteps * frame.StepU, solidV = SolidSteps * frame.StepV, atV = 0.0, endU = 0.0;
        foreach ((double Diameter, int Place)[] row in rows)
        {
            double u = 0.0, endV = 0.0;
            foreach ((double diameter, int place) in row)
            {
                double centreU = frame.NextU(u + solidU + diameter / 2.0, phases[place].U);
                double centreV = frame.NextV(atV + solidV + diameter / 2.0, phases[place].V);
                holes.Add((diameter, centreU + frame.StepU / cells / 2.0, centreV + frame.StepV / cells / 2.0, place));
                u = centreU + diameter / 2.0;
                endV = Math.Max(endV, centreV + diameter / 2.0);
            }

            endU = Math.Max(endU, u);
            atV = endV;
        }

        Unit = new ReefUnit
        {
            Name = "holes",
            OuterBox = frame.Size(length, BlockFrame.Whole(endU + solidU, frame.StepU), BlockFrame.Whole(atV + solidV, frame.StepV)),
            Tunnels =
            [
                .. holes.Select((hole, i) => new AxisTunnel
                {
                    Name = $"hole {i + 1}",
                    Along = frame.Axis,
                    At = frame.Point(0.0, hole.U, hole.V),
                    Section = new RoundSection(new Length(hole.Diameter)),
                }),
            ],
        };
    }

    /// <summary>The block as a description.</summary>
    public ReefUnit Unit { get; }

    /// <summary>Measures the holes of the block as it sets.</summary>
    /// <param name="block">The block.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>In the order of the rows.</returns>
    public IReadOnlyList<TestHole> Measure(WettedBlock block, Parallelism parallelism) =>
        [.. holes.Select(hole => new TestHole(hole.Diameter, Clear(block, hole.Diameter / 2.0, hole.U, hole.V, parallelism), hole.Place))];

    // The cells around one hole, with half a step beyond each mouth, measured as the tunnels of a unit are.
    private double Clear(WettedBlock block, double radius, double u, double v, Parallelism parallelism)
    {
        double reachU = radius + frame.StepU, reachV = radius + frame.StepV, beyond = frame.StepA / 2.0;
        (CellGrid cut, float[] level) = Cut(
            block, frame.Point(-beyond, u - reachU, v - reachV), frame.Point(length + beyond, u + reachU, v + reachV));
        if (!Array.Exists(level, value => value >= 0f))
        {
            return 2.0 * radius;
        }

        double cellA = frame.Axis == Axis.Z ? cut.CellHeightMetres : cut.CellMetres;
        GridShape cells = new(cut.Nx, cut.Ny, cut.Nz);
        CellSize size = new(cut.CellMetres, cut.CellHeightMetres);
        float[] distances = SurfaceDistance.Of(level, cells, size, 0f, 2.0 * radius + beyond, parallelism), clearances = new float[cut.Count];
        var regions = new byte[cut.Count];
        for (int cell = 0; cell < regions.Length; cell++)
        {
            (double a, double du, double dv) = frame.Of(cut.Centre(cell % cut.Nx, cell / cut.Nx % cut.Ny, cell / (cut.Nx * cut.Ny)));
            if ((du - u) * (du - u) + (dv - v) * (dv - v) < radius * radius)
            {
                clearances[cell] = Math.Max(0f, distances[cell]);
                regions[cell] = a < cellA ? PercolatingWidth.From : a > length - cellA ? PercolatingWidth.To : (byte)0;
            }
        }

        return ClearWidth.Measure(clearances, cells, regions, size, cell => RidgePeak.Gain(distances, 1f, cells, size, cell))?.Width ?? 0.0;
    }

    private static (CellGrid Cut, float[] Level) Cut(WettedBlock block, Point3 low, Point3 high)
    {
        CellGrid grid = block.Grid;
        Point3 origin = block.Origin;
        (int x0, int x1) = Range(low.X - origin.X, high.X - origin.X, grid.CellMetres, grid.Nx);
        (int y0, int y1) = Range(low.Y - origin.Y, high.Y - origin.Y, grid.CellMetres, grid.Ny);
        (int z0, int z1) = Range(low.Z - origin.Z, high.Z - origin.Z, grid.CellHeightMetres, grid.Nz);
        CellGrid cut = grid with
        {
            Nx = x1 - x0,
            Ny = y1 - y0,
            Nz = z1 - z0,
            Origin = origin + new Point3(x0 * grid.CellMetres, y0 * grid.CellMetres, z0 * grid.CellHeightMetres),
        };
        var level = new float[cut.Count];
        for (int z = 0; z < cut.Nz; z++)
        {
            for (int y = 0; y < cut.Ny; y++)
            {
                block.Level.AsSpan(((z + z0) * grid.Ny + y + y0) * grid.Nx + x0, cut.Nx).CopyTo(level.AsSpan((z * cut.Ny + y) * cut.Nx));
            }
        }

        return (cut, level);
    }

    private static (int First, int End) Range(double low, double high, double cell, int count) =>
        (Math.Clamp((int)Math.Floor(low / cell + 1e-6), 0, count - 1), Math.Clamp((int)Math.Ceiling(high / cell - 1e-6), 1, count));
}
