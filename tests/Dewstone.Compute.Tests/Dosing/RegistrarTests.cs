using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

/// <summary>Where small units are stood; all in the invented yard.</summary>
public sealed class RegistrarTests
{
    private static Registration Choose(JobDescription job, int threads = 2, IProgress<Progress>? progress = null) => Registrar.Choose(
        job, ReefShapeBuilder.Build(job.Unit).Shape, new Parallelism(threads), progress, TestContext.Current.CancellationToken);

    private static JobDescription Job(double x, double y, double z, bool canShift = false, NeedleTable? needles = null, Printer? printer = null)
    {
        Printer small = printer ?? Samples.SmallPrinter(10, 10, 8);
        return Samples.Job(Samples.Box(x, y, z), printer: small with { Head = small.Head with { CanShiftLayers = canShift } }, needles: needles);
    }

    private static NeedleTable Blocked(params (int Column, int Row)[] needles) => new()
    {
        Needles = [.. needles.Select(n => new NeedleState { Column = n.Column, Row = n.Row, Condition = NeedleCondition.Blocked })],
    };

    private static PlacementWish At(int turns, double x, double y, double z, bool shifted = false) =>
        new() { QuarterTurns = turns, Shift = new Point3(x, y, z), ShiftedLayers = shifted };

    // Least objective of the correction as the dose solver itself runs it on 4 cells, its own voxels laid in place.
    private static double Corrected(JobDescription job, PlacementWish wish, int solves)
    {
        PlacementResult place = Placer.Place(job, 4, wish);
        DoseSolverOptions options = new() { CoarseSolves = solves, FineCells = 4, FineSolves = 1 };
        DoseResult result = DoseSolver.Solve(
            job, ReefShapeBuilder.Build(job.Unit).Shape, place.Placement!, place.Lattice!, options, new Parallelism(2), null,
            TestContext.Current.CancellationToken);
        return result.History.Where(step => step.Kind == DoseStepKind.Corrected).Take(solves).Min(step => step.Objective);
    }

    [Fact]
    public void Box_of_whole_pitches_stays_in_the_middle()
    {
        Registration chosen = Choose(Job(0.25, 0.25, 0.2));

        Assert.Equal(At(0, 0, 0, 0), chosen.Wish);
        Assert.Equal(RegistrationReasons.None, chosen.Reasons);
        Assert.False(chosen.Fixed);
        Assert.True(chosen.Trials.Count > 6);
        Assert.Empty(chosen.Findings);
    }

    /// <summary>Four and a half pitches: half a pitch lacks at one side, or a quarter at both. Wherever it goes, the dose solver must agree that it is better there.</summary>
    [Fact]
    public void Box_off_by_half_a_pitch_is_moved_to_where_the_correction_matches_better()
    {
        JobDescription job = Job(0.225, 0.25, 0.2);

        Registration chosen = Choose(job);

        Assert.NotEqual(0.0, chosen.Wish.Shift!.Value.X);
        Assert.Equal(0.0, chosen.Wish.Shift.Value.Y);
        Assert.Equal(RegistrationReasons.ShiftMatchesBetter, chosen.Reasons);
        double middle = Corrected(job, At(0, 0, 0, 0), 10), moved = Corrected(job, chosen.Wish, 10);
        Assert.True(moved < 0.99 * middle, $"{middle:0.000} L -> {moved:0.000} L");
    }

    /// <summary>Trials wet the same doses on the same cells as the dose solver does: the first, which begins with plain doses, has its objective after as many solves.</summary>
    [Theory]
    [InlineData(0.0, false)]
    [InlineData(0.013, false)]
    [InlineData(0.013, true)]
    public void First_trial_has_the_objective_of_the_dose_solver(double shift, bool shiftedLayers)
    {
        JobDescription job = Targets.SmallCube();
        PlacementWish place = At(0, shift, -shift, 0, shiftedLayers);
        job = job with { Unit = job.Unit with { Place = place with { ShiftedLayers = null } } };

        RegistrationTrial trial = Choose(job).Trials.First(t => t.Wish.ShiftedLayers == shiftedLayers);

        Assert.Equal(place, trial.Wish);
        double own = Corrected(job, place, trial.Solves);
        Assert.Equal(own, trial.ObjectiveLitres, 1e-5 * own);
    }

