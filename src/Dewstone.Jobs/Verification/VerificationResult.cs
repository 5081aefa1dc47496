using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Verification;

/// <summary>What verifying a job folder found.</summary>
public sealed record VerificationResult
{
    /// <summary>The folder, as named.</summary>
    public required string Folder { get; init; }

    /// <summary>Name of the unit; empty when the manifest could not be read.</summary>
    public string Name { get; init; } = "";

    /// <summary>Fingerprint of the job as claimed; empty likewise.</summary>
    public string JobFingerprint { get; init; } = "";

    /// <summary>Fingerprint of the design as claimed; empty likewise.</summary>
    public string DesignFingerprint { get; init; } = "";

    /// <summary>Findings, in the order in which they were looked for.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Whether the job is what it claims to be, and approved where a list was given.</summary>
    public bool Verified => Findings.All(f => f.Severity != Severity.Error);
}
