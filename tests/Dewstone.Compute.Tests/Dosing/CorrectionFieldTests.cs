using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class CorrectionFieldTests
{
    /// <summary>
    /// A sharp block of 4 pitches of 50.8 mm on cells of 12.7 mm: the depth of a cell's centre below the nearest face is exact. The rule as its remarks state
    /// it, worked by hand: 6.35 mm deep weighs 1.635, 19.05 mm deep 2.905, deeper 4 at most.
    /// </summary>
    [Fact]
    public void Solid_weighs_more_the_deeper_it_lies_up_to_the_farthest()
    {
        const double Pitch = 0.0508;
        JobDescription job = Targets.SmallCube();
        job = job with
        {
            Unit = job.Unit with { OuterBox = new Size3(4 * Pitch, 4 * Pitch, 4 * Pitch), Rounding = new Length(0.0), Tunnels = [], Cavities = [] },
        };
        PlacementResult place = Placer.Place(job, 4);
        CellGrid grid = place.Cells!;

        CorrectionField field = CorrectionField.Over(
            ReefShapeBuilder.Build(job.Unit).Shape, place.Placement!, grid, 0.0, new CorrectionRule(), new Parallelism(2), CancellationToken.None);

        int[] seen = new int[4];
        for (int i = 0; i < grid.Count; i++)
        {
            Point3 point = place.Placement!.ToUnit(grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny)));
            double depth = new[] { point.X, point.Y, point.Z, 4 * Pitch - point.X, 4 * Pitch - point.Y, 4 * Pitch - point.Z }.Min();
            (int kind, double weight) = depth switch
            {
                < 0.0 => (0, field.Weights[i]),
                < 0.0127 => (1, 1.635),
                < 0.0254 => (2, 2.905),
                _ => (3, 4.0),
            };
            seen[kind]++;
            Assert.Equal(weight, field.Weights[i], 1e-5);
        }

        // Shells of a cube of 16 cells a side.
        Assert.Equal([grid.Count - 4096, 4096 - 2744, 2744 - 1728, 1728], seen);
    }

    /// <summary>Cell by cell: what a window sees is what stands there; beyond the field nothing is wanted and the first cell's weight holds.</summary>
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(-2, 0, 0)]
    [InlineData(2, -1, 1)]
    [InlineData(-1, 2, -2)]
    [InlineData(9, 0, 0)]
    public void Window_sees_the_cells_that_stand_there(int x, int y, int z)
    {
        CellGrid whole = Cells(5, 4, 3), window = Cells(4, 3, 4);
        float[] shares = [.. Enumerable.Range(1, whole.Count).Select(i => i / 64f)], weights = [.. shares.Select(share => 100f + share)];

        CorrectionField cut = CorrectionField.Given(new TargetField { Grid = whole, Fraction = shares, CubicMetres = 0.0 }, weights).Cut(window, x, y, z);

        double sum = 0.0;
        for (int i = 0; i < window.Count; i++)
        {
            (int a, int b, int c) = (i % 4 + x, i / 4 % 3 + y, i / 12 + z);
            bool isInside = a is >= 0 and < 5 && b is >= 0 and < 4 && c is >= 0 and < 3;
            int there = isInside ? (c * 4 + b) * 5 + a : 0;
            Assert.Equal((isInside ? shares[there] : 0f, weights[there]), (cut.Target.Fraction[i], cut.Weights[i]));
            sum += isInside ? shares[there] : 0.0;
        }

        Assert.Equal(sum * 1e-6, cut.Target.CubicMetres, 1e-12);
    }

    private static CellGrid Cells(int nx, int ny, int nz) => new()
    {
        Nx = nx,
        Ny = ny,
        Nz = nz,
        CellsPerPitch = 1,
        CellsPerLayer = 1,
        Origin = default,
        CellMetres = 0.01,
        CellHeightMetres = 0.01,
    };
}
