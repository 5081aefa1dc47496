using Dewstone.Compute.Dosing;
using Dewstone.Compute.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
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

    [Fact]
    public void Equal_solids_match_wholly()
    {
        SolidSummary solid = SolidMeasure.Measure(Target(i => i < 1000 ? 1 : 0), Samples.Moisture(Grid, i => i < 1000 ? 0.2125 : 0), null);

        Assert.Equal(1.0, solid.ShapeMatch);
        Assert.Equal(1000 * Grid.CellCubicMetres, solid.HardenedCubicMetres, 1e-15);
        Assert.Equal(0.5, solid.MeanWaterCement, 1e-7);
        Assert.Equal(0.5, solid.LargestWaterCement, 1e-7);
        Assert.Equal(1000 * Grid.CellCubicMetres * 0.2125, solid.WaterInHardenedCubicMetres, 1e-10);
        Assert.Null(solid.ShareInBand);
    }

    /// <summary>Wanted cells 0 to 999, hardened 400 to 1199: 600 in both, 1200 in either. A cell half wanted counts as wanted, one less does not.</summary>
    [Fact]
    public void Match_is_intersection_over_union_with_half_cells_counted_as_wanted()
    {
        TargetField target = Target(i => i < 999 ? 1 : i == 999 ? 0.5 : i == 1000 ? 0.49 : 0);

        SolidSummary solid = SolidMeasure.Measure(target, Samples.Moisture(Grid, i => i is >= 400 and < 1200 ? 0.2 : 0), null);

        Assert.Equal(0.5, solid.ShapeMatch, 12);
        Assert.Equal(target.CubicMetres, solid.TargetCubicMetres);
    }

    /// <summary>Of 800 hardened cells 200 hold water/cement 0.24, 500 hold 0.50 and 100 hold 0.70: 500/800 lie between 0.25 and 0.60.</summary>
    [Fact]
    public void Share_in_band_counts_only_hardened_cells_within_both_ends()
    {
        MoistureResult moisture = Samples.Moisture(Grid, i => 0.425 * (i < 200 ? 0.24 : i < 700 ? 0.50 : i < 800 ? 0.70 : i < 900 ? 0.10 : 0));

        SolidSummary solid = SolidMeasure.Measure(Target(_ => 1), moisture, new WaterCementBand(0.25, 0.60, 0.95));

        Assert.Equal(0.625, solid.ShareInBand!.Value, 12);
        Assert.Equal((200 * 0.24 + 500 * 0.50 + 100 * 0.70) / 800, solid.MeanWaterCement, 1e-7);
        Assert.Equal(0.70, solid.LargestWaterCement, 1e-7);
    }

    [Fact]
    public void Nothing_hardened_gives_zeros_and_no_division_by_nothing()
    {
        SolidSummary solid = SolidMeasure.Measure(Target(_ => 1), Samples.Moisture(Grid, _ => 0.0), new WaterCementBand(0.25, 0.6, 0.9));

        Assert.Equal((0.0, 0.0, 0.0, 0.0), (solid.HardenedCubicMetres, solid.ShapeMatch, solid.MeanWaterCement, solid.ShareInBand!.Value));
    }

    [Fact]
    public void Fields_on_different_cells_are_refused()
    {
        var target = new TargetField { Grid = Grid, Fraction = new float[3], CubicMetres = 0 };

        Assert.Throws<ArgumentException>(() => SolidMeasure.Measure(target, Samples.Moisture(Grid, _ => 0), null));
    }
}
