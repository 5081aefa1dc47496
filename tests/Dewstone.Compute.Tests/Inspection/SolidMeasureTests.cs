using Dewstone.Compute.Dosing;
using Dewstone.Compute.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class SolidMeasureTests
{
    private static readonly CellGrid Grid = Placer.Place(Samples.Job(Samples.Box(0.1, 0.1, 0.1)), 4).Cells!;

    private static TargetField Target(Func<int, double> fraction)
    {
        float[] cells = [.. Enumerable.Range(0, Grid.Count).Select(i => (float)fraction(i))];
        return new TargetField { Grid = Grid, Fraction = cells, CubicMetres = cells.Sum(c => (double)c) * Grid.CellCubicMetres };
    }

    private static SolidSummary Measure(TargetField target, MoistureResult moisture, WaterCementBand? band = null) =>
        SolidMeasure.Measure(target, moisture, FrontFields.Surface(moisture), band);

    [Fact]
    public void Equal_solids_match_wholly()
    {
        SolidSummary solid = Measure(Target(i => i < 1000 ? 1 : 0), Samples.Moisture(Grid, i => i < 1000 ? 0.2125 : 0));

        Assert.Equal(1.0, solid.ShapeMatch);
        Assert.Equal(0.5, solid.LargestWaterCement, 1e-7);
        Assert.Null(solid.ShareInBand);
    }

    /// <summary>
    /// A ball of radius R = 42 mm on cells of h = 5 mm, its content straight across the front, from the threshold t to twice that 2 h inside:
    /// V = 4/3 pi R^3 = 310.3 mL, of which chords lose some 0.7 %. Water, by hand: 2 t (4/3 pi (R - 2 h)^3) + integral over the outer 2 h of
    /// t (1 + (R - r) / (2 h)) 4 pi r^2 dr.
    /// </summary>
    [Fact]
    public void Volume_and_water_of_a_ball_are_those_of_its_integrals()
    {
        CellGrid grid = FrontFields.Grid(24, 24, 24, 0.005);
        MoistureResult moisture = FrontFields.Moisture(grid, p => FrontFields.Ball(p, new Point3(0.0612, 0.0594, 0.0605), 0.042));
        TargetField target = new() { Grid = grid, Fraction = new float[grid.Count], CubicMetres = 0.0 };

        SolidSummary solid = Measure(target, moisture);

        Assert.Equal(1.0, solid.HardenedCubicMetres / (4.0 / 3.0 * Math.PI * Math.Pow(0.042, 3.0)), 0.01);
        const double R = 0.042, Inner = 0.032;
        double water = 0.0935 * 4.0 * Math.PI * (2.0 * Cubed(Inner) / 3.0
            + (1.0 + R / 0.01) * (Cubed(R) - Cubed(Inner)) / 3.0 - (Cubed(R) * R - Cubed(Inner) * Inner) / 0.04);
        Assert.Equal(1.0, solid.WaterInHardenedCubicMetres / water, 0.01);
        Assert.Equal(solid.WaterInHardenedCubicMetres / solid.HardenedCubicMetres / 0.425, solid.MeanWaterCement, 1e-9);

        static double Cubed(double x) => x * x * x;
    }

    /// <summary>A single wet cell among dry ones: the surface is a diamond in and around it, and holds no more water than there is.</summary>
    [Fact]
    public void Water_is_never_more_than_the_cells_hold()
    {
        int middle = (Grid.Nz / 2 * Grid.Ny + Grid.Ny / 2) * Grid.Nx + Grid.Nx / 2;
        MoistureResult moisture = Samples.Moisture(Grid, i => i == middle ? 0.2 : 0.0);

        SolidSummary solid = Measure(Target(_ => 0.0), moisture);

        Assert.InRange(solid.WaterInHardenedCubicMetres, 0.0, 0.2 * Grid.CellCubicMetres * (1.0 + 1e-6));
        Assert.True(solid.WaterInHardenedCubicMetres > 0.0);
    }

    /// <summary>Wanted cells 0 to 999, hardened 400 to 1199: 600 in both, 1200 in either. A cell half wanted counts as wanted, one less does not.</summary>
    [Fact]
    public void Match_is_intersection_over_union_with_half_cells_counted_as_wanted()
    {
        TargetField target = Target(i => i < 999 ? 1 : i == 999 ? 0.5 : i == 1000 ? 0.49 : 0);

        SolidSummary solid = Measure(target, Samples.Moisture(Grid, i => i is >= 400 and < 1200 ? 0.2 : 0));

        Assert.Equal(0.5, solid.ShapeMatch, 12);
        Assert.Equal(target.CubicMetres, solid.TargetCubicMetres);
    }

    /// <summary>Of 800 hardened cells 200 hold water/cement 0.24, 500 hold 0.50 and 100 hold 0.70: 500/800 lie between 0.25 and 0.60.</summary>
    [Fact]
    public void Share_in_band_counts_only_hardened_cells_within_both_ends()
    {
        MoistureResult moisture = Samples.Moisture(Grid, i => 0.425 * (i < 200 ? 0.24 : i < 700 ? 0.50 : i < 800 ? 0.70 : i < 900 ? 0.10 : 0));

        SolidSummary solid = Measure(Target(_ => 1), moisture, new WaterCementBand(0.25, 0.60, 0.95));

        Assert.Equal(0.625, solid.ShareInBand!.Value, 12);
        Assert.Equal(0.70, solid.LargestWaterCement, 1e-7);
    }

    [Fact]
    public void Nothing_hardened_gives_zeros_and_no_division_by_nothing()
    {
        SolidSummary solid = Measure(Target(_ => 1), Samples.Moisture(Grid, _ => 0.0), new WaterCementBand(0.25, 0.6, 0.9));

        Assert.Equal((0.0, 0.0, 0.0, 0.0), (solid.HardenedCubicMetres, solid.ShapeMatch, solid.MeanWaterCement, solid.ShareInBand!.Value));
    }

    [Fact]
    public void Fields_on_different_cells_are_refused()
    {
        var target = new TargetField { Grid = Grid, Fraction = new float[3], CubicMetres = 0 };

        Assert.Throws<ArgumentException>(() => Measure(target, Samples.Moisture(Grid, _ => 0)));
    }
}
