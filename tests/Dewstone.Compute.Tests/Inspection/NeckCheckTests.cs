using Dewstone.Compute.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

/// <summary>The wall as the format defines it: opening by a ball of its diameter separates nothing and leaves out no place by more than half a wall.</summary>
public sealed class NeckCheckTests
{
    private static readonly Size3 Box = new(0.3, 0.2, 0.2);

    internal static Checked<WallReport> Check(Func<Point3, double> distance, double? wall) => NeckCheck.Check(
        Moulds.Job(new Requirements { MinWall = wall is { } w ? new Length(w) : null }), Moulds.Solid(Box, distance));

    /// <summary>A plate with all edges rounded by a radius: a block less the radius, grown by it again.</summary>
    internal static double Plate(Point3 p, double thickness, double rounding, double low)
    {
        double r = rounding;
        return Moulds.Block(p, r, r, low + r, 0.3 - r, 0.2 - r, low + thickness - r) - r;
    }

    /// <summary>Two blocks of 100 mm and between them a square bar of a thickness, 100 mm long.</summary>
    private static double Dumbbell(Point3 p, double bar) => Math.Min(
        Math.Min(Moulds.Block(p, 0, 0.05, 0.05, 0.1, 0.15, 0.15), Moulds.Block(p, 0.2, 0.05, 0.05, 0.3, 0.15, 0.15)),
        Moulds.Block(p, 0.05, 0.1 - bar / 2, 0.1 - bar / 2, 0.25, 0.1 + bar / 2, 0.1 + bar / 2));

    [Theory]
    [InlineData(0.025, 0.0)]
    [InlineData(0.025, 0.0013)]
    [InlineData(0.010, 0.0025)]
    [InlineData(0.001, 0.0)]
    public void Plate_of_60_mm_with_rounded_edges_passes_60_mm(double rounding, double low)
    {
        Checked<WallReport> found = Check(p => Plate(p, 0.06, rounding, 0.05 + low), 0.06);

        Assert.Empty(found.Findings);
        Assert.True(Assert.Single(found.Requirements).Met);
        Assert.Equal(0.06, found.Report.LeastNeckMetres!.Value, 1e-9);
        Assert.Equal(0.06, found.Report.MedianMetres, 0.25 * 2.0 * Moulds.Cell);
    }

    [Theory]
    [InlineData(0.025, 0.0)]
    [InlineData(0.025, 0.0013)]
    public void Plate_of_55_mm_fails_60_mm_and_reads_55_mm(double rounding, double low)
    {
        Checked<WallReport> found = Check(p => Plate(p, 0.055, rounding, 0.05 + low), 0.06);

        Diagnostic finding = Assert.Single(found.Findings);
        Assert.Equal(("DW3022", Severity.Error, "require.wall.min"), (finding.Code, finding.Severity, finding.Key!.Path));
        Assert.Equal(0.055, found.Report.LeastNeckMetres!.Value, 0.25 * Moulds.Cell);
        Assert.False(found.Requirements[0].Met);
    }

    /// <summary>
    /// A spike 15 mm square counts from where it lies half a wall, 30 mm, from the opened block: 60 mm long 7 mL of it, less than the 21 mL that the least
    /// dose sets, a crumb; 170 mm long 31 mL.
    /// </summary>
    [Theory]
    [InlineData(0.06, 0)]
    [InlineData(0.17, 1)]
    public void Thin_part_counts_from_the_size_of_a_crumb(double length, int findings)
    {
        Checked<WallReport> found = Check(
            p => Math.Min(Moulds.Block(p, 0, 0.05, 0.05, 0.1, 0.15, 0.15), Moulds.Block(p, 0.05, 0.0925, 0.0925, 0.1 + length, 0.1075, 0.1075)), 0.06);

        Assert.Equal(findings, found.Findings.Count);
        Assert.Equal(findings == 0, found.Requirements[0].Met);
    }

    /// <summary>Thickness reads within a quarter of a cell, 1.25 mm, and so much is allowed: 59 mm pass for 60, 58 do not.</summary>
    [Theory]
    [InlineData(0.059, 0)]
    [InlineData(0.058, 1)]
    public void Plate_fails_from_a_quarter_of_a_cell_below_the_wall(double thickness, int findings) =>
        Assert.Equal(findings, Check(p => Plate(p, thickness, 0.025, 0.05), 0.06).Findings.Count);

    /// <summary>The largest ball in a square bar has its thickness for diameter; the neck lies in the bar, and a block of 1 L hangs by it.</summary>
    [Fact]
    public void Block_on_a_thin_bar_hangs_by_a_neck_of_the_bars_thickness()
    {
        Checked<WallReport> found = Check(p => Dumbbell(p, 0.04), 0.06);

        ThinPlace neck = found.Report.ThinPlaces[0];
        Assert.True(neck.IsNeck);
        Assert.Equal(0.04, neck.ThicknessMetres, 0.25 * Moulds.Cell);
        Assert.InRange(neck.Where.X, 0.1, 0.2);
        Assert.Equal(0.1, neck.Where.Y, Moulds.Cell);
        Assert.InRange(neck.Piece.CubicMetres, 0.8e-3, 1.1e-3);
        Assert.Equal("DW3022", Assert.Single(found.Findings).Code);
    }

    [Fact]
    public void Block_on_a_bar_as_thick_as_the_wall_holds()
    {
        Checked<WallReport> found = Check(p => Dumbbell(p, 0.06), 0.06);

        Assert.Empty(found.Findings);
        Assert.Equal(0.06, found.Report.LeastNeckMetres!.Value, 1e-9);
    }

    /// <summary>A fin 20 mm thick that stands 80 mm off a block: more than half a wall of 60 mm beyond what the ball covers.</summary>
    [Fact]
    public void Thin_fin_is_a_thin_part_and_a_scallop_is_not()
    {
        Checked<WallReport> fin = Check(
            p => Math.Min(Moulds.Block(p, 0, 0, 0, 0.12, 0.2, 0.2), Moulds.Block(p, 0.1, 0, 0.09, 0.2, 0.2, 0.11)), 0.06);
        ThinPlace part = Assert.Single(fin.Report.ThinPlaces);
        Assert.False(part.IsNeck);
        Assert.Equal(0.02, part.ThicknessMetres, 0.25 * Moulds.Cell);

        Checked<WallReport> scallop = Check(
            p => Math.Max(Moulds.Block(p, 0, 0, 0, 0.2, 0.2, 0.2), -Moulds.Ball(p, 0.1, 0.1, 0.21, 0.1)), 0.06);
        Assert.Empty(scallop.Findings);
    }

    [Fact]
    public void Without_a_wall_required_only_the_thickness_is_told()
    {
        Checked<WallReport> found = Check(p => Plate(p, 0.06, 0.02, 0.05), null);

        Assert.Empty(found.Requirements);
        Assert.Null(found.Report.LeastNeckMetres);
        Assert.InRange(found.Report.Percentile5Metres, 0.01, found.Report.MedianMetres);

        // A plate of 60 mm holds no larger ball: the bins end with the one that 60 mm begins, and nearly all of the volume is about it.
        Assert.Equal(1.0, found.Report.Shares.Sum(), 1e-12);
        Assert.InRange(found.Report.Shares.Count, 3, 4);
        Assert.True(found.Report.Shares.Skip(2).Sum() > 0.8);
    }
}
