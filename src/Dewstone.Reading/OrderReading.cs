using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Reading;

/// <summary>What became of reading an order with all it names.</summary>
public sealed record OrderReading
{
    /// <summary>The order; null when its own file is at fault.</summary>
    public required Order? Order { get; init; }

    /// <summary>SHA-256 of the order's file, lower-case hexadecimal; empty when it could not be read.</summary>
    public required string Hash { get; init; }

    /// <summary>All findings, each once: the order's, then line by line and printer by printer those of the files it names.</summary>
    public required IReadOnlyList<Diagnostic> Diagnostics { get; init; }

    /// <summary>Where the order's own values stand.</summary>
    public required SourceMap Source { get; init; }

    /// <summary>Paths of the printers, relative to the current folder: the order's list, else those the units name, each once, in order of the lines.</summary>
    public required IReadOnlyList<string> PrinterPaths { get; init; }

    /// <summary>
    /// What each line is made from on each printer, by line, then by printer; the order's curing temperature stands in for the night's. Null where a unit
    /// names its own printer and the order none, for all others; empty when the order itself is at fault.
    /// </summary>
    public required IReadOnlyList<IReadOnlyList<ReadResult?>> Jobs { get; init; }

    /// <summary>Gives a finding that names a key of the order its line.</summary>
    /// <param name="diagnostic">Finding.</param>
    /// <returns>The finding with a location, when its key is the order's.</returns>
    public Diagnostic Place(Diagnostic diagnostic)
    {
        ArgumentNullException.ThrowIfNull(diagnostic);
        return diagnostic.Location is null && diagnostic.Key is { Kind: DescriptionKind.Order } key ? diagnostic with { Location = Source.Find(key.Path) } : diagnostic;
    }
}
