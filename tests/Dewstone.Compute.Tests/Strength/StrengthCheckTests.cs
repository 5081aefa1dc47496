using Dewstone.Compute.Geometry;
using Dewstone.Compute.Strength;
using Dewstone.Compute.Tests.Geometry;
using Dewstone.Compute.Tests.Inspection;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Strength;

public sealed class StrengthCheckTests
{
    private static readonly Size3 Box = new(0.4, 0.3, 0.2);

    private static readonly StrapLifting Straps = new() { Lines = [new StrapLine(Axis.Y, new Length(0.1)), new StrapLine(Axis.Y, new Length(0.3))] };

    // The REF mix (425 kg of cement a cubic metre of bed, pores 0.384) at w/c 0.50: the sixth of the volume that stays air makes 17 to 22 MPa of what would be 75 MPa without it.
    [Fact]
    public void Bed_with_its_air_gives_17_to_22_megapascals_not_75()
    {
        StrengthReport report = Check(Block()).Report!;
        Assert.InRange(report.MeanPascals, 17e6, 22e6);
        Assert.Equal(report.MeanPascals, report.Percentiles.P50, 0.05e6);

        DryMix compacted = Samples.EstuaryMix() with { Strength = new StrengthLaw { Rule = StrengthRule.GelSpace, Compacted = true } };
        Assert.InRange(Check(Block(), job => job with { Mix = compacted }).Report!.MeanPascals, 65e6, 85e6);
    }

    // Cubes override the rule: 12.4 MPa at 7 d and 20 degC, class N, are 12.4 / 0.77880 = 15.922 MPa at 28 days (EN 1992-1-1 equation (3.2), from memory).
    [Fact]
    public void Measured_cubes_override_the_rule()
    {
        StrengthLaw law = new() { Rule = StrengthRule.HandbookCurve, Measured = [new MeasuredStrength(new Duration(7 * 86400.0), new Temperature(20.0), new Pressure(12.4e6))] };
        StrengthReport report = Check(Block(), job => job with { Mix = job.Mix with { Strength = law } }).Report!;
        Assert.Equal(15.922e6, report.MeanPascals, 0.001e6);
        Assert.Equal(StrengthRule.Measured, report.Rule);
    }

    // Cooler curing takes longer: equivalent days run at exp(-5000 (1/T - 1/293.15)), 0.54751 at 10 degC (ASTM C1074, from memory).
    [Fact]
    public void Lifting_waits_for_strength_at_the_curing_temperature()
    {
        StrengthReport warm = Curing(20.0).Report!, cool = Curing(10.0).Report!;
        Assert.Equal(warm.LiftDays!.Value / 0.54751, cool.LiftDays!.Value, 1e-3);
        Assert.Equal(10e6, warm.MeanPascals * AgeFactor.Of("N").At(warm.LiftDays!.Value), 1.0);
        Assert.True(warm.DigOutDays <= warm.LiftDays);
        Assert.DoesNotContain(Curing(10.0).Findings, finding => finding.Code == "DW5011");
        Assert.Contains(Curing(-2.0).Findings, finding => finding.Code == "DW5011");

        static StrengthResult Curing(double celsius) => Check(Block(), job => job with { Tonight = new Tonight { CuringTemperature = new Temperature(celsius) } });
    }

    // A block of 0.4 x 0.3 x 0.2 m: 1700 kg/m3 of mix and 212.5 kg/m3 of water.
    [Fact]
    public void Hang_of_a_plain_block_is_in_balance()
    {
        StrengthResult result = Check(Block());
        LiftingReport lifting = result.Report!.Lifting;
        Assert.Equal(0.024 * 1912.5 + 0.5, lifting.Kilograms, 1e-6);
        Assert.Equal(0.2, lifting.CentreOfGravity.X, 1e-6);
        Assert.Equal(0.15, lifting.CentreOfGravity.Y, 1e-6);
        Assert.Equal(0.1, lifting.CentreOfGravity.Z, 1e-6);
        HangReport hang = lifting.Hang!;
        Assert.Equal(lifting.Kilograms * 9.80665 * 1.2 / (2.0 * Math.Sin(Math.PI / 3.0)), hang.LegNewtons, 1e-6);
        Assert.All(hang.Places, place => Assert.Equal(0.5, place.Share, 1e-6));
        Assert.All(hang.Places, place => Assert.Equal(1.0, place.BearingShare, 1e-6));
        Assert.Equal(0.0, hang.TiltDegrees, 1e-3);
        // Two strips of 60 mm across 300 mm carry the weight with the dynamic factor.
        Assert.All(hang.Places, place => Assert.Equal(1.2 * 9.80665 * lifting.Kilograms / (2.0 * 0.06 * 0.3), place.BearingPascals, 1.0));
        Assert.Empty(result.Findings);
        Assert.Equal(4, result.Report.Tension.Count);
    }

