using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>What the parts of a report draw on.</summary>
internal sealed record ReportSubject
{
    /// <summary>The job.</summary>
    public required CompiledJob Job { get; init; }

    /// <summary>Its fingerprint and that of the design.</summary>
    public required JobData Data { get; init; }

    /// <summary>Its surfaces and fields.</summary>
    public required ReportFields Fields { get; init; }

    /// <summary>Constants of the wetting, and names of files.</summary>
    public required EmissionSettings Settings { get; init; }

    /// <summary>The picture of the unit, PNG: stands in for the one that can be turned.</summary>
    public required ReadOnlyMemory<byte> UnitPicture { get; init; }

    /// <summary>The picture of where the trials differ, PNG; empty without trials.</summary>
    public required ReadOnlyMemory<byte> DoubtPicture { get; init; }

    /// <summary>Where a finding or requirement stands in the description.</summary>
    /// <param name="location">The place; null for none.</param>
    /// <returns>File and line; empty for none.</returns>
    public string NameOf(Model.Diagnostics.SourceLocation? location) => location switch
    {
        null => "",
        { Line: 0 } => Settings.NameOfFile(location.File),
        _ => $"{Settings.NameOfFile(location.File)}, line {location.Line}",
    };
}
