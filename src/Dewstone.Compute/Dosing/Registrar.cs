using System.Globalization;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// Chooses where a unit stands on the needle grid where its file leaves that free: first the turn and whole pitches that keep it clear of blocked needles
/// (<see cref="BinPlaceSearch"/>), then the quarters of a voxel and the way of layering after which the corrected doses come nearest to the wanted solid
/// (<see cref="PhaseSearch"/>).
/// </summary>
/// <remarks>
/// A plain dose exaggerates what the place within a voxel does, so every place is judged after the first solves of the correction, begun with what the
/// correction learned in the middle of the bin (<see cref="LearnedDoses"/>). A place that needs a further layer must gain <see cref="LayerShare"/> more.
/// </remarks>
public static class Registrar
{
    /// <summary>What one further layer must gain, share of the objective: it costs a spreading and mix. Of our own choice.</summary>
    public const double LayerShare = 0.02;

    /// <summary>Chooses.</summary>
    /// <param name="job">Unit, mix, printer and needles.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="parallelism">Threads; no bit of the result depends on them.</param>
    /// <param name="progress">Told after each solve; may be null.</param>
    /// <param name="cancellationToken">Looked at within each solve.</param>
    /// <returns>The place, what was tried and why; when the unit fits nowhere, the place that its file asks for, for <see cref="Placer"/> to say why not.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static Registration Choose(
        JobDescription job, ReefShape shape, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shape);
        PlacementWish asked = job.Unit.Place;
        bool isFixed = asked is { QuarterTurns: not null, Shift: not null, ShiftedLayers: not null };
        PlacementWish centred = new()
        {
            QuarterTurns = asked.QuarterTurns ?? 0,
            Shift = asked.Shift ?? default(Point3),
            ShiftedLayers = asked.ShiftedLayers ?? false,
        };
        if (BinPlaceSearch.Find(job, shape, parallelism, cancellationToken) is not { } inBin)
        {
            return new Registration { Wish = centred, Fixed = isFixed };
        }

        bool mayShiftLayers = asked.ShiftedLayers is null && job.Printer.Head.CanShiftLayers;
        RegistrationTrials trials = new(job, shape, inBin, parallelism, progress, cancellationToken);
        PlacementWish wish = asked.Shift is null || mayShiftLayers
            ? trials.WishAt(PhaseSearch.Find(
                new GridPhase(0, 0, 0, inBin.ShiftedLayers == true), asked.Shift is null, mayShiftLayers, trials.PerPlace, trials.JudgeLayers, trials.Judge,
                trials.JudgeLayersAhead, trials.JudgeAhead))
            : inBin;
        BlockedSolid? before = Count(centred), after = Count(wish);
        RegistrationReasons reasons = before is null ? RegistrationReasons.TurnedToFit
            : inBin != centred ? RegistrationReasons.AvoidsNeedles : RegistrationReasons.None;
        reasons |= wish.Shift != inBin.Shift ? RegistrationReasons.ShiftMatchesBetter : RegistrationReasons.None;
        reasons |= wish.ShiftedLayers != inBin.ShiftedLayers ? RegistrationReasons.ShiftedLayersMatchBetter : RegistrationReasons.None;
        return new Registration
        {
            Wish = wish,
            Fixed = isFixed,
            Reasons = reasons,
            Trials = trials.Tried,
            Solves = trials.Solves,
            BlockedCentred = before,
            Blocked = after,
            Findings = reasons.HasFlag(RegistrationReasons.AvoidsNeedles) ? [Avoided(job, wish, before!, after!)] : [],
        };

        BlockedSolid? Count(PlacementWish place) =>
            Placer.Place(job, RegistrationField.Cells, place) is { Placement: { } placement, Lattice: { } lattice }
                ? new BlockedNeedles(job, lattice).Count(lattice, BinPlaceSearch.Fractions(shape, placement, lattice, parallelism, cancellationToken))
                : null;
    }

    /// <summary>Chooses turn and whole pitches alone, as <see cref="Choose"/> does first: where the unit fits and keeps clear of blocked needles; nothing is wetted.</summary>
    /// <param name="job">Unit, printer and needles.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellationToken">Looked at within.</param>
    /// <returns>The place; when the unit fits nowhere, the place that its file asks for.</returns>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public static Registration Fit(JobDescription job, ReefShape shape, Parallelism parallelism, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shape);
        return new Registration { Wish = BinPlaceSearch.Find(job, shape, parallelism, cancellationToken) ?? job.Unit.Place, Fixed = false };
    }

    private static Diagnostic Avoided(JobDescription job, PlacementWish wish, BlockedSolid before, BlockedSolid after)
    {
        Point3 shift = wish.Shift ?? default;
        string where = string.Create(
            CultureInfo.InvariantCulture,
            $"turn: {90 * (wish.QuarterTurns ?? 0)} deg, shift: [{shift.X * 1e3:0.###} mm, {shift.Y * 1e3:0.###} mm, {shift.Z * 1e3:0.###} mm]");
        return PrinterFindings.MovedClear.At(
            string.Create(
                CultureInfo.InvariantCulture,
                $"moved or turned to avoid {Math.Max(0, before.Needles - after.Needles)} of {before.Needles} blocked needles ({where}): {after.Litres:0.##} L of the wanted solid lie under blocked needles instead of {before.Litres:0.##} L"),
            "nothing to do; to keep the unit in the middle, clear the needles or fix its place",
            new KeyPath(job.Needles is null ? DescriptionKind.Unit : DescriptionKind.Printer, job.Needles is null ? "place" : "needles"));
    }
}
