namespace Dewstone.Model.Results;

/// <summary>Figures of the predicted solid against the wanted one, from the fine cells.</summary>
public sealed record SolidSummary
{
    /// <summary>Volume of the wanted solid, cubic metres.</summary>
    public required double TargetCubicMetres { get; init; }

    /// <summary>Volume that hardened, cubic metres: what the hardened surface encloses.</summary>
    public required double HardenedCubicMetres { get; init; }

    /// <summary>Intersection over union of hardened and wanted cells, 0 to 1; a cell is wanted when at least half of it is.</summary>
    public required double ShapeMatch { get; init; }

    /// <summary>Water in the hardened volume, cubic metres.</summary>
    public required double WaterInHardenedCubicMetres { get; init; }

    /// <summary>Mean water/cement of the hardened volume, 1.</summary>
    public required double MeanWaterCement { get; init; }

    /// <summary>Largest water/cement of hardened cells, 1.</summary>
    public required double LargestWaterCement { get; init; }

    /// <summary>Share of the hardened volume whose water/cement lies in the wanted band, 0 to 1; null when no band is asked for.</summary>
    public double? ShareInBand { get; init; }
}
