using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>A run log and the job it is held against.</summary>
public sealed record RunLogQuestion
{
    /// <summary>What was printed.</summary>
    public required JobDescription Job { get; init; }

    /// <summary>Where the unit stands.</summary>
    public required UnitPlacement Placement { get; init; }

    /// <summary>Doses of the tables.</summary>
    public required DosePlan Planned { get; init; }

    /// <summary>Times planned for them.</summary>
    public required DoseSchedule Schedule { get; init; }

    /// <summary>Time from the first dose of a layer after which its water no longer moves, s.</summary>
    public required double WindowSeconds { get; init; }

    /// <summary>Rows of the log, in its order.</summary>
    public required IReadOnlyList<LoggedDose> Rows { get; init; }

    /// <summary>The log's file, for findings.</summary>
    public required string File { get; init; }
}
