using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>The printer: bin, grid of needle positions, head, needles, supply and times. Printer frame: inner corner of the bin, z from its floor.</summary>
public sealed record Printer
{
    /// <summary>Name for people.</summary>
    public required string Name { get; init; }

    /// <summary>The container of the print bed.</summary>
    public required Bin Bin { get; init; }

    /// <summary>Grid of needle positions.</summary>
    public required NeedleGrid Grid { get; init; }

    /// <summary>Needles of the head.</summary>
    public required Head Head { get; init; }

    /// <summary>What one needle can do.</summary>
    public required Needle Needle { get; init; }

    /// <summary>Water supply.</summary>
    public required Supply Supply { get; init; }

    /// <summary>Times of the machine's actions.</summary>
    public required MachineTiming Timing { get; init; }

    /// <summary>Flushing; null when never.</summary>
    public Flush? Flush { get; init; }

    /// <summary>What becomes of loose mix.</summary>
    public required LooseMixHandling LooseMix { get; init; }

    /// <summary>Greatest mass the yard can lift.</summary>
    public Mass? MaxLift { get; init; }
}