    [Fact]
    public void What_the_file_fixes_stays_fixed()
    {
        JobDescription job = Job(0.225, 0.15, 0.1, canShift: true);
        Registration With(PlacementWish wish) => Choose(job with { Unit = job.Unit with { Place = wish } });

        PlacementWish all = At(3, 0.005, 0.01, 0.02, shifted: true);
        Registration chosen = With(all);
        Assert.True(chosen.Fixed);
        Assert.Equal(all, chosen.Wish);
        Assert.Equal(0, chosen.Solves);

        Assert.Equal(2, With(new PlacementWish { QuarterTurns = 2 }).Wish.QuarterTurns);
        Assert.Equal(new Point3(0.005, 0.01, 0.02), With(new PlacementWish { Shift = new Point3(0.005, 0.01, 0.02) }).Wish.Shift);
        Assert.True(With(new PlacementWish { ShiftedLayers = true }).Wish.ShiftedLayers);
        Assert.False(With(new PlacementWish { ShiftedLayers = false }).Wish.ShiftedLayers);
    }

    [Fact]
    public void Layers_are_shifted_only_where_the_head_can()
    {
        JobDescription job = Targets.SmallCube();
        JobDescription cannot = job with { Printer = job.Printer with { Head = job.Printer.Head with { CanShiftLayers = false } } };

        Assert.DoesNotContain(Choose(cannot).Trials, t => t.Wish.ShiftedLayers == true);
        Assert.Contains(Choose(job).Trials, t => t.Wish.ShiftedLayers == true);
    }

    /// <summary>0.45 by 0.2 m in a bin of 0.3 by 0.5 m.</summary>
    [Fact]
    public void Box_that_fits_only_turned_is_turned()
    {
        JobDescription job = Job(0.45, 0.2, 0.1, printer: Samples.SmallPrinter(6, 10, 5));

        Registration chosen = Choose(job);

        Assert.Equal(1, chosen.Wish.QuarterTurns);
        Assert.True(chosen.Reasons.HasFlag(RegistrationReasons.TurnedToFit));
        Assert.Null(chosen.BlockedCentred);
        Assert.Empty(Placer.Place(job, 4, chosen.Wish).Findings);
    }

    [Fact]
    public void Box_that_fits_nowhere_is_left_for_placing_to_refuse()
    {
        JobDescription job = Job(0.55, 0.55, 0.1);

        Registration chosen = Choose(job);

        Assert.Equal(At(0, 0, 0, 0), chosen.Wish);
        Assert.Empty(chosen.Trials);
        Assert.Null(chosen.Blocked);
        Assert.Contains(Placer.Place(job, 4, chosen.Wish).Findings, f => f.Code == "DW4002");
    }

    [Fact]
    public void Box_that_fills_its_bin_is_not_moved()
    {
        JobDescription job = Job(0.25, 0.25, 0.2, needles: Blocked((3, 3)), printer: Samples.SmallPrinter(5, 5, 5));

        Registration chosen = Choose(job);

        Assert.Equal(At(chosen.Wish.QuarterTurns!.Value, 0, 0, 0), chosen.Wish);
        Assert.All(chosen.Trials, t => Assert.Equal(5, t.Layers));
    }

    /// <summary>Six by four pitches, centred over columns 3 to 8 and rows 4 to 7: the needle at (3, 4) lies under a corner unless the unit is turned to columns 4 to 7.</summary>
    [Fact]
    public void Blocked_needle_under_a_corner_is_avoided_by_a_turn()
    {
        Registration chosen = Choose(Job(0.3, 0.2, 0.1, needles: Blocked((3, 4))));

        Assert.Equal(1, chosen.Wish.QuarterTurns);
        Assert.True(chosen.Reasons.HasFlag(RegistrationReasons.AvoidsNeedles));
        Assert.Equal(1, chosen.BlockedCentred!.Needles);
        // One column of two full voxels of 0.125 L out of 6 x 4 columns.
        Assert.Equal(0.25, chosen.BlockedCentred.Litres, 0.001);
        Assert.Equal(1.0 / 24.0, chosen.BlockedCentred.Share, 1e-4);
        Assert.Equal(0, chosen.Blocked!.Needles);
        Assert.Equal(0.0, chosen.Blocked.Litres);
        var finding = Assert.Single(chosen.Findings);
        Assert.Equal("DW4018", finding.Code);
        Assert.Contains("avoid 1 of 1 blocked needles (turn: 90 deg", finding.Message);
        Assert.Contains("0 L of the wanted solid lie under blocked needles instead of 0.25 L", finding.Message);
        Assert.NotNull(finding.Key);
    }

