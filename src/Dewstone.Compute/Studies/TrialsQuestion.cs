using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>A compiled job and how it is to be tried.</summary>
public sealed record TrialsQuestion
{
    /// <summary>Cells a voxel side that trials are wetted on, where the job has no fewer: coarser than the job's, since each costs a wetting and its inspection.</summary>
    public const int DefaultCells = 6;

    /// <summary>Unit, mix, printer, needles and tonight.</summary>
    public required JobDescription Job { get; init; }

    /// <summary>The wanted solid.</summary>
    public required ReefShape Shape { get; init; }

    /// <summary>Where it stands.</summary>
    public required UnitPlacement Placement { get; init; }

    /// <summary>The doses as rounded.</summary>
    public required DosePlan Doses { get; init; }

    /// <summary>The machine's steps, which no trial changes.</summary>
    public required Timeline Timeline { get; init; }

    /// <summary>When water flows where.</summary>
    public required DoseSchedule Schedule { get; init; }

    /// <summary>The requirements with the job's own figures.</summary>
    public required IReadOnlyList<RequirementResult> Requirements { get; init; }

    /// <summary>Trials, 1 to 10000.</summary>
    public required int Trials { get; init; }

    /// <summary>How uncertain the inputs are.</summary>
    public required TrialSpreads Spreads { get; init; }

    /// <summary>Cells a voxel side, 2 or more; even when layers are shifted.</summary>
    public int Cells { get; init; } = DefaultCells;

    /// <summary>Seed of the draws.</summary>
    public ulong Seed { get; init; } = 1;
}
