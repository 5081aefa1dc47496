using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Tests.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

/// <summary>Whole inspections of units that set as drawn, but for a planted fault.</summary>
public sealed class InspectorTests
{
    private static readonly Size3 Box = new(0.3, 0.3, 0.3);

    internal static ReefUnit Plain => SampleUnits.Plain(0.3, 0.3, 0.3);

    private static FormedCavity Pit(double diameter, double top = 0.3) =>
        SampleUnits.Hollow("pit", SampleUnits.Ball(0.15, 0.15, top - 0.4 * diameter, diameter));

    /// <summary>Inspects a unit whose hardened surface is the drawn one changed by a rule of place and distance.</summary>
    internal static InspectionReport Inspect(ReefUnit unit, Func<Point3, double, double>? change = null, int threads = 2)
    {
        JobDescription job = Samples.Job(unit);
        ReefShape shape = SampleUnits.Shape(unit);
        UnitPlacement placement = Moulds.Placement(unit.OuterBox);
        CellGrid grid = Moulds.Grid(unit.OuterBox);
        TargetField target = Voxelizer.Voxelize(shape, placement, grid, Moulds.Two, null, TestContext.Current.CancellationToken);
        MoistureResult moisture = FrontFields.Moisture(grid, p =>
        {
            Point3 inUnit = placement.ToUnit(p);
            double drawn = shape.SignedDistance(inUnit);
            return change is null ? drawn : change(inUnit, drawn);
        });
        HardenedSurface surface = FrontFields.Surface(moisture);
        return Inspector.Inspect(
            job, shape, placement, target, moisture, surface, SolidMeasure.Measure(target, moisture, surface, unit.Require.WaterCement), new Parallelism(threads),
            TestContext.Current.CancellationToken);
    }

    private static Diagnostic One(InspectionReport report, string code) => Assert.Single(report.Findings, finding => finding.Code == code);

    internal static ReefUnit Tunnelled(double clear) => Plain with
    {
        Tunnels = [SampleUnits.Straight("way", Axis.X, new Point3(0, 0.15, 0.15), SampleUnits.Round(0.12)) with { Clear = new Length(clear) }],
    };

    [Fact]
    public void Unit_that_sets_as_drawn_meets_all_it_requires_in_silence()
    {
        InspectionReport report = Inspect(Tunnelled(0.115) with
        {
            Keep = [SampleUnits.Zone("foot", SampleUnits.Block(0.15, 0.15, 0.03, 0.3, 0.3, 0.06))],
            Lifting = new StrapLifting { Lines = [new StrapLine(Axis.Y, new Length(0.05))] },
            Require = new Requirements
            {
                MinWall = new Length(0.06),
                MaxLoosePieces = 0,
                MaxTrappedMix = new Mass(0.01),
                WaterCement = new WaterCementBand(0.1, 1.0, 0.95),
            },
        });

        Assert.Empty(report.Findings);
        Assert.Equal(["wall.min", "loose_pieces.max", "trapped_mix.max", "clear"], report.Requirements.Select(r => r.Id));
        Assert.All(report.Requirements, r => Assert.True(r.Met, r.Id));
        Assert.Equal(0.0, report.ShapeMatch.MeanMetres, 0.1 * Moulds.Cell);
        Assert.Equal(2, report.SoundZones.Count);
    }

    /// <summary>A collar 40 mm long about the middle of a tunnel of 120 mm leaves 70 mm: the clear opening by hand, and its place.</summary>
    [Fact]
    public void Tunnel_narrowed_to_a_known_width_misses_its_clear_opening_there()
    {
        InspectionReport report = Inspect(Tunnelled(0.1), (p, drawn) =>
        {
            double across = Math.Sqrt((p.Y - 0.15) * (p.Y - 0.15) + (p.Z - 0.15) * (p.Z - 0.15));
            return Math.Min(drawn, Math.Max(Math.Abs(p.X - 0.2) - 0.02, Math.Max(0.035 - across, across - 0.07)));
        });

        Diagnostic finding = One(report, "DW3024");
        Assert.Equal((Severity.Error, "tunnels[0].clear"), (finding.Severity, finding.Key!.Path));
        ClearOpening way = Assert.Single(report.ClearOpenings);
        Assert.Equal(0.12, way.WantedMetres, 0.3 * Moulds.Cell);
        Assert.Equal(0.07, way.PredictedMetres, 0.3 * Moulds.Cell);
        Assert.InRange(finding.Where!.Value.X, 0.175, 0.225);
        Assert.Equal(0.15, finding.Where.Value.Y, Moulds.Cell);
        Assert.False(Assert.Single(report.Requirements).Met);
    }

