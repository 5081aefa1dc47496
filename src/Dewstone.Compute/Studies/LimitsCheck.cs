using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>Holds a drawing and its doses against what mix and printer can hold, without making the whole limits card.</summary>
/// <remarks>
/// The dose window needs the closing dose alone, which the doses have brought along. For the rest, the narrowest opening and the thinnest wall of the
/// drawing, when they are narrow at all, are each tried in a small block of their size and direction, at both places of the card. The blocks are dosed on
/// coarse cells only: what they say agrees with the card to two steps of its sizes (held by test).
/// </remarks>
public static class LimitsCheck
{
    /// <summary>Pitches below which an opening is tried.</summary>
    public const double HolePitches = 2.0;

    /// <summary>Pitches below which a wall is tried.</summary>
    public const double WallPitches = 2.4;

    private const int JudgedCells = 8;
    private static readonly Parallelism OneThread = new(1);
    private static readonly DoseSolverOptions Coarse = new() { FineCells = 4, CoarseSolves = 0, FineSolves = 10 };

    /// <summary>Checks the dose window.</summary>
    /// <param name="job">Unit, mix, printer and needles.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="closingMillilitres">Least dose that leaves no dry pocket, mL.</param>
    /// <returns>Finding DW3033 or none; none where nothing is known of the needles, or where the lean band is told as DW3005.</returns>
    public static IReadOnlyList<Diagnostic> Window(JobDescription job, Lattice lattice, double closingMillilitres)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        double limit = job.Unit.Require.WaterCement?.Max ?? DoseWindowStudy.DefaultWaterCement;
        DoseWindow window = DoseWindowStudy.Of(job, lattice, limit, closingMillilitres);
        if (!window.SpreadIsKnown || window.IsWideEnough || window.HalfMillilitres <= 0.0)
        {
            return [];
        }

        double two = window.TwoDeviationsMillilitres(window.WorstRepeatability);
        return
        [
            LimitFindings.WindowTooNarrow.At(
                $"a full voxel sets well with {window.ClosingMillilitres:0.0} to {window.GreatestMillilitres:0.0} mL, {window.HalfMillilitres:0.0} mL either way; two standard deviations of a dose are more at {window.NeedlesTooLoose} of {window.Needles} needles, up to {two:0.0} mL",
                window.Drift > window.WorstRepeatability ? "check the needles more often, so that they drift less" : "recalibrate the needles, or allow a higher water_cement.max",
                new KeyPath(DescriptionKind.Printer, window.Drift > window.WorstRepeatability ? "needle.drift" : "needle.repeatability")),
        ];
    }

    /// <summary>Tries the narrowest opening and the thinnest wall of a drawing.</summary>
    /// <param name="job">Unit, mix and printer.</param>
    /// <param name="shape">The wanted solid.</param>
    /// <param name="shifted">Whether every other layer is shifted.</param>
    /// <param name="closingMillilitres">Least dose that leaves no dry pocket, mL.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at within each wetting.</param>
    /// <returns>Findings DW3031 and DW3032.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static IReadOnlyList<Diagnostic> Features(
        JobDescription job, ReefShape shape, bool shifted, double closingMillilitres, Parallelism parallelism, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shape);
        StudyBench bench = new(job, closingMillilitres, Coarse, JudgedCells);
        Opening? opening = Narrowest(job.Unit);
        double thick = Math.Max(job.Printer.Grid.Pitch.Metres, job.Printer.Grid.LayerHeight.Metres) * WallPitches;
        ThinWall? wall = ThinWall.Under(shape, new OpeningGaps(shape), thick).MinBy(found => found.Metres);
        var findings = new Diagnostic?[2];
        List<Action> tries = [];
        if (opening is not null && opening.Metres < HolePitches * job.Printer.Grid.Pitch.Metres)
        {
            tries.Add(() => findings[0] = Hole(bench, opening, shifted, cancellation));
        }

        if (wall is not null && wall.Metres < WallPitches * bench.Frame(wall.Normal).StepA)
        {
            tries.Add(() => findings[1] = Wall(bench, wall, shifted, cancellation));
        }

        Parallel.ForEach(
            tries, new ParallelOptions { MaxDegreeOfParallelism = Math.Max(1, parallelism.Threads), CancellationToken = cancellation }, attempt => attempt());
        return [.. findings.OfType<Diagnostic>()];
    }

    private static Diagnostic? Hole(StudyBench bench, Opening opening, bool shifted, CancellationToken cancellation)
    {
        Axis axis = opening.Along;
        HoleBlock block = new(bench.Frame(axis), [[(opening.Metres, 0), (opening.Metres, 1)]], LimitsStudy.HolePhases(axis, shifted), bench.Cells);
        double clear = block.Measure(bench.Wet(block.Unit, shifted, OneThread, cancellation), OneThread).Min(hole => hole.ClearMetres);
        return clear > 0.0 ? null : LimitFindings.HoleTooSmall.At(
            $"\"{opening.Name}\" is {UnitKeys.Millimetres(opening.Metres)} at its narrowest; a test hole of that width closes on this mix and printer",
            "make it wider, or see `dewstone limits` for the least that stays open", opening.Key);
    }

    private static Diagnostic? Wall(StudyBench bench, ThinWall thin, bool shifted, CancellationToken cancellation)
    {
        WallBlock block = new(bench.Frame(thin.Normal), [[(thin.Metres, 0), (thin.Metres, 1)]], LimitsStudy.WallPhases(thin.Normal, shifted));
        TestWall worst = block.Measure(bench.Wet(block.Unit, shifted, OneThread, cancellation))
            .OrderBy(wall => wall.IsSound).ThenBy(wall => wall.LeastSetShare).First();
        return worst.IsSound ? null : LimitFindings.WallTooThin.At(
            $"the wall between {thin.Says} is {UnitKeys.Millimetres(thin.Metres)} thick; of a test wall of that thickness at a bad place against the needles {Sets(worst)}",
            "make it thicker, or see `dewstone limits` for the least that is sound", thin.Key) with
        {
            Where = thin.Middle,
            Related = thin.Related(),
        };
    }

    private static string Sets(TestWall wall) => wall.LeastSetShare >= TestWall.SoundShare
        ? "the middle third does not set all through"
        : wall.LeastSetShare > 0.0 ? $"only {100.0 * wall.LeastSetShare:0} % sets at its thinnest" : "nothing sets midway between needles";

    private static Opening? Narrowest(ReefUnit unit)
    {
        List<Opening> openings = [];
        for (int i = 0; i < unit.Tunnels.Count; i++)
        {
            Tunnel tunnel = unit.Tunnels[i];
            Axis along = tunnel is AxisTunnel straight ? straight.Along : Axis.X;
            openings.Add(new Opening(tunnel.Name, FeatureSizeCheck.Narrowest(tunnel.Section), along, UnitKeys.Tunnel(i)));
        }

        for (int i = 0; i < unit.Cavities.Count; i++)
        {
            Cavity cavity = unit.Cavities[i];
            double metres = cavity is FormedCavity formed ? FeatureSizeCheck.Narrowest(formed.Form) : ((ScatteredCavities)cavity).LeastDiameter.Metres;
            openings.Add(new Opening(cavity.Name, metres, Axis.X, UnitKeys.Cavity(i)));
        }

        return openings.MinBy(opening => opening.Metres);
    }

    private sealed record Opening(string Name, double Metres, Axis Along, KeyPath Key);
}
