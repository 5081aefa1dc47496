using Dewstone.Compute.Numerics;
using Dewstone.Compute.Tests.Inspection;
using Dewstone.Compute.Tests.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class HardenedSurfaceTests
{
    private static readonly CellGrid Grid = FrontFields.Grid(12, 12, 12, 0.005);

    private static readonly Parallelism Two = new(2);

    private static PowerLaw Power(int exponent, double residual = 0.0) =>
        new() { AtSaturation = new Diffusivity(3.2e-6), Exponent = exponent, Residual = residual };

    private static ExponentialLaw Exponential(int exponent) => new() { AtSaturation = new Diffusivity(1.5e-5), Exponent = exponent };

    private static float LevelAt(double content, WettingLaw law) => HardenedSurface.Of(Samples.Moisture(Grid, _ => content), law, Two).Level[0];

    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Level_has_the_sign_of_hardened(bool power)
    {
        MoistureResult moisture = FrontFields.Moisture(Grid, p => FrontFields.Ball(p, new Point3(0.031, 0.029, 0.03), 0.021));

        float[] level = HardenedSurface.Of(moisture, power ? Power(4) : Exponential(8), Two).Level;

        Assert.Contains(level, value => value > 0f);
        Assert.All(Enumerable.Range(0, level.Length), i =>
            Assert.True((level[i] > 0f) == (moisture.Hardened[i] == 1) || Math.Abs(level[i]) < 1e-5f, $"cell {i}: level {level[i]}"));
    }

    // D goes with the fourth power of s = (content - residual)/(porosity - residual), so the level is (s/s threshold)^3 - 1, at most 2, and -1 where dry.
    [Theory]
    [InlineData(0.0)]
    [InlineData(0.03)]
    public void Level_of_the_power_law_with_exponent_4_is_the_cube_of_the_saturations_ratio(double residual)
    {
        PowerLaw law = Power(4, residual);
        double Content(double cube) => residual + (0.0935 - residual) * Math.Cbrt(cube);

        Assert.Equal(0.25f, LevelAt(Content(1.25), law), 1e-5f);
        Assert.Equal(-0.25f, LevelAt(Content(0.75), law), 1e-5f);
        Assert.Equal(1.99f, LevelAt(Content(2.99), law), 1e-4f);
        Assert.Equal(2f, LevelAt(Content(3.5), law));
        Assert.Equal(-1f, LevelAt(0.0, law));
        Assert.Equal(-1f, LevelAt(0.5 * residual, law));
    }

    // exp(b (s - s threshold)) - 1 with b = 8: s is higher by ln(1.5)/8 where the level is 0.5.
    [Fact]
    public void Level_of_the_exponential_law_is_the_diffusivitys_ratio()
    {
        double porosity = Samples.Moisture(Grid, _ => 0.0).Porosity;

        Assert.Equal(0.5f, LevelAt(0.0935 + porosity * Math.Log(1.5) / 8.0, Exponential(8)), 1e-5f);
        Assert.Equal(-0.5f, LevelAt(0.0935 + porosity * Math.Log(0.5) / 8.0, Exponential(8)), 1e-5f);
        Assert.Equal((float)(Math.Exp(-8.0 * 0.0935 / porosity) - 1.0), LevelAt(0.0, Exponential(8)), 1e-6f);
        Assert.Equal(2f, LevelAt(0.0935 + porosity * Math.Log(3.2) / 8.0, Exponential(8)));
    }

    /// <summary>
    /// Volume of a lone ball against the exact point source (Barenblatt 1952, Pattle 1959; see <see cref="PointSource"/>): 35 mL after 600 s set 203.99 mL,
    /// 20 mL 123.74 mL. With smaller cells it nears the exact volume from below, and at no cells are cells counted whole nearer.
    /// </summary>
    [Theory]
    [InlineData(35.0, 203.985)]
    [InlineData(20.0, 123.743)]
    public void Volume_of_a_ball_nears_the_exact_point_source(double millilitres, double exact)
    {
        PointSource source = new(4, ReferenceMix.Porosity, millilitres * 1e-6, 3.2e-6);
        double radius = source.RadiusAtSaturation(0.0935 / ReferenceMix.Porosity, 600.0);
        Assert.Equal(exact, 4.0 / 3.0 * Math.PI * radius * radius * radius * 1e6, 0.01);
        double before = double.PositiveInfinity;
        foreach ((int cells, double room) in new[] { (8, 0.06), (12, 0.03), (16, 0.025) })
        {
            MoistureResult moisture = new SmallJob(3, 3, 3, cells).Dose(1, 1, 1, millilitres).Solve(ReferenceMix.Bed(600.0), threads: 2);
            double error = HardenedSurface.Of(moisture, ReferenceMix.Bed().Law, Two).Mesh.Volume * 1e6 / exact - 1.0;
            double counted = moisture.Hardened.Count(set => set == 1) * moisture.Grid.CellCubicMetres * 1e6 / exact - 1.0;

            Assert.InRange(error, -room, 0.0);
            Assert.InRange(Math.Abs(error), 0.0, Math.Min(before, Math.Abs(counted)));
            before = Math.Abs(error);
        }
    }

    /// <summary>
    /// 27 doses of 35 mL at once, 600 s: 4395 mL set by an independent prototype of the same model at 24 cells a voxel, 4462 mL at 10; 3 %. And within 1 % of
    /// the sum of the cells' shares inside the level, by lines through the cells (<see cref="LevelSurface"/>), which knows of no mesh.
    /// </summary>
    [Fact]
    public void Volume_of_a_block_of_27_doses_is_that_of_the_independent_prototype_and_of_its_cells_shares()
    {
        SmallJob job = new SmallJob(7, 7, 7, 8).DoseBlock(2, 5, 2, 5, (_, _, _) => 35.0);
        HardenedSurface surface = HardenedSurface.Of(job.Solve(ReferenceMix.Bed(600.0), threads: 2), ReferenceMix.Bed().Law, Two);
        CellGrid grid = surface.Grid;
        LevelSurface shares = new(
            surface.Level, new GridShape(grid.Nx, grid.Ny, grid.Nz), new CellSize(grid.CellMetres, grid.CellHeightMetres), 0.0, 1, floor: -1.0);

        Assert.Equal(1.0, surface.Mesh.Volume * 1e6 / 4395.0, 0.03);
        Assert.Equal(1.0, surface.Mesh.Volume / shares.VolumeCubicMetres(), 0.01);
    }

    [Fact]
    public void Surface_does_not_depend_on_the_threads()
    {
        MoistureResult moisture = FrontFields.Moisture(Grid, p => FrontFields.Ball(p, new Point3(0.03, 0.031, 0.029), 0.02));
        HardenedSurface one = HardenedSurface.Of(moisture, Exponential(8), new Parallelism(1)), three = HardenedSurface.Of(moisture, Exponential(8), new Parallelism(3));

        Assert.Equal(one.Level, three.Level);
        Assert.Equal(one.Mesh.Volume, three.Mesh.Volume);
    }
}