    [Theory]
    [InlineData(-0.001, true)]
    [InlineData(0.001, false)]
    public void Clear_opening_is_held_against_what_is_asked_to_the_millimetre(double beyond, bool met)
    {
        double predicted = Assert.Single(Inspect(Tunnelled(0.1)).ClearOpenings).PredictedMetres;
        InspectionReport report = Inspect(Tunnelled(predicted + beyond));

        Assert.Equal(met, Assert.Single(report.Requirements).Met);
        Assert.Equal(met ? [] : ["DW3024"], report.Findings.Select(finding => finding.Code));
    }

    /// <summary>
    /// The mouth of a ball of 100 mm whose middle lies 40 mm under the face is 2 sqrt(50^2 - 40^2) = 60 mm wide (Pythagoras). Its lip is an edge of
    /// 53 degrees, and a surface between cells cuts such edges off: it reads up to a cell and a half wide, never narrow.
    /// </summary>
    [Fact]
    public void Mouth_with_a_sharp_lip_reads_wide_by_no_more_than_a_cell_and_a_half()
    {
        ClearOpening pit = Assert.Single(Inspect(Plain with { Cavities = [Pit(0.1)] }).ClearOpenings);

        Assert.InRange(pit.WantedMetres, 0.06, 0.06 + 1.5 * Moulds.Cell);
        Assert.InRange(pit.PredictedMetres, 0.06, 0.06 + 1.5 * Moulds.Cell);
    }

    /// <summary>A square pit of 60 mm lets in what is 60 mm across.</summary>
    [Fact]
    public void Way_into_a_cavity_is_its_mouth_and_a_cavity_that_sets_shut_is_said()
    {
        ReefUnit unit = Plain with { Cavities = [SampleUnits.Hollow("pit", SampleUnits.Block(0.15, 0.15, 0.3, 0.06, 0.06, 0.16))] };

        Assert.Equal(0.06, Assert.Single(Inspect(unit).ClearOpenings).PredictedMetres, 0.5 * Moulds.Cell);

        Diagnostic shut = One(Inspect(unit, (p, drawn) => Moulds.Block(p, 0, 0, 0, 0.3, 0.3, 0.3)), "DW3025");
        Assert.Equal((Severity.Warning, "cavities[0]"), (shut.Severity, shut.Key!.Path));
    }

    [Fact]
    public void Cavity_narrower_than_its_clear_is_an_error_on_it()
    {
        ReefUnit unit = Plain with { Cavities = [Pit(0.1) with { Clear = new Length(0.08) }] };

        Assert.Equal("cavities[0].clear", One(Inspect(unit), "DW3024").Key!.Path);
    }

    /// <summary>Over a strap 60 x 260 x 80 mm = 1.25 L lie deeper than 20 mm; a loose ball of 30 mm is 1 % of that, one of 56 mm 7 %; 47 and 52 mm lie about the limit of 5 %, with 4.4 and 5.9 %.</summary>
    [Theory]
    [InlineData(0.03, Severity.Warning)]
    [InlineData(0.047, Severity.Warning)]
    [InlineData(0.052, Severity.Error)]
    [InlineData(0.056, Severity.Error)]
    public void Loose_mix_in_a_keep_zone_is_a_warning_and_much_of_it_over_a_strap_an_error(double diameter, Severity severity)
    {
        ReefUnit unit = Plain with
        {
            Keep = [SampleUnits.Zone("foot", SampleUnits.Block(0.15, 0.15, 0.05, 0.3, 0.3, 0.1))],
            Lifting = new StrapLifting { Lines = [new StrapLine(Axis.Y, new Length(0.05)), new StrapLine(Axis.Y, new Length(0.25))] },
        };
        InspectionReport report = Inspect(unit, (p, drawn) => Math.Max(drawn, -Moulds.Ball(p, 0.05, 0.15, 0.06, diameter)));

        Assert.Equal((Severity.Warning, "keep[0]"), (One(report, "DW3027").Severity, One(report, "DW3027").Key!.Path));
        Diagnostic strap = One(report, "DW3028");
        Assert.Equal((severity, "lifting.lines[0]"), (strap.Severity, strap.Key!.Path));
        Assert.InRange((strap.Where!.Value - new Point3(0.05, 0.15, 0.06)).Norm, 0.0, 2.0 * Moulds.Cell);
    }

