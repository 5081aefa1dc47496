using Dewstone.Model.Quantities;

namespace Dewstone.Model.Results;

/// <summary>Where the hardened solid is too lean or too wet. Shares are of hardened volume, 0 to 1.</summary>
public sealed record WaterCementReport
{
    /// <summary>Share below the band.</summary>
    public required double ShareBelow { get; init; }

    /// <summary>Share above the band.</summary>
    public required double ShareAbove { get; init; }

    /// <summary>Mean water/cement, 1.</summary>
    public required double Mean { get; init; }

    /// <summary>Share of the outermost 10 mm outside the band.</summary>
    public required double SkinShareOutside { get; init; }

    /// <summary>Mean water/cement of the outermost 10 mm, 1.</summary>
    public required double SkinMean { get; init; }

    /// <summary>Volume of the largest region outside the band, cubic metres; 0 when there is none.</summary>
    public required double LargestCubicMetres { get; init; }

    /// <summary>Mean place of the largest region, metres, unit frame; null when there is none.</summary>
    public Point3? Largest { get; init; }
}
