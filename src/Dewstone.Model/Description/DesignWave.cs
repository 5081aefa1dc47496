using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>Design wave at a site.</summary>
public sealed record DesignWave
{
    /// <summary>Significant wave height.</summary>
    public required Length SignificantHeight { get; init; }

    /// <summary>Peak period.</summary>
    public required Duration PeakPeriod { get; init; }

    /// <summary>Direction it comes from, clockwise from true north.</summary>
    public Angle Direction { get; init; }

    /// <summary>Return period, years; null when not said.</summary>
    public double? ReturnPeriodYears { get; init; }

    /// <summary>Which height is designed for.</summary>
    public DesignHeightRule HeightRule { get; init; }

    /// <summary>The height when the rule is <see cref="DesignHeightRule.Stated"/>; otherwise null.</summary>
    public Length? StatedHeight { get; init; }
}
