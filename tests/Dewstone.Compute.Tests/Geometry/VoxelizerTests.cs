using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using static Dewstone.Compute.Tests.Geometry.SampleUnits;

namespace Dewstone.Compute.Tests.Geometry;

public sealed class VoxelizerTests
{
    // Every length is a multiple of 1/1024 m, so that turning a point about the box is exact in binary.
    private static readonly ReefUnit Turnable = Plain(0.5, 0.375, 0.25) with
    {
        Rounding = new Length(0.03125),
        Blend = new Length(0.015625),
        Relief = new Relief
        {
            Amplitude = new Length(0.0078125),
            ShortestLength = new Length(0.0625),
            LongestLength = new Length(0.125),
            Faces = FaceSet.East | FaceSet.Top,
            Seed = 3,
        },
        Tunnels = [Straight("x", Axis.X, new Point3(0.0, 0.125, 0.125), Rectangle(0.125, 0.0625, 0.015625))],
        Cavities = [Hollow("ball", Ball(0.375, 0.375, 0.25, 0.125))],
        Keep = [Zone("foot", Block(0.25, 0.1875, 0.015625, 0.5, 0.375, 0.03125))],
    };

    private static CellGrid Grid(int nx, int ny, int nz, double cell, double height, Point3 origin) => new()
    {
        Nx = nx,
        Ny = ny,
        Nz = nz,
        CellsPerPitch = 4,
        CellsPerLayer = 4,
        Origin = origin,
        CellMetres = cell,
        CellHeightMetres = height,
    };

    private static TargetField Run(ReefShape shape, UnitPlacement placement, CellGrid grid, int threads = 1) =>
        Voxelizer.Voxelize(shape, placement, grid, new Parallelism(threads), null, CancellationToken.None);

    [Fact]
    public void Field_is_the_same_with_any_number_of_threads()
    {
        ReefShape shape = Shape(WrackBlock);
        TargetField one = Run(shape, WrackPlacement, WrackGrid(4)), two = Run(shape, WrackPlacement, WrackGrid(4), 2), seven = Run(shape, WrackPlacement, WrackGrid(4), 7);

        Assert.Equal(one.Fraction, two.Fraction);
        Assert.Equal(one.Fraction, seven.Fraction);
        Assert.Equal(one.CubicMetres, two.CubicMetres);
        Assert.Equal(one.CubicMetres, seven.CubicMetres);
    }

    [Fact]
    public void Volume_is_that_of_the_shares()
    {
        CellGrid grid = WrackGrid(2);
        TargetField field = Run(Shape(WrackBlock), WrackPlacement, grid);

        Assert.Equal(field.Fraction.Sum(share => (double)share) * grid.CellCubicMetres, field.CubicMetres, 1e-12);
        Assert.All(field.Fraction, share => Assert.InRange(share, 0.0f, 1.0f));
    }

    // A box whose faces cut cells at quarters: the shares along an axis are exact.
    [Fact]
    public void Face_along_an_axis_gives_exact_shares()
    {
        CellGrid grid = Grid(4, 4, 4, 0.1, 0.1, new Point3(-0.1, -0.1, -0.1));
        TargetField field = Run(Shape(Plain(0.225, 0.225, 0.225)), new UnitPlacement { QuarterTurns = 0, Corner = default, UnitBox = new Size3(0.225, 0.225, 0.225) }, grid);

        Assert.Equal([0.0f, 1.0f, 1.0f, 0.25f], Enumerable.Range(0, 4).Select(x => field.Fraction[(1 * 4 + 1) * 4 + x]).Select(share => MathF.Round(share, 6)));
    }

