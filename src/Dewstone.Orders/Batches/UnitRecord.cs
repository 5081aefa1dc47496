using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Orders.Batches;

/// <summary>What a run has to say of one unit of an order; one file a unit, <c>units/MARK.json</c>.</summary>
public sealed record UnitRecord
{
    /// <summary>Its mark.</summary>
    public required string Mark { get; init; }

    /// <summary>Name of its kind.</summary>
    public required string Name { get; init; }

    /// <summary>Its description, below the root.</summary>
    public required string File { get; init; }

    /// <summary>Bin it is planned for.</summary>
    public required string Bin { get; init; }

    /// <summary>What became of it.</summary>
    public required UnitState State { get; init; }

    /// <summary>Key of its entry in the store: of the draw taken, else of the last one tried.</summary>
    public required string Key { get; init; }

    /// <summary>The draws, as tried.</summary>
    public required IReadOnlyList<DrawRecord> Draws { get; init; }

    /// <summary>Fingerprint of the design as drawn.</summary>
    public required string DesignFingerprint { get; init; }

    /// <summary>Its figures; null when it failed.</summary>
    public UnitFigures? Figures { get; init; }

    /// <summary>What was required and how it came out, placed in its file.</summary>
    public required IReadOnlyList<RequirementResult> Requirements { get; init; }

    /// <summary>Findings of the draw taken, else of the last one tried, placed in the files.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Exit code of this unit alone: 0, 1 or 2.</summary>
    public required int ExitCode { get; init; }
}
