namespace Dewstone.Orders.Scheduling;

/// <summary>A schedule of all bins, and what is known about better ones.</summary>
public sealed record BinSchedule
{
    /// <summary>When each bin is printed and dug out; null for bins that never can be.</summary>
    public required IReadOnlyList<TaskTimes?> Times { get; init; }

    /// <summary>Units that are late, those that never can be printed included.</summary>
    public required int LateUnits { get; init; }

    /// <summary>When the last bin is dug out, minutes.</summary>
    public required int Finish { get; init; }

    /// <summary>No schedule has fewer late units.</summary>
    public int LateBound { get; init; }

    /// <summary>No schedule with as few late units is finished before, minutes.</summary>
    public int FinishBound { get; init; }

    /// <summary>Whether every bin is printed.</summary>
    public bool Complete => !Times.Any(times => times is null);

    /// <summary>Whether no schedule has fewer late units or, with as few, is finished before.</summary>
    public bool Optimal => Complete && LateUnits == LateBound && Finish == FinishBound;
}