    [Fact]
    public void Loose_mix_around_an_insert_is_found()
    {
        ReefUnit unit = Plain with
        {
            Lifting = new InsertLifting { Points = [new Point3(0.15, 0.15, 0.3)], Embedment = new Length(0.15) },
        };

        Assert.DoesNotContain(Inspect(unit).Findings, finding => finding.Code == "DW3028");
        Assert.Equal(
            "lifting.points[0]", One(Inspect(unit, (p, drawn) => Math.Max(drawn, -Moulds.Ball(p, 0.15, 0.15, 0.2, 0.08))), "DW3028").Key!.Path);
    }

    /// <summary>The front is straight over two cells of 5 mm: all of the outermost 10 mm is leaner than the inside, which has twice the threshold, 0.44.</summary>
    [Fact]
    public void Skin_leaner_than_the_band_is_a_warning_with_its_share()
    {
        InspectionReport report = Inspect(Plain with { Require = new Requirements { WaterCement = new WaterCementBand(0.43, 0.45, 0.5) } });

        One(report, "DW3026");
        Assert.True(report.WaterCement!.SkinShareOutside > 0.9);
        Assert.True(report.WaterCement.ShareBelow < 0.25);
        Assert.Equal(0.0, report.WaterCement.ShareAbove);
        Assert.NotNull(report.WaterCement.Largest);
    }

    [Theory]
    [InlineData(-0.001, true)]
    [InlineData(0.001, false)]
    public void Skin_is_held_against_the_share_asked_of_the_whole(double beyond, bool met)
    {
        ReefUnit Banded(double share) => Plain with { Require = new Requirements { WaterCement = new WaterCementBand(0.3, 0.45, share) } };
        double inside = 1.0 - Inspect(Banded(0.5)).WaterCement!.SkinShareOutside;

        Assert.Equal(met ? 0 : 1, Inspect(Banded(inside + beyond)).Findings.Count(finding => finding.Code == "DW3026"));
    }

    /// <summary>Square pits 80 mm deep, whose mouths read true: an animal of 30 mm gets in from 30 mm and has room to turn from 45 mm.</summary>
    [Theory]
    [InlineData(0.028, false)]
    [InlineData(0.032, true)]
    [InlineData(0.043, true)]
    [InlineData(0.047, false)]
    public void Pit_is_a_trap_between_once_and_one_and_a_half_times_the_body(double edge, bool trap)
    {
        ReefUnit unit = Plain with { Cavities = [SampleUnits.Hollow("pit", SampleUnits.Block(0.15, 0.15, 0.3, edge, edge, 0.16))] };

        Assert.Equal(trap ? 1 : 0, Inspect(unit).Findings.Count(finding => finding.Code == "DW3029"));
    }

    /// <summary>A mouth of 36 mm is between 30 and 45 mm; one of 60 mm is not, nor is the same pit turned to the side.</summary>
    [Fact]
    public void Pit_with_a_snug_mouth_upwards_is_noted_as_a_trap()
    {
        ReefUnit snug = Plain with { Cavities = [Pit(0.06)] };
        ReefUnit wide = Plain with { Cavities = [Pit(0.1)] };
        ReefUnit side = Plain with { Cavities = [SampleUnits.Hollow("pit", SampleUnits.Ball(0.276, 0.15, 0.15, 0.06))] };

        Diagnostic trap = One(Inspect(snug), "DW3029");
        Assert.Equal((Severity.Note, "cavities[0]"), (trap.Severity, trap.Key!.Path));
        Assert.DoesNotContain(Inspect(wide).Findings, finding => finding.Code == "DW3029");
        Assert.DoesNotContain(Inspect(side).Findings, finding => finding.Code == "DW3029");
    }

    [Fact]
    public void Inspection_does_not_depend_on_the_threads()
    {
        ReefUnit unit = Tunnelled(0.1) with { Require = new Requirements { MinWall = new Length(0.1), MaxTrappedMix = new Mass(0.0) } };
        Func<Point3, double, double> pocket = (p, drawn) => Math.Max(drawn, -Moulds.Ball(p, 0.05, 0.05, 0.05, 0.03));
        InspectionReport one = Inspect(unit, pocket, 1), three = Inspect(unit, pocket, 3);

        Assert.Equal(one.Findings, three.Findings);
        Assert.Equal(one.Requirements, three.Requirements);
        Assert.Equal(one.ShapeMatch, three.ShapeMatch);
        Assert.Equal(one.ClearOpenings, three.ClearOpenings);
        Assert.NotEmpty(one.Findings);
    }
}
