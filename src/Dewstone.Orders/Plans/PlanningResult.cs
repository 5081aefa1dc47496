using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Plans;

/// <summary>What planning an order gave.</summary>
public sealed record PlanningResult
{
    /// <summary>The plan; null when some unit can be made nowhere or never.</summary>
    public OrderPlan? Plan { get; init; }

    /// <summary>What each bin of the plan takes, in the plan's order; empty without a plan.</summary>
    public IReadOnlyList<BinContent> Contents { get; init; } = [];

    /// <summary>How the lines of the order stand on its printers; empty without a plan.</summary>
    public IReadOnlyList<LineOnPrinter> Lines { get; init; } = [];

    /// <summary>Figures of the plan; null without one.</summary>
    public PlanFigures? Figures { get; init; }

    /// <summary>All findings: those of reading, then of planning.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Whether the descriptions themselves are at fault, so that nothing could be planned.</summary>
    public bool InputAtFault { get; init; }
}
