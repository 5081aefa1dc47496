using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Gathering;

/// <summary>What the folder of an order holds of it.</summary>
public sealed record FolderContents
{
    /// <summary>What the folder was begun with; null when there is none of this order.</summary>
    public required OrderPin? Pin { get; init; }

    /// <summary>The plan; null when there is none of this order.</summary>
    public required OrderPlan? Plan { get; init; }

    /// <summary>Units that are ready, in the order of the listing.</summary>
    public required IReadOnlyList<GatheredUnit> Units { get; init; }

    /// <summary>Bins whose jobs stand, in the order of the plan.</summary>
    public required IReadOnlyList<GatheredBin> Bins { get; init; }

    /// <summary>Marks of units without a record.</summary>
    public required IReadOnlyList<string> MissingUnits { get; init; }

    /// <summary>Names of bins without a job that stands as it was written.</summary>
    public required IReadOnlyList<string> MissingBins { get; init; }

    /// <summary>Marks of units that failed.</summary>
    public required IReadOnlyList<string> FailedUnits { get; init; }

    /// <summary>Names of bins held back or stopped by an error.</summary>
    public required IReadOnlyList<string> FailedBins { get; init; }

    /// <summary>Tasks to run again, in the array syntax of batch queues, one text a number of tasks the order was split into; empty when no task is missing.</summary>
    public required IReadOnlyList<MissingTasks> Tasks { get; init; }

    /// <summary>What stands against gathering; no error when all is there.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Whether all is there.</summary>
    public bool Complete => Findings.All(finding => finding.Severity != Severity.Error);
}
