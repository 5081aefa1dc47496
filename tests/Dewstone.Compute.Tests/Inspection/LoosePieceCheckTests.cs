using Dewstone.Compute.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class LoosePieceCheckTests
{
    private static readonly Size3 Box = new(0.2, 0.2, 0.2);

    /// <summary>A box with a hollow ball of 120 mm in it, and in that a ball of a diameter.</summary>
    internal static PredictedSolid Rattle(double diameter) => Moulds.Solid(Box, p => Math.Min(
        Math.Max(Moulds.Block(p, 0, 0, 0, 0.2, 0.2, 0.2), -Moulds.Ball(p, 0.1, 0.1, 0.1, 0.12)), Moulds.Ball(p, 0.1025, 0.1025, 0.0825, diameter)));

    internal static Checked<LoosePiecesReport> Check(PredictedSolid solid, int? most) =>
        LoosePieceCheck.Check(Moulds.Job(new Requirements { MaxLoosePieces = most }), solid);

    /// <summary>A ball of radius 5.05 cells about a cell's centre holds 515 centres (lattice points in a ball of radius 5: exact count, OEIS A000605, from memory).</summary>
    [Fact]
    public void Ball_loose_in_a_hollow_is_found_with_its_place_size_and_volume()
    {
        Checked<LoosePiecesReport> found = Check(Rattle(0.0505), null);

        SolidPiece ball = Assert.Single(found.Report.Pieces);
        Assert.Equal(515 * Moulds.Cell * Moulds.Cell * Moulds.Cell, ball.CubicMetres, 1e-12);
        Assert.InRange(ball.Kilograms, 1700.0 * ball.CubicMetres, 2100.0 * ball.CubicMetres);
        Assert.InRange((ball.Centre - new Point3(0.1025, 0.1025, 0.0825)).Norm, 0.0, 1e-6);
        Assert.Equal(0.055, ball.Size.X, 1e-9);
        Diagnostic finding = Assert.Single(found.Findings);
        Assert.Equal(("DW3020", Severity.Warning), (finding.Code, finding.Severity));
        Assert.Contains("55 x 55 x 55 mm at (", finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Loose_piece_beyond_those_allowed_is_an_error_on_the_requirement()
    {
        Diagnostic finding = Assert.Single(Check(Rattle(0.0505), 0).Findings);

        Assert.Equal(("DW3020", Severity.Error, "require.loose_pieces.max"), (finding.Code, finding.Severity, finding.Key!.Path));
        Checked<LoosePiecesReport> allowed = Check(Rattle(0.0505), 1);
        Assert.Empty(allowed.Findings);
        Assert.True(Assert.Single(allowed.Requirements).Met);
    }

    /// <summary>2 mL of least dose set at most 2 / 0.0935 = 21.4 mL; a ball of 30 mm is 14.1 mL.</summary>
    [Fact]
    public void Piece_smaller_than_the_least_dose_sets_is_a_crumb_and_no_loose_piece()
    {
        Checked<LoosePiecesReport> found = Check(Rattle(0.03), 0);

        Assert.Equal(21.39e-6, found.Report.CrumbCubicMetres, 0.01e-6);
        Assert.Empty(found.Report.Pieces);
        Assert.Equal(1, found.Report.Crumbs);
        Assert.True(found.Requirements[0].Met);
        Assert.Equal(("DW3021", Severity.Note), (Assert.Single(found.Findings).Code, found.Findings[0].Severity));
    }

    /// <summary>
    /// 21.39 mL are 171.1 cells. Balls about a cell's centre hold 171 centres from a radius of sqrt 11 cells and 179 from sqrt 12 (lattice points with
    /// x2 + y2 + z2 at most 11 and 12, by hand).
    /// </summary>
    [Theory]
    [InlineData(0.034, 0)]
    [InlineData(0.0355, 1)]
    public void Piece_is_no_crumb_from_the_volume_that_the_least_dose_sets(double diameter, int pieces)
    {
        Checked<LoosePiecesReport> found = Check(Rattle(diameter), null);

        Assert.Equal((pieces, 1 - pieces), (found.Report.Pieces.Count, found.Report.Crumbs));
    }

    [Fact]
    public void One_piece_says_nothing()
    {
        Checked<LoosePiecesReport> found = Check(Moulds.Solid(Box, p => Moulds.Block(p, 0, 0, 0, 0.2, 0.2, 0.2)), 0);

        Assert.Empty(found.Findings);
        Assert.Equal(0.0, found.Requirements[0].Value);
    }
}
