using Dewstone.Compute.Dosing;
using Dewstone.Compute.Studies;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Studies;

public sealed class LimitsStudyTests
{
    private static readonly Lazy<LimitsCard> Card = new(() => Run(StraightPrinter(), 2));

    private static Printer StraightPrinter() => Samples.YardPrinter() with { Head = Samples.YardPrinter().Head with { CanShiftLayers = false } };

    private static LimitsCard Run(Printer printer, int threads) => LimitsStudy.Run(
        new LimitsQuestion { Mix = Samples.EstuaryMix(), Printer = printer }, new Parallelism(threads), null, TestContext.Current.CancellationToken).Card!;

    private static StudyBench Bench(Printer printer, double closing = 28.4) => new(
        Samples.Job(Samples.Box(0.1, 0.1, 0.1), printer: printer), closing, new DoseSolverOptions { FineCells = 4, CoarseSolves = 0, FineSolves = 8 }, 8);

    public static TheoryData<bool> Upright => [true, false];

    /// <summary>Holes open and stay so with rising size: one switch from closed to open in each scan, and never less clear than a cell below the one before.</summary>
    [Theory]
    [MemberData(nameof(Upright))]
    public void Holes_open_once_and_widen(bool upright)
    {
        HoleLimits holes = upright ? Card.Value.Layerings[0].UprightHoles : Card.Value.Layerings[0].LevelHoles;

        foreach (IGrouping<int, TestHole> scan in holes.Tried.GroupBy(hole => hole.Place))
        {
            TestHole[] rising = [.. scan];
            Assert.Equal(rising.Select(hole => hole.DrawnMetres).Order(), rising.Select(hole => hole.DrawnMetres));
            Assert.Equal(rising.OrderBy(hole => hole.ClearMetres > 0.0).Select(hole => hole.DrawnMetres), rising.Select(hole => hole.DrawnMetres));
            Assert.All(rising.Zip(rising.Skip(1)), pair => Assert.True(pair.Second.ClearMetres > pair.First.ClearMetres - 0.05 / 8, $"{pair}"));
            Assert.All(rising, hole => Assert.True(hole.ClearMetres < hole.DrawnMetres, $"{hole}"));
        }

        Assert.Equal(0.005, Card.Value.HoleStepMetres, 1e-12);
        Assert.True(holes.Open.BestMetres <= holes.Open.WorstMetres && holes.Open.WorstMetres < 0.05);
    }

    [Theory]
    [MemberData(nameof(Upright))]
    public void Walls_become_sound_once(bool upright)
    {
        WallLimits walls = upright ? Card.Value.Layerings[0].UprightWalls : Card.Value.Layerings[0].Slabs;

        foreach (IGrouping<int, TestWall> scan in walls.Tried.GroupBy(wall => wall.Place))
        {
            Assert.Equal(scan.OrderBy(wall => wall.IsSound).Select(wall => wall.DrawnMetres), scan.Select(wall => wall.DrawnMetres));
        }

        // A single plane of needles in the middle carries a wall of about a pitch; midway between planes it takes about two.
        Assert.InRange(walls.Sound.BestMetres!.Value, 0.04, 0.06);
        Assert.InRange(walls.Sound.WorstMetres!.Value, 0.08, 0.12);
    }

    /// <summary>No figure depends on the number of threads.</summary>
    [Fact]
    public void Card_is_the_same_with_other_threads()
    {
        LimitsCard one = Run(StraightPrinter(), 1);

        Assert.Equal(Card.Value.Window, one.Window);
        Assert.Equal(Card.Value.Layerings[0].LevelHoles.Tried, one.Layerings[0].LevelHoles.Tried);
        Assert.Equal(Card.Value.Layerings[0].UprightHoles.Tried, one.Layerings[0].UprightHoles.Tried);
        Assert.Equal(Card.Value.Layerings[0].UprightWalls.Tried, one.Layerings[0].UprightWalls.Tried);
        Assert.Equal(Card.Value.Layerings[0].Slabs.Tried, one.Layerings[0].Slabs.Tried);
    }

