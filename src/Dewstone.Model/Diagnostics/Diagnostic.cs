using Dewstone.Model.Quantities;

namespace Dewstone.Model.Diagnostics;

/// <summary>A finding: what is wrong, where, and what to do about it. Data only; rendering is elsewhere.</summary>
public sealed record Diagnostic
{
    /// <summary>Stable code, <c>DW</c> and four digits, from <see cref="DiagnosticCatalogue"/>.</summary>
    public required string Code { get; init; }

    /// <summary>Level.</summary>
    public required Severity Severity { get; init; }

    /// <summary>One line: what was found, with the offending text or figure.</summary>
    public required string Message { get; init; }

    /// <summary>One line: what to do, or what would be right.</summary>
    public required string Remedy { get; init; }

    /// <summary>Line in a file; null until a key path has been resolved, or when there is no file.</summary>
    public SourceLocation? Location { get; init; }

    /// <summary>The value of the description concerned, when the finding was raised away from the text.</summary>
    public KeyPath? Key { get; init; }

    /// <summary>Other places that matter, each with a short remark.</summary>
    public IReadOnlyList<RelatedPlace> Related { get; init; } = [];

    /// <summary>Place in the unit frame, metres; null when it has none.</summary>
    public Point3? Where { get; init; }

    /// <summary>The reason given when the user released this finding; null when it was not released.</summary>
    public string? AcceptedBecause { get; init; }
}
