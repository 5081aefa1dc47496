using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Geometry;

public sealed class WantedSolidTests
{
    /// <remarks>Two boxes of 0.2 x 0.1 x 0.1 m on whole cells, one turned: 4 litres in all (closed form), each where it stands and nowhere else.</remarks>
    [Fact]
    public void Bin_wants_the_union_of_its_units()
    {
        ReefUnit box = Samples.Box(0.2, 0.1, 0.1);
        CellGrid grid = Centimetres(60, 40);
        UnitPlacement At(int turns, double x, double y) => new() { QuarterTurns = turns, Corner = new Point3(x, y, 0.05), UnitBox = box.OuterBox };
        JobDescription bin = Samples.Job(box) with
        {
            Bin = [new BinnedUnit { Mark = "A-001", Unit = box, Placement = At(0, 0.05, 0.1) }, new BinnedUnit { Mark = "A-002", Unit = box, Placement = At(1, 0.4, 0.1) }],
        };

        TargetField target = WantedSolid.Voxelize(bin, At(0, 0.0, 0.0), grid, new Parallelism(1), null, TestContext.Current.CancellationToken);

        Assert.Equal(0.004, target.CubicMetres, 9);
        Assert.Equal(4000, target.Fraction.Count(share => share > 0.999f));
        float Share(int x, int y) => target.Fraction[(10 * grid.Ny + y) * grid.Nx + x];
        Assert.Equal((1f, 1f, 0f), (Share(10, 15), Share(45, 28), Share(30, 15)));
        Assert.Equal((0f, 0f), (Share(10, 28), Share(55, 15)));
    }

    /// <remarks>Sides within cells and at the grid's edge: only the cells near a unit are filled, with what filling all cells gives.</remarks>
    [Theory]
    [InlineData(0.053, 0.047, 0.031)]
    [InlineData(0.0, 0.003, 0.0)]
    [InlineData(0.196, 0.197, 0.098)]
    public void Unit_of_a_bin_fills_the_cells_it_would_fill_alone(double x, double y, double z)
    {
        ReefUnit box = Samples.Box(0.2, 0.1, 0.1);
        CellGrid grid = Centimetres(40, 30);
        UnitPlacement placement = new() { QuarterTurns = 0, Corner = new Point3(x, y, z), UnitBox = box.OuterBox };
        JobDescription alone = Samples.Job(box);
        JobDescription bin = alone with { Bin = [new BinnedUnit { Mark = "A-001", Unit = box, Placement = placement }] };

        float[] Fill(JobDescription job) =>
            WantedSolid.Voxelize(job, placement, grid, new Parallelism(1), null, TestContext.Current.CancellationToken).Fraction;

        Assert.Equal(Fill(alone), Fill(bin));
    }

    private static CellGrid Centimetres(int nx, int ny) => new()
    {
        Nx = nx,
        Ny = ny,
        Nz = 20,
        CellsPerPitch = 5,
        CellsPerLayer = 5,
        Origin = default,
        CellMetres = 0.01,
        CellHeightMetres = 0.01,
    };
}