    /// <summary>A block turned by a quarter about z is the same block: nothing in mix or machine tells x from y under a head that covers it.</summary>
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Turned_block_gives_the_same(bool shifted)
    {
        StudyBench bench = Bench(Samples.YardPrinter());
        (TestHole[] Holes, TestWall[] Walls) Along(Axis axis)
        {
            CancellationToken cancellation = TestContext.Current.CancellationToken;
            HoleBlock holes = new(bench.Frame(axis), [[(0.06, 0), (0.09, 1)]], LimitsStudy.HolePhases(axis, shifted), bench.Cells);
            WallBlock walls = new(bench.Frame(axis), [[(0.06, 0), (0.09, 1)]], LimitsStudy.WallPhases(axis, shifted));
            Parallelism threads = new(2);
            return ([.. holes.Measure(bench.Wet(holes.Unit, shifted, threads, cancellation), threads)],
                [.. walls.Measure(bench.Wet(walls.Unit, shifted, threads, cancellation))]);
        }

        (TestHole[] holesX, TestWall[] wallsX) = Along(Axis.X);
        (TestHole[] holesY, TestWall[] wallsY) = Along(Axis.Y);

        Assert.Equal(wallsX, wallsY);
        Assert.All(holesX.Zip(holesY), pair => Assert.Equal(pair.First.ClearMetres, pair.Second.ClearMetres, 1e-6));
        Assert.All(holesX, hole => Assert.True(hole.ClearMetres > 0.0));
    }

    /// <summary>
    /// The second place lies midway between neighbouring needles, across the hole: with every other layer shifted by half a pitch along x and y, needles seen
    /// from above stand at 0, 1/2, 1 along both; seen from a side the layers stay a layer height apart.
    /// </summary>
    [Theory]
    [InlineData(Axis.X, false, 1.0, 1.0)]
    [InlineData(Axis.Z, false, 1.0, 1.0)]
    [InlineData(Axis.X, true, 0.5, 1.0)]
    [InlineData(Axis.Y, true, 0.5, 1.0)]
    [InlineData(Axis.Z, true, 0.5, 0.5)]
    public void Places_of_a_hole_are_a_needle_and_midway_between(Axis axis, bool shifted, double apartU, double apartV) =>
        Assert.Equal([(0.0, 0.0), (apartU / 2.0, apartV / 2.0)], LimitsStudy.HolePhases(axis, shifted));

    /// <summary>
    /// The wetting equation has no length but the pitch, and a finer pitch lets water reach corners sooner: at half the pitch, holes open and walls are sound at
    /// no more than 0.75 of their size.
    /// </summary>
    [Fact]
    public void Smaller_pitch_holds_smaller_holes_and_walls()
    {
        Printer yard = Samples.YardPrinter();
        Printer fine = yard with
        {
            Grid = yard.Grid with { Pitch = new Length(0.025), LayerHeight = new Length(0.025) },
            Needle = yard.Needle with { TipDepth = new Length(0.0125), Least = Volume.FromMillilitres(0.25), Step = Volume.FromMillilitres(0.02) },
        };
        CancellationToken cancellation = TestContext.Current.CancellationToken;
        Parallelism threads = new(2);
        StudyBench coarse = Bench(yard), finer = Bench(fine, 28.4 / 8);

        double holes = LimitsStudy.Holes(coarse, Axis.Z, false, threads, cancellation).Open.WorstMetres!.Value;
        double fineHoles = LimitsStudy.Holes(finer, Axis.Z, false, threads, cancellation).Open.WorstMetres!.Value;
        double walls = LimitsStudy.Walls(coarse, Axis.X, false, threads, cancellation).Sound.WorstMetres!.Value;
        double fineWalls = LimitsStudy.Walls(finer, Axis.X, false, threads, cancellation).Sound.WorstMetres!.Value;

        Assert.True(fineHoles <= 0.75 * holes, $"{fineHoles} {holes}");
        Assert.True(fineWalls <= 0.75 * walls, $"{fineWalls} {walls}");
    }

    [Fact]
    public void Printer_at_fault_gives_findings_and_no_card()
    {
        Printer yard = Samples.YardPrinter();
        LimitsResult odd = LimitsStudy.Run(
            new LimitsQuestion { Mix = Samples.EstuaryMix(), Printer = yard, Cells = 7 }, new Parallelism(1), null, TestContext.Current.CancellationToken);

        Assert.Null(odd.Card);
        Assert.Equal("DW4015", Assert.Single(odd.Findings, finding => finding.Severity == Severity.Error).Code);
    }
}