    // A beam of 0.8 x 0.2 x 0.1 m on strips 50 mm wide at its west and east edges: W (0.375 - 0.2) / 2 over b h^2 / 6 is its greatest bending stress (statics; Gere and Timoshenko,
    // "Mechanics of materials", from memory). What is judged is the mean over a half ball, whose middle lies 3/8 of its radius below the face.
    [Fact]
    public void Tension_on_two_edges_is_that_of_a_beam()
    {
        Size3 beam = new(0.8, 0.2, 0.1);
        TensionResult standing = Check(Block(size: beam), job => job with { Unit = job.Unit with { OuterBox = beam } }, 40)
            .Report!.Tension.Single(held => held.Case == LoadCase.OnWestAndEastEdges);
        double weight = beam.CubicMetres * 1912.5 * 9.80665, outermost = weight * (0.375 - 0.2) / 2.0 / (beam.Y * beam.Z * beam.Z / 6.0);
        double depth = 3.0 / 8.0 * 0.5 * StrengthCheck.BallPitches * 0.05;
        Assert.Equal(1.0 - 2.0 * depth / beam.Z, standing.TensionPascals / outermost, 0.05);
        Assert.Equal(0.4, standing.Where.X, 0.05);
        Assert.Equal(0.0, standing.Where.Z, 0.011);
    }

    [Fact]
    public void Turned_units_have_the_same_figures_in_their_own_frame()
    {
        StrengthReport straight = Check(Block(Notched)).Report!, other = Check(Block(Notched, turns: 1)).Report!;
        Assert.Equal(straight.Lifting.CentreOfGravity.X, other.Lifting.CentreOfGravity.X, 1e-9);
        Assert.Equal(straight.Lifting.CentreOfGravity.Y, other.Lifting.CentreOfGravity.Y, 1e-9);
        Assert.Equal(straight.Lifting.Hang!.TiltDegrees, other.Lifting.Hang!.TiltDegrees, 1e-9);
        Assert.All(straight.Tension.Zip(other.Tension), pair => Assert.Equal(1.0, pair.First.TensionPascals / pair.Second.TensionPascals, 1e-4));
    }

    // Air is left out: error of a loose bed, none of one that says it is compacted.
    [Theory]
    [InlineData(StrengthRule.GelSpace, false, true)]
    [InlineData(StrengthRule.HandbookCurve, false, true)]
    [InlineData(StrengthRule.HandbookCurve, true, false)]
    [InlineData(StrengthRule.Feret, false, false)]
    public void Rules_without_air_are_refused_for_a_loose_bed(StrengthRule rule, bool compacted, bool refused)
    {
        StrengthResult result = Check(Block(), job => job with { Mix = job.Mix with { Strength = new StrengthLaw { Rule = rule, Compacted = compacted } } });
        Assert.Equal(refused, result.Findings.Any(finding => finding is { Code: "DW5003", Severity: Severity.Error }));
        Assert.Equal(refused, result.Report is null);
    }

    [Theory]
    [InlineData(2.0, true)]
    [InlineData(20.0, false)]
    public void Inserts_bear_four_times_their_leg(double kilonewtons, bool weak)
    {
        InsertLifting inserts = new()
        {
            Points = [new Point3(0.1, 0.15, 0.2), new Point3(0.3, 0.15, 0.2)],
            Embedment = new Length(0.1),
            TestedCapacity = new Force(kilonewtons * 250.0),
            Test = "report 14",
        };
        StrengthResult result = Check(Block(), job => job with { Unit = job.Unit with { Lifting = inserts } });
        Assert.Equal(weak, result.Findings.Any(finding => finding.Code == "DW5004"));
        Assert.Equal((2, 2), (result.Report!.Lifting.Hang!.Legs, result.Report.Lifting.Hang.CarryingLegs));
    }

