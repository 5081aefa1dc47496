namespace Dewstone.Model.Results;

/// <summary>How the hardened solid matches the wanted one.</summary>
public sealed record ShapeMatchReport
{
    /// <summary>Intersection over union of cells, 0 to 1.</summary>
    public required double Overlap { get; init; }

    /// <summary>Volume within the hardened surface, cubic metres. Cells counted whole come up to it from within as they get finer.</summary>
    public required double SurfaceCubicMetres { get; init; }

    /// <summary>Volume within the hardened surface over that within the wanted one, less 1; 0 when nothing is wanted.</summary>
    public required double VolumeError { get; init; }

    /// <summary>Dry mass too much, kg; below 0 when it is too little.</summary>
    public required double MassErrorKilograms { get; init; }

    /// <summary>Mean distance between the surfaces, metres.</summary>
    public required double MeanMetres { get; init; }

    /// <summary>Mean distance with a sign, metres; above 0 where too much hardened.</summary>
    public required double SignedMeanMetres { get; init; }

    /// <summary>Distance that 95 % of the surfaces keep below, metres.</summary>
    public required double Percentile95Metres { get; init; }

    /// <summary>Share of the wanted solid deeper than 20 mm that stays loose, 0 to 1.</summary>
    public required double DeepUnsetShare { get; init; }

    /// <summary>Area of the walls of dry pockets, square metres.</summary>
    public required double PocketSquareMetres { get; init; }
}
