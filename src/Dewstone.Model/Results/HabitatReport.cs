namespace Dewstone.Model.Results;

/// <summary>What the predicted solid offers to those who live in and on it. Lengths m, areas m2, volumes m3; it stands on the seabed, which closes it from below.</summary>
public sealed record HabitatReport
{
    /// <summary>Entrance from which a hole counts, m.</summary>
    public const double LeastEntranceMetres = 0.03;

    /// <summary>Lower ends of the classes of mouths, m; the last is open.</summary>
    public static IReadOnlyList<double> MouthClasses { get; } = [LeastEntranceMetres, 0.06, 0.12, 0.24];

    /// <summary>Lower ends of the classes of open sky, share; the last is up to 1.</summary>
    public static IReadOnlyList<double> SkyClasses { get; } = [0.0, 0.1, 0.4, 0.7];

    /// <summary>Water within the unit's box, m3.</summary>
    public required double VoidCubicMetres { get; init; }

    /// <summary>The refuge curve, by rising diameter.</summary>
    public required IReadOnlyList<RefugePoint> Curve { get; init; }

    /// <summary>Body depth of the animal to shelter, m; null when the site names none.</summary>
    public double? ShelteredMetres { get; init; }

    /// <summary>Body depth of its predator, m; null when the site names none.</summary>
    public double? PredatorMetres { get; init; }

    /// <summary>What the sheltered animal reaches and its predator does not, m3; null when not said, or too fine for the cells.</summary>
    public double? RefugeCubicMetres { get; init; }

    /// <summary>Holes, largest first.</summary>
    public required IReadOnlyList<HabitatHole> Holes { get; init; }

    /// <summary>Surface in the water, what stands on the seabed left out, m2.</summary>
    public required double SurfaceSquareMetres { get; init; }

    /// <summary>Area seen from above, m2.</summary>
    public required double PlanSquareMetres { get; init; }

    /// <summary>Surface over the area seen from above, 1.</summary>
    public double Rugosity => PlanSquareMetres > 0.0 ? SurfaceSquareMetres / PlanSquareMetres : 0.0;

    /// <summary>1 less the length of the mean of all normals, 0 to 1.</summary>
    public required double VectorRuggedness { get; init; }

    /// <summary>Box-counting dimension of the surface, 1.</summary>
    public required double Dimension { get; init; }

    /// <summary>Share of the surface that faces up, within 45 degrees.</summary>
    public required double ShareUp { get; init; }

    /// <summary>Share of the surface that faces down, within 45 degrees.</summary>
    public required double ShareDown { get; init; }

    /// <summary>Share of the surface that faces sideways.</summary>
    public double ShareSideways => SurfaceSquareMetres > 0.0 ? Math.Max(0.0, 1.0 - ShareUp - ShareDown) : 0.0;

    /// <summary>Mean share of open sky over the surface, 0 to 1.</summary>
    public required double OpenSky { get; init; }

    /// <summary>Share of the surface in each class of open sky.</summary>
    public required IReadOnlyList<double> OpenSkyShares { get; init; }

    /// <summary>Cell of this report, m.</summary>
    public required double CellMetres { get; init; }

    /// <summary>Holes by the class of their widest mouth.</summary>
    /// <param name="mouthClass">Class, from 0.</param>
    /// <returns>Those whose mouth lies in it.</returns>
    public IEnumerable<HabitatHole> InClass(int mouthClass) => Holes.Where(hole =>
        hole.MouthMetres >= MouthClasses[mouthClass] && (mouthClass + 1 == MouthClasses.Count || hole.MouthMetres < MouthClasses[mouthClass + 1]));
}