    [Fact]
    public void Flat_legs_and_straps_on_one_side_are_errors()
    {
        Assert.Contains(Lifted(Straps with { SlingAngle = new Angle(29.0) }).Findings, finding => finding.Code == "DW5005");
        Assert.DoesNotContain(Lifted(Straps with { SlingAngle = new Angle(30.0) }).Findings, finding => finding.Code == "DW5005");
        Assert.Contains(
            Lifted(new StrapLifting { Lines = [new StrapLine(Axis.Y, new Length(0.05)), new StrapLine(Axis.Y, new Length(0.15))] }).Findings,
            finding => finding is { Code: "DW5006", Severity: Severity.Error, Where: not null });
    }

    [Fact]
    public void Straps_off_the_middle_tilt_the_hang()
    {
        StrapLifting aside = new() { Lines = [new StrapLine(Axis.Y, new Length(0.05)), new StrapLine(Axis.Y, new Length(0.25))] };
        StrengthResult result = Lifted(aside);
        Assert.Contains(result.Findings, finding => finding.Code == "DW5007");
        // The hook stands over x = 0.15 m at the height of the top and 60 degrees up from the legs, sqrt(0.1^2 + 0.15^2) m out; the centre of gravity is 0.05 m aside.
        Assert.Equal(Math.Atan2(0.05, 0.1 + Math.Sqrt(0.0325) * Math.Tan(Math.PI / 3.0)) * 180.0 / Math.PI, result.Report!.Lifting.Hang!.TiltDegrees, 0.05);
        Assert.DoesNotContain(Lifted(Straps).Findings, finding => finding.Code == "DW5007");
    }

    // A channel under the block, 200 of 300 mm wide, leaves a third of each strap on mix.
    [Fact]
    public void Strap_over_a_channel_bears_on_little()
    {
        StrengthResult result = Check(Block(p => Math.Max(Solid(p), -Moulds.Block(p, -1.0, 0.05, -1.0, 1.0, 0.25, 0.1))));
        Assert.Contains(result.Findings, finding => finding is { Code: "DW5008", Key.Path: "lifting.lines[0]" });
    }

    // A thin slab lifted by its ends under a great dynamic factor, of cubes so weak that it cracks; and the same slab as it is.
    [Fact]
    public void Slab_that_would_crack_is_an_error_when_lifted()
    {
        Size3 slab = new(0.8, 0.2, 0.03);
        StrapLifting ends = new() { Lines = [new StrapLine(Axis.Y, new Length(0.05)), new StrapLine(Axis.Y, new Length(0.75))], DynamicFactor = 5.0 };
        StrengthResult weak = Slab(0.05e6), sound = Slab(40e6);
        Diagnostic cracked = Assert.Single(weak.Findings, finding => finding is { Code: "DW5009", Severity: Severity.Error });
        Assert.Equal(0.4, cracked.Where!.Value.X, 0.05);
        Assert.Contains(weak.Findings, finding => finding.Code == "DW5010");
        Assert.Null(weak.Report!.LiftDays);
        Assert.DoesNotContain(sound.Findings, finding => finding.Code is "DW5009" or "DW5010");

        StrengthResult Slab(double pascals)
        {
            StrengthLaw law = new() { Measured = [new MeasuredStrength(new Duration(28 * 86400.0), new Temperature(20.0), new Pressure(pascals))] };
            return Check(Block(size: slab), job => job with
            {
                Unit = job.Unit with { OuterBox = slab, Lifting = ends },
                Mix = job.Mix with { Strength = law },
            });
        }
    }

    [Fact]
    public void Cubes_without_strength_give_a_finding_and_no_report()
    {
        StrengthLaw law = new() { Measured = [new MeasuredStrength(new Duration(86400.0), new Temperature(20.0), new Pressure(0.0))] };
        StrengthResult result = Check(Block(), job => job with { Mix = job.Mix with { Strength = law } });
        Assert.Equal("DW5010", Assert.Single(result.Findings).Code);
        Assert.Null(result.Report);
    }

    [Fact]
    public void Nothing_hardened_gives_no_report() =>
        Assert.Equal(new StrengthResult(null, []), Check(Block(_ => 1.0)) with { Findings = [] });

