namespace Dewstone.Orders.Scheduling;

/// <summary>One filling of a bin to be printed, set and dug out. Times in minutes, masses in whole kilograms.</summary>
public sealed record BinTask
{
    /// <summary>Setting up and printing on each printer; null where it cannot be printed.</summary>
    public required IReadOnlyList<int?> Minutes { get; init; }

    /// <summary>Least time from the end of printing to the begin of digging out.</summary>
    public int Set { get; init; }

    /// <summary>Digging out.</summary>
    public int Dig { get; init; }

    /// <summary>When it must be dug out; what ends later is late.</summary>
    public int Due { get; init; } = int.MaxValue;

    /// <summary>Units in it.</summary>
    public int Units { get; init; } = 1;

    /// <summary>Mix taken from the silo when printing begins, rounded up.</summary>
    public int Spread { get; init; }

    /// <summary>Mix back in the silo once it is dug out, rounded down.</summary>
    public int Reused { get; init; }
}
