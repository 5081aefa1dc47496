namespace Dewstone.Model.Results;

/// <summary>Thickness of the hardened solid. Lengths in metres.</summary>
public sealed record WallReport
{
    /// <summary>Width of a bin of <see cref="Shares"/>, metres.</summary>
    public const double BinMetres = 0.02;

    /// <summary>Local thickness (diameter of the largest ball in the solid that covers a place) that 5 % of the volume stays below.</summary>
    public required double Percentile5Metres { get; init; }

    /// <summary>Local thickness that half of the volume stays below.</summary>
    public required double MedianMetres { get; init; }

    /// <summary>Local thickness that 95 % of the volume stays below.</summary>
    public required double Percentile95Metres { get; init; }

    /// <summary>Share of the volume whose local thickness lies in each bin, 0 to 1; the first bin from 0, the last holds the thickest place.</summary>
    public required IReadOnlyList<double> Shares { get; init; }

    /// <summary>Wall asked for; null when none is.</summary>
    public double? WantedMetres { get; init; }

    /// <summary>Least neck; when the wall asked for holds, the thickest wall tried that still holds. Null when none is asked for.</summary>
    public double? LeastNeckMetres { get; init; }

    /// <summary>Places thinner than the wall asked for, thinnest first.</summary>
    public required IReadOnlyList<ThinPlace> ThinPlaces { get; init; }
}
