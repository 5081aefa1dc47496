using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Dosing;

public sealed class DoseSolverOutcomeTests
{
    private const double Pitch = 0.0508;

    private static DoseResult Solve(JobDescription job, int solves, CancellationToken cancellation, IProgress<Progress>? progress = null)
    {
        PlacementResult place = Placer.Place(job, 4);
        DoseSolverOptions options = new() { CoarseCells = 4, FineCells = 4, CoarseSolves = 0, FineSolves = solves };
        return DoseSolver.Solve(
            job, ReefShapeBuilder.Build(job.Unit).Shape, place.Placement!, place.Lattice!, options, new Parallelism(2), progress, cancellation);
    }

    /// <summary>A block of 6 x 6 x 4 voxels in straight layers, with a hollow to one side when wanted.</summary>
    private static JobDescription Block(double? hollowX = null)
    {
        JobDescription job = Targets.SmallCube();
        Cavity[] cavities = hollowX is { } x
            ? [new FormedCavity { Name = "hollow", Form = new SphereForm { Centre = new Point3(x, 0.12, 0.16), Diameter = new Length(0.13) } }]
            : [];
        return job with
        {
            Unit = job.Unit with { OuterBox = new Size3(6 * Pitch, 6 * Pitch, 4 * Pitch), Rounding = new Length(0.0), Tunnels = [], Cavities = cavities },
            Printer = job.Printer with { Head = job.Printer.Head with { CanShiftLayers = false } },
        };
    }

    /// <summary>Needles that give 2 mL and no other dose, a small part of what a voxel needs: every round gives the same doses, so nothing is gained.</summary>
    [Fact]
    public void Needles_without_any_room_stall_the_correction_and_the_finding_says_so()
    {
        JobDescription job = Block();
        job = job with { Printer = job.Printer with { Needle = job.Printer.Needle with { Most = job.Printer.Needle.Least } } };

        DoseResult result = Solve(job, 6, TestContext.Current.CancellationToken);

        Assert.True(result.Stalled);
        Assert.All(result.History, step => Assert.Equal(result.History[0].Objective, step.Objective));
        Assert.Single(result.Findings, finding => finding.Code == "DW3014");
    }

    [Fact]
    public void Correction_that_gains_raises_no_stall()
    {
        DoseResult result = Solve(Block(0.08), 6, TestContext.Current.CancellationToken);

        Assert.True(result.History.Min(step => step.Objective) < 0.99 * result.History.Where(step => step.Kind == DoseStepKind.Plain).Min(step => step.Objective));
        Assert.False(result.Stalled);
        Assert.DoesNotContain(result.Findings, finding => finding.Code == "DW3014");
    }

    [Fact]
    public void Correction_cancelled_before_it_begins_throws()
    {
        using CancellationTokenSource source = new();
        source.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => Solve(Block(), 3, source.Token));
    }

    [Fact]
    public void Correction_cancelled_after_its_first_round_throws_and_tells_no_second()
    {
        using CancellationTokenSource source = new();
        Canceller canceller = new(source);

        Assert.ThrowsAny<OperationCanceledException>(() => Solve(Block(0.08), 6, source.Token, canceller));
        Assert.Equal(1, canceller.Told);
    }

    /// <summary>The hollow on the other side: the doses on the other side, within a pump step.</summary>
    [Fact]
    public void Mirrored_unit_in_straight_layers_gets_mirrored_doses()
    {
        DosePlan left = Solve(Block(0.08), 5, TestContext.Current.CancellationToken).Doses;
        DosePlan right = Solve(Block(6 * Pitch - 0.08), 5, TestContext.Current.CancellationToken).Doses;

        Lattice lattice = left.Lattice;
        Assert.False(lattice.ShiftedLayers);
        bool differs = false;
        for (int i = 0; i < lattice.Count; i++)
        {
            int x = i % lattice.Columns, mirrored = i - x + (lattice.Columns - 1 - x);
            Assert.InRange(left.Steps[i] - right.Steps[mirrored], -1, 1);
            differs |= left.Steps[i] != left.Steps[mirrored];
        }

        Assert.True(differs, "The doses do not depend on the side of the hollow.");
    }

    private sealed class Canceller(CancellationTokenSource source) : IProgress<Progress>
    {
        public int Told { get; private set; }

        public void Report(Progress value)
        {
            Told++;
            source.Cancel();
        }
    }
}
