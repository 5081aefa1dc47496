namespace Dewstone.Orders.Plans;

/// <summary>What a plan comes to, and how good it is known to be.</summary>
public sealed record PlanFigures
{
    /// <summary>Units in all.</summary>
    public required int Units { get; init; }

    /// <summary>Units dug out after the due date.</summary>
    public required int LateUnits { get; init; }

    /// <summary>No plan with these bins has fewer late units.</summary>
    public required int LateBound { get; init; }

    /// <summary>End of the last dig-out.</summary>
    public required DateTime Finish { get; init; }

    /// <summary>No plan with these bins and as few late units is finished before.</summary>
    public required DateTime FinishBound { get; init; }

    /// <summary>Whether it is proved that no plan with these bins is better.</summary>
    public required bool Optimal { get; init; }

    /// <summary>How the bins were chosen: fewest bins, or least time of the busiest printer.</summary>
    public required string BinsChosenFor { get; init; }

    /// <summary>Whether it is proved that no choice of bins is better in that.</summary>
    public required bool BinsProved { get; init; }

    /// <summary>Units' mass that the printers give in 24 hours without a pause, kg: the mean bin of each, bin change included.</summary>
    public required double FullPaceKilograms { get; init; }

    /// <summary>Most of the units' mass that the plan prints in any 24 hours, kg.</summary>
    public required double BusiestDayKilograms { get; init; }

    /// <summary>Fresh mix that the order uses up: what hardens and what is lost, kg.</summary>
    public required double UsedUpKilograms { get; init; }

    /// <summary>Longest of the times that bins set before they are dug out.</summary>
    public required TimeSpan LongestSet { get; init; }

    /// <summary>How to share the compile among machines.</summary>
    public required TaskAdvice Tasks { get; init; }
}
