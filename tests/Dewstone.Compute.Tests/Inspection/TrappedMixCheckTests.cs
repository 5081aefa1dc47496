using Dewstone.Compute.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

public sealed class TrappedMixCheckTests
{
    private static readonly Size3 Box = new(0.2, 0.2, 0.2);

    /// <summary>A block of 200 mm with a hollow of 80 mm in its middle, and a hole of a diameter from it to the top; none at 0.</summary>
    internal static Checked<TrappedMixReport> Check(double hole, double? mostKilograms = null, double hollow = 0.08) => TrappedMixCheck.Check(
        Moulds.Job(new Requirements { MaxTrappedMix = mostKilograms is { } m ? new Mass(m) : null }),
        Moulds.Solid(Box, p =>
        {
            double across = Math.Sqrt((p.X - 0.1) * (p.X - 0.1) + (p.Y - 0.1) * (p.Y - 0.1));
            double way = Math.Max(across - hole / 2.0, 0.1 - p.Z);
            double opened = hole > 0.0 ? Math.Min(way, Moulds.Ball(p, 0.1, 0.1, 0.1, hollow)) : Moulds.Ball(p, 0.1, 0.1, 0.1, hollow);
            return Math.Max(Moulds.Block(p, 0, 0, 0, 0.2, 0.2, 0.2), -opened);
        }));

    /// <summary>Loose mix of a ball of 80 mm: pi d^3 / 6 x 1700 kg/m3 = 0.456 kg (closed form), with what water stands in its rim.</summary>
    [Fact]
    public void Closed_hollow_keeps_all_its_mix()
    {
        Checked<TrappedMixReport> found = Check(0.0);

        Assert.Equal(0.456, found.Report.Kilograms, 0.03);
        SolidPiece pocket = Assert.Single(found.Report.Pockets);
        Assert.InRange((pocket.Centre - new Point3(0.1, 0.1, 0.1)).Norm, 0.0, 1e-6);
        Assert.Equal(("DW3023", Severity.Warning), (Assert.Single(found.Findings).Code, found.Findings[0].Severity));
    }

    [Theory]
    [InlineData(0.03)]
    [InlineData(0.026)]
    public void Hole_wider_than_the_tool_lets_everything_out(double hole)
    {
        Checked<TrappedMixReport> found = Check(hole, 0.01);

        Assert.Equal(0.0, found.Report.Kilograms, 0.01);
        Assert.True(found.Requirements[0].Met);
    }

    /// <summary>The tool stays at the top face; its bristles clear the upper end of the hole, and below that the hole and the hollow stay full.</summary>
    [Theory]
    [InlineData(0.018)]
    [InlineData(0.024)]
    public void Hole_narrower_than_the_tool_keeps_the_hollow_full(double hole)
    {
        Checked<TrappedMixReport> found = Check(hole, 0.1);

        Assert.InRange(found.Report.Kilograms, 0.44, 0.50);
        Diagnostic finding = Assert.Single(found.Findings);
        Assert.Equal(("DW3023", Severity.Error, "require.trapped_mix.max"), (finding.Code, finding.Severity, finding.Key!.Path));
    }

    [Fact]
    public void Trapped_mix_of_just_what_is_allowed_is_met()
    {
        double kilograms = Check(0.0).Report.Kilograms;

        Assert.Empty(Check(0.0, kilograms).Findings);
        Assert.Equal(Severity.Error, Assert.Single(Check(0.0, kilograms - 1e-6).Findings).Severity);
    }

    /// <summary>A groove 10 mm wide across the top: bristles reach 12.5 mm beyond a tool that lies in its mouth, and all of 10 mm, but not of 60 mm, comes out.</summary>
    [Theory]
    [InlineData(0.01, false)]
    [InlineData(0.06, true)]
    public void Groove_of_an_open_face_is_brushed_out_as_far_as_bristles_reach(double depth, bool traps)
    {
        Checked<TrappedMixReport> found = TrappedMixCheck.Check(
            Moulds.Job(new Requirements()),
            Moulds.Solid(Box, p => Math.Max(Moulds.Block(p, 0, 0, 0, 0.2, 0.2, 0.2), -Moulds.Block(p, 0.095, 0.05, 0.2 - depth, 0.105, 0.15, 0.3))));

        Assert.Equal(traps, found.Report.Kilograms > 0.0);
    }

    [Fact]
    public void Solid_block_traps_nothing() => Assert.Empty(Check(0.0, null, -0.01).Findings);
}
