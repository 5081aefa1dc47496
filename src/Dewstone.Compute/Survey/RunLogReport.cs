using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>What a run log says of a print.</summary>
public sealed record RunLogReport
{
    /// <summary>Doses as run; those that were given before a stop of the job are as tabled. Null when the log does not belong to the job.</summary>
    public DosePlan? Delivered { get; init; }

    /// <summary>Times as run; null when the log has none that can be used.</summary>
    public DoseSchedule? Schedule { get; init; }

    /// <summary>Whether the last doses of the job were given.</summary>
    public bool IsFinished { get; init; }

    /// <summary>Doses planned.</summary>
    public int PlannedDoses { get; init; }

    /// <summary>Of them, those that delivered anything.</summary>
    public int GivenDoses { get; init; }

    /// <summary>Findings DW3060 to DW3080, and DW8344 when the log does not belong to the job.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }
}