    // Every bound that decides a block whole, and the ramp of the samples, against counting 10 x 10 x 10 points of each cell by the sign of
    // the distance. The grid is laid so that the count is exact for the outer faces. An eighth's ramp is off by a few hundredths where a
    // plane runs askew, and the count itself by up to a hundredth, so a cell may differ by 0.08; over all cells the differences must cancel
    // to 0.1 % of the volume.
    [Fact]
    public void Shares_agree_with_counting_many_points()
    {
        ReefShape shape = Shape(Turnable);
        CellGrid grid = Grid(22, 18, 15, 0.025, 0.02, new Point3(-0.02, -0.03, -0.014));
        UnitPlacement placement = new() { QuarterTurns = 0, Corner = default, UnitBox = Turnable.OuterBox };
        TargetField field = Run(shape, placement, grid);
        double counted = 0.0, worst = 0.0;
        for (int z = 0, index = 0; z < grid.Nz; z++)
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                for (int x = 0; x < grid.Nx; x++, index++)
                {
                    double share = Count(shape, grid, x, y, z);
                    counted += share;
                    worst = Math.Max(worst, Math.Abs(share - field.Fraction[index]));
                }
            }
        }

        Assert.InRange(worst, 0.0, 0.08);
        Assert.InRange(field.CubicMetres / (counted * grid.CellCubicMetres), 0.999, 1.001);
    }

    [Fact]
    public void Turned_unit_has_the_turned_field_to_the_last_bit()
    {
        ReefShape shape = Shape(Turnable);
        const double Cell = 0.0078125;
        const int Nx = 70, Ny = 54, Nz = 36;
        Point3 corner = new(0.0234375, 0.0234375, 0.0078125);
        CellGrid straight = Grid(Nx, Ny, Nz, Cell, Cell, default), turned = Grid(Ny, Nx, Nz, Cell, Cell, default);
        TargetField[] fields =
        [
            .. Enumerable.Range(0, 4).Select(turn =>
                Run(shape, new UnitPlacement { QuarterTurns = turn, Corner = corner, UnitBox = Turnable.OuterBox }, (turn & 1) == 0 ? straight : turned)),
        ];

        Assert.InRange(fields[0].CubicMetres, 0.01, 0.5 * 0.375 * 0.25);
        for (int z = 0; z < Nz; z++)
        {
            for (int y = 0; y < Ny; y++)
            {
                for (int x = 0; x < Nx; x++)
                {
                    float share = fields[0].Fraction[(z * Ny + y) * Nx + x];
                    Assert.Equal(share, fields[1].Fraction[(z * Nx + x) * Ny + (Ny - 1 - y)]);
                    Assert.Equal(share, fields[2].Fraction[(z * Ny + (Ny - 1 - y)) * Nx + (Nx - 1 - x)]);
                    Assert.Equal(share, fields[3].Fraction[(z * Nx + (Nx - 1 - x)) * Ny + y]);
                }
            }
        }
    }

    // Halving the cell must bring the volume of a curved shape nearer to the closed form at least as a second-order rule does, about
    // fourfold.
    [Fact]
    public void Volume_of_a_ball_converges_with_the_cell()
    {
        ReefShape ball = Shape(Plain(0.4, 0.4, 0.4) with { Rounding = new Length(0.2) });
        double exact = 4.0 / 3.0 * Math.PI * 0.008;
        double coarse = Math.Abs(Voxelizer.Volume(ball, 0.04, new Parallelism(1), default) - exact);
        double fine = Math.Abs(Voxelizer.Volume(ball, 0.02, new Parallelism(1), default) - exact);

        Assert.True(coarse / fine >= 3.0, $"{coarse / fine} times nearer");
        Assert.InRange(fine / exact, 0.0, 0.001);
    }

    [Fact]
    public void Progress_ends_at_1_and_a_cancelled_run_stops()
    {
        ReefShape shape = Shape(Turnable);
        UnitPlacement placement = new() { QuarterTurns = 0, Corner = default, UnitBox = Turnable.OuterBox };
        Recorder recorder = new();
        Voxelizer.Voxelize(shape, placement, Grid(8, 8, 20, 0.03, 0.03, default), new Parallelism(1), recorder, CancellationToken.None);

        Assert.Equal(3, recorder.Seen.Count);
        Assert.Equal(1.0, recorder.Seen[^1]);
        using CancellationTokenSource stopped = new();
        stopped.Cancel();
        Assert.Throws<OperationCanceledException>(() =>
            Voxelizer.Voxelize(shape, placement, Grid(8, 8, 20, 0.03, 0.03, default), new Parallelism(1), null, stopped.Token));
    }

    private static double Count(ReefShape shape, CellGrid grid, int x, int y, int z)
    {
        const int Side = 10;
        int inside = 0;
        for (int i = 0; i < Side * Side * Side; i++)
        {
            Point3 p = new(
                grid.Origin.X + (x + (i % Side + 0.5) / Side) * grid.CellMetres,
                grid.Origin.Y + (y + (i / Side % Side + 0.5) / Side) * grid.CellMetres,
                grid.Origin.Z + (z + (i / (Side * Side) + 0.5) / Side) * grid.CellHeightMetres);
            if (shape.SignedDistance(p) < 0.0) { inside++; }
        }
        return inside / (double)(Side * Side * Side);
    }

    private sealed class Recorder : IProgress<Progress>
    {
        public List<double> Seen { get; } = [];

        public void Report(Progress value) => Seen.Add(value.Done);
    }
}