    /// <summary>Where the turn is fixed, the same needle is avoided by one pitch along x.</summary>
    [Fact]
    public void Blocked_needle_is_avoided_by_a_whole_pitch_where_the_turn_is_fixed()
    {
        JobDescription job = Job(0.3, 0.2, 0.1, needles: Blocked((3, 4)));
        job = job with { Unit = job.Unit with { Place = new PlacementWish { QuarterTurns = 0 } } };

        Registration chosen = Choose(job);

        Assert.Equal(At(0, 0.05, 0, 0), chosen.Wish);
        Assert.Equal(0, chosen.Blocked!.Needles);
        Assert.Equal("DW4018", Assert.Single(chosen.Findings).Code);
    }

    /// <summary>A blocked needle beside the unit, and one that no place avoids, do not move it.</summary>
    [Fact]
    public void Blocked_needle_that_does_not_matter_moves_nothing()
    {
        Registration beside = Choose(Job(0.3, 0.2, 0.1, needles: Blocked((1, 1))));
        Assert.Equal(At(0, 0, 0, 0), beside.Wish);
        Assert.Empty(beside.Findings);

        JobDescription stuck = Job(0.3, 0.2, 0.1, needles: Blocked((3, 4)));
        Registration kept = Choose(stuck with { Unit = stuck.Unit with { Place = new PlacementWish { QuarterTurns = 0, Shift = default(Point3) } } });
        Assert.Equal(1, kept.Blocked!.Needles);
        Assert.Empty(kept.Findings);
    }

    /// <summary>
    /// A box that fills its bin of 8 by 5 positions, with a slot through its eastern half that leaves walls of one voxel: the blocked needle (8, 3) lies under the
    /// eastern wall, or after half a turn under the edge of the solid half. As much is wanted there, but its neighbours win back more.
    /// </summary>
    [Fact]
    public void Thin_wall_is_kept_clear_before_thick_solid()
    {
        JobDescription job = Job(0.4, 0.25, 0.15, needles: Blocked((8, 3)), printer: Samples.SmallPrinter(8, 5, 5));
        job = job with
        {
            Unit = job.Unit with
            {
                Cavities = [new FormedCavity { Name = "slot", Form = new BlockForm { Centre = new Point3(0.275, 0.125, 0.075), Size = new Size3(0.15, 0.15, 0.2) } }],
            },
        };

        Registration chosen = Choose(job);

        Assert.Equal(0.375, chosen.BlockedCentred!.Litres, 1e-3);
        Assert.Equal(0.375, chosen.Blocked!.Litres, 1e-3);
        Assert.Equal(2, chosen.Wish.QuarterTurns);
    }

    [Fact]
    public void Choice_does_not_depend_on_the_threads()
    {
        JobDescription job = Job(0.225, 0.2, 0.14, canShift: true, needles: Blocked((4, 4), (7, 5)));

        Registration one = Choose(job, threads: 1), three = Choose(job, threads: 3);

        Assert.Equal(one.Wish, three.Wish);
        Assert.Equal(one.Trials, three.Trials);
        Assert.Equal(one.Solves, three.Solves);
    }

    [Fact]
    public void Progress_is_told_after_each_judgement_and_never_beyond_the_whole()
    {
        List<Progress> heard = [];

        Choose(Job(0.2, 0.2, 0.1), progress: new Heard(heard));

        Assert.NotEmpty(heard);
        Assert.All(heard, p => Assert.InRange(p.Done, 0.0, 1.0));
        Assert.All(heard, p => Assert.Equal("placing", p.Stage));
    }

    private sealed class Heard(List<Progress> all) : IProgress<Progress>
    {
        public void Report(Progress value) => all.Add(value);
    }
}
