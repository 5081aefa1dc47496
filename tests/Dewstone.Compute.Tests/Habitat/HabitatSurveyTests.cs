using Dewstone.Compute.Habitat;
using Dewstone.Compute.Tests.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Habitat;

public sealed class HabitatSurveyTests
{
    private const double Cell = 0.01;

    private static readonly Size3 Box = new(0.5, 0.4, 0.4);

    /// <summary>A block with a square way through (140 mm) along x at z = 0.3 and a blind square hole (80 mm, 150 mm deep) from the east at z = 0.1.</summary>
    private static double Block(Point3 p) => Math.Max(
        Waters.Block(p, new Point3(0, 0, 0), new Point3(Box.X, Box.Y, Box.Z)),
        Math.Max(
            -Waters.Block(p, new Point3(-1, 0.13, 0.23), new Point3(2, 0.27, 0.37)),
            -Waters.Block(p, new Point3(0.35, 0.16, 0.06), new Point3(2, 0.24, 0.14))));

    private static HabitatResult Survey(double sheltered, double predator, Func<Point3, double>? distance = null, int threads = 2)
    {
        UnitPlacement placement = Waters.Placement(Box, Cell);
        CellGrid grid = Waters.Grid(Box, Cell);
        MoistureResult moisture = FrontFields.Moisture(grid, p => (distance ?? Block)(placement.ToUnit(p)));
        Site site = Samples.WracklineShoal() with { Animals = new ShelterAnimals(new Length(sheltered), new Length(predator)) };
        return HabitatSurvey.Survey(Samples.Job() with { Site = site }, placement, FrontFields.Surface(moisture), new Parallelism(threads));
    }

    [Fact]
    public void Holes_are_told_by_mouths_height_and_depth()
    {
        HabitatReport report = Survey(0.06, 0.1).Report!;

        Assert.Equal(2, report.Holes.Count);
        HabitatHole way = report.Holes[0], blind = report.Holes[1];
        Assert.Equal((2, 1), (way.Exits, blind.Exits));
        Assert.Equal(0.14, way.MouthMetres, 0.012);
        Assert.Equal(0.08, blind.MouthMetres, 0.012);
        Assert.Equal(0.3, way.MouthHeightMetres, 0.015);
        Assert.Equal(0.1, blind.MouthHeightMetres, 0.015);
        Assert.Equal(0.15, blind.DepthMetres, 0.02);
        // The volume counts from 20 mm in.
        Assert.Equal(1.0, blind.CubicMetres / (0.08 * 0.08 * 0.13), 0.1);
        Assert.Equal([0, 1, 1, 0], Enumerable.Range(0, 4).Select(i => report.InClass(i).Count()));
    }

    /// <summary>What a ball of 60 mm reaches and one of 100 mm does not: the blind hole, less its corners, and the way's corners between (4 - pi) r^2 of both.</summary>
    [Fact]
    public void Refuge_is_what_the_predator_cannot_reach()
    {
        double corner = 4.0 - Math.PI;
        double blind = (0.0064 - corner * 0.0009) * 0.15, way = corner * (0.0025 - 0.0009) * 0.5;

        Assert.Equal(1.0, Survey(0.06, 0.1).Report!.RefugeCubicMetres!.Value / (blind + way), 0.08);
    }

    [Fact]
    public void Curve_falls_and_is_unsure_below_four_cells()
    {
        HabitatReport report = Survey(0.06, 0.1).Report!;

        Assert.Equal(report.Curve.OrderBy(point => point.DiameterMetres), report.Curve);
        Assert.All(report.Curve, point => Assert.Equal(point.DiameterMetres >= 4 * Cell, point.IsSure));
        Assert.All(report.Curve.Zip(report.Curve.Skip(1)), pair => Assert.True(pair.Second.CubicMetres <= pair.First.CubicMetres + 2e-5));
        Assert.True(report.Curve[0].CubicMetres <= report.VoidCubicMetres * 1.001);
    }

    [Fact]
    public void Surface_and_sky_of_a_plain_cube_equal_the_closed_form()
    {
        HabitatReport report = Survey(0.06, 0.1, p => Waters.Block(p, new Point3(0, 0, 0), new Point3(Box.X, Box.Y, Box.Z))).Report!;

        double area = 0.5 * 0.4 + 2 * 0.4 * (0.5 + 0.4);
        // The surface between cells cuts sharp edges: 1 % along the upper ones, and 2 % of the sides are taken for foot.
        Assert.InRange(report.SurfaceSquareMetres / area, 0.96, 1.0);
        Assert.Equal(report.SurfaceSquareMetres / report.PlanSquareMetres, report.Rugosity);
        Assert.Equal(0.2, report.PlanSquareMetres, 1e-9);
        Assert.Equal(0.2 / area, report.ShareUp, 0.02);
        Assert.Equal(0.0, report.ShareDown, 0.01);
        // Sides see half the sky, the top all of it.
        Assert.Equal((0.2 + 0.5 * 0.72) / area, report.OpenSky, 0.04);
        Assert.Equal(1.0, report.OpenSkyShares.Sum(), 1e-12);
        Assert.Empty(report.Holes);
    }

    [Fact]
    public void Shelterless_block_raises_its_finding_and_a_holed_one_does_not()
    {
        Diagnostic found = Assert.Single(Survey(0.06, 0.1, p => Waters.Block(p, new Point3(0, 0, 0), new Point3(0.5, 0.4, 0.4))).Findings);

        Assert.Equal("DW6020", found.Code);
        Assert.Empty(Survey(0.06, 0.1).Findings);
    }

    [Fact]
    public void Animal_of_less_than_four_cells_is_not_judged()
    {
        HabitatResult result = Survey(0.03, 0.1);

        Assert.Equal("DW6021", Assert.Single(result.Findings).Code);
        Assert.Null(result.Report!.RefugeCubicMetres);
    }

    [Fact]
    public void Threads_change_nothing()
    {
        HabitatReport one = Survey(0.06, 0.1, threads: 1).Report!, four = Survey(0.06, 0.1, threads: 4).Report!;

        Assert.Equal(one.Curve, four.Curve);
        Assert.Equal(one.Holes, four.Holes);
        Assert.Equal((one.OpenSky, one.SurfaceSquareMetres, one.Dimension), (four.OpenSky, four.SurfaceSquareMetres, four.Dimension));
    }

    [Fact]
    public void Nothing_hardened_gives_no_report() => Assert.Null(Survey(0.06, 0.1, _ => 1.0).Report);
}
