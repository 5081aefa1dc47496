using Dewstone.Model.Results;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Surveys;

/// <summary>A printed unit and what was measured of it; at least one of the measurements.</summary>
public sealed record SurveyQuestion
{
    /// <summary>The job that was printed.</summary>
    public required EarlierJob Job { get; init; }

    /// <summary>Its manifest.</summary>
    public required Manifest Manifest { get; init; }

    /// <summary>The machine's run log; null for none.</summary>
    public Measured<LoggedDose>? RunLog { get; init; }

    /// <summary>Scale weights of units of this job, in the order in which they were printed; null for none.</summary>
    public Measured<WeighedUnit>? Weights { get; init; }

    /// <summary>Readings of gauge balls and calipers; null for none.</summary>
    public Measured<GaugeReading>? Gauges { get; init; }

    /// <summary>A scan of the unit and its file; null for none.</summary>
    public (string File, UnitScan Scan)? Scan { get; init; }

    /// <summary>Whether pictures, charts and surfaces are wanted.</summary>
    public bool WantsFiles { get; init; }
}
