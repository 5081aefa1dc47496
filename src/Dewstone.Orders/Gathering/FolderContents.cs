using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Plans;

namespace Dewstone.Orders.Gathering;

/// <summary>What the folder of an order holds of it.</summary>
public sealed record FolderContents
{
    /// <summary>What the folder was begun with; null when there is none.</summary>
    public required OrderPin? Pin { get; init; }

    /// <summary>The plan; null when there is none of this order.</summary>
    public required OrderPlan? Plan { get; init; }

    /// <summary>Units that are ready, in the order of the listing.</summary>
    public required IReadOnlyList<GatheredUnit> Units { get; init; }

    /// <summary>Bins whose jobs stand, in the order of the plan.</summary>
    public required IReadOnlyList<GatheredBin> Bins { get; init; }

    /// <summary>How far each bin and unit is; null without a pin or a plan.</summary>
    public OrderState? State { get; init; }

    /// <summary>Tasks to run again, for each number of tasks the order was split into; empty when none is missing or none has reported.</summary>
    public required IReadOnlyList<MissingTasks> Tasks { get; init; }

    /// <summary>What stands against gathering; no error when all is there.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Whether all is there.</summary>
    public bool Complete => Findings.All(finding => finding.Severity != Severity.Error);
}
