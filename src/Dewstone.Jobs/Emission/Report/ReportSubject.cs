using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>What the parts of a report draw on.</summary>
internal sealed record ReportSubject
{
    /// <summary>The job.</summary>
    public required CompiledJob Job { get; init; }

    /// <summary>Its fingerprint and that of the design.</summary>
    public required JobData Data { get; init; }

    /// <summary>Its surfaces; null for a bin.</summary>
    public ReportFields? Fields { get; init; }

    /// <summary>Both solids for the plates.</summary>
    public required PlateField Plates { get; init; }

    /// <summary>Constants of the wetting, and names of files.</summary>
    public required EmissionSettings Settings { get; init; }

    /// <summary>The picture of the unit, PNG: stands in for the one that can be turned; empty for a bin.</summary>
    public ReadOnlyMemory<byte> UnitPicture { get; init; }

    /// <summary>The picture of where the trials differ, PNG; empty without trials.</summary>
    public ReadOnlyMemory<byte> DoubtPicture { get; init; }

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
