namespace Dewstone.Orders.Plans;

/// <summary>What is printed where and when, complete: every unit of the order stands in one bin.</summary>
public sealed record OrderPlan
{
    /// <summary>Name of the order.</summary>
    public required string Order { get; init; }

    /// <summary>SHA-256 of the order's file, lower-case hexadecimal: who works by this plan holds the file against it.</summary>
    public required string OrderHash { get; init; }

    /// <summary>How the units of each line stand on each printer that they are planned for.</summary>
    public required IReadOnlyList<Footing> Footings { get; init; }

    /// <summary>The bins, in order of start, then of printer.</summary>
    public required IReadOnlyList<PlannedBin> Bins { get; init; }
}
