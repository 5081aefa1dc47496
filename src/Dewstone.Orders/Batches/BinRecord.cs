using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Batches;

/// <summary>What a run has to say of one bin of an order; stands beside its job folder as <c>bins/NAME.json</c>, and only once that is complete.</summary>
public sealed record BinRecord
{
    /// <summary>Name of the bin.</summary>
    public required string Name { get; init; }

    /// <summary>SHA-256 of all that its job was made from.</summary>
    public required string Key { get; init; }

    /// <summary>Marks of the units in it.</summary>
    public required IReadOnlyList<string> Units { get; init; }

    /// <summary>Marks of units that were planned for it and failed.</summary>
    public required IReadOnlyList<string> LeftOut { get; init; }

    /// <summary>Name of its job folder; empty when it has none because no unit of it could be made or an error stopped it.</summary>
    public required string Folder { get; init; }

    /// <summary>SHA-256 of the manifest of its job folder; empty without one.</summary>
    public required string ManifestSha256 { get; init; }

    /// <summary>Findings about the bin, placed in the files.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Exit code of the bin with its units: 0, 1 or 2.</summary>
    public required int ExitCode { get; init; }
}