    // The habitat block as drawn: no size of brick fits its foot of 120 mm, its tunnels, niches and relief.
    [Fact]
    public void Tension_of_the_block_moves_under_a_tenth_from_24_to_48_bricks()
    {
        CellGrid grid = SampleUnits.WrackGrid(8);
        TargetField target = Voxelizer.Voxelize(SampleUnits.Shape(SampleUnits.WrackBlock), SampleUnits.WrackPlacement, grid, Moulds.Two, null, TestContext.Current.CancellationToken);
        MoistureResult moisture = Samples.Moisture(grid, i => target.Fraction[i] >= 0.5f ? 0.2125 : 0.0);
        StrapLifting lifting = new() { Lines = [new StrapLine(Axis.Y, new Length(0.2)), new StrapLine(Axis.Y, new Length(0.7))] };
        StrengthReport[] reports = [.. new[] { 24, 48 }.Select(bricks => Check(
            (moisture, SampleUnits.WrackPlacement), job => job with { Unit = SampleUnits.WrackBlock with { Lifting = lifting } }, bricks).Report!)];
        Assert.Equal([24, 48], reports.Select(report => report.Bricks));
        Assert.All(reports, report => Assert.Equal(4, report.Tension.Count));
        for (int i = 0; i < 4; i++)
        {
            TensionResult fine = reports[1].Tension[i];
            TestContext.Current.TestOutputHelper?.WriteLine(
                $"{fine.Case}: {string.Join(", ", reports.Select(report => $"{report.Tension[i].TensionPascals:0} Pa at {report.Tension[i].Where}"))}");
            Assert.InRange(fine.TensionPascals / reports[0].Tension[i].TensionPascals, 0.9, 1.1);
        }
    }

    private static double Solid(Point3 p) => Moulds.Block(p, 0.0, 0.0, 0.0, Box.X, Box.Y, Box.Z);

    private static double Notched(Point3 p) => Math.Max(Solid(p), -Moulds.Block(p, 0.25, -1.0, 0.1, 1.0, 0.2, 1.0));

    private static StrengthResult Lifted(Lifting lifting) => Check(Block(), job => job with { Unit = job.Unit with { Lifting = lifting } });

    // Water/cement 0.50 throughout: the body alone decides what hardens.
    private static (MoistureResult Moisture, UnitPlacement Placement) Block(Func<Point3, double>? distance = null, Size3? size = null, int turns = 0)
    {
        Size3 box = size ?? Box;
        UnitPlacement placement = Moulds.Placement(box) with { QuarterTurns = turns };
        CellGrid grid = Moulds.Grid(placement.TurnedBox);
        return (Samples.Moisture(grid, i =>
        {
            Point3 centre = placement.ToUnit(grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny)));
            return (distance ?? (p => Moulds.Block(p, 0.0, 0.0, 0.0, box.X, box.Y, box.Z)))(centre) < 0.0 ? 0.2125 : 0.0;
        }), placement);
    }

    private static StrengthResult Check(
        (MoistureResult Moisture, UnitPlacement Placement) body, Func<JobDescription, JobDescription>? change = null, int bricks = 20)
    {
        JobDescription job = Samples.Job(SampleUnits.Plain(Box.X, Box.Y, Box.Z) with { Lifting = Straps });
        job = change?.Invoke(job) ?? job;
        int cells = body.Moisture.Hardened.Sum(cell => cell);
        double volume = cells * body.Moisture.Grid.CellCubicMetres, water = 0.0;
        for (int i = 0; i < body.Moisture.Hardened.Length; i++)
        {
            water += body.Moisture.Hardened[i] * body.Moisture.VolumetricWaterContent[i] * body.Moisture.Grid.CellCubicMetres;
        }

        return StrengthCheck.Check(
            new StrengthQuestion
            {
                Job = job,
                Placement = body.Placement,
                Moisture = body.Moisture,
                Solid = new SolidSummary { TargetCubicMetres = volume, HardenedCubicMetres = volume, ShapeMatch = 1.0, WaterInHardenedCubicMetres = water, MeanWaterCement = 0.5, LargestWaterCement = 0.5 },
                LiftKilograms = volume * 1700.0 + water * 1000.0,
                Trapped = new TrappedMixReport(0.025, 0.5, [new SolidPiece(0.0003, 0.5, new Point3(0.2, 0.15, 0.1), new Size3(0.1, 0.1, 0.03))]),
                Bricks = bricks,
            },
            Moulds.Two, TestContext.Current.CancellationToken);
    }
}
