using Dewstone.Model.Results;

namespace Dewstone.Reading.Job;

/// <summary>What <c>manifest.json</c> of a job folder claims.</summary>
public sealed record Manifest
{
    /// <summary>Name of the unit.</summary>
    public required string Name { get; init; }

    /// <summary>Whether the job is held back from printing.</summary>
    public required bool Held { get; init; }

    /// <summary>Fingerprint of the job, 12 characters.</summary>
    public required string JobFingerprint { get; init; }

    /// <summary>Fingerprint of the design, 12 characters.</summary>
    public required string DesignFingerprint { get; init; }

    /// <summary>Version of the tool that wrote it.</summary>
    public required string ToolVersion { get; init; }

    /// <summary>Description files it was made from.</summary>
    public required IReadOnlyList<InputFile> Inputs { get; init; }

    /// <summary>Every other file of the folder: path in it and SHA-256 as lower-case hexadecimal.</summary>
    public required IReadOnlyList<(string Path, string Sha256)> Files { get; init; }

    /// <summary>Requirements as they came out.</summary>
    public required IReadOnlyList<ClaimedRequirement> Requirements { get; init; }

    /// <summary>Totals by name, in the order of the file; null where there is none.</summary>
    public required IReadOnlyList<(string Name, double? Value)> Totals { get; init; }

    /// <summary>What was different on the night, in words.</summary>
    public required IReadOnlyList<string> Conditions { get; init; }

    /// <summary>Codes of released findings with the reason given.</summary>
    public required IReadOnlyList<Acceptance> Accepted { get; init; }
}
