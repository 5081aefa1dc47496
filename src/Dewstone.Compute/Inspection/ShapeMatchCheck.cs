using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>How the hardened solid matches the wanted one: figures only, judged with the other figures by <see cref="RequirementCheck"/>.</summary>
internal static class ShapeMatchCheck
{
    /// <summary>Puts the figures together.</summary>
    /// <param name="solid">Figures from the cells.</param>
    /// <param name="deviation">Figures from the surfaces.</param>
    /// <param name="looseDensity">Density of the bed as spread.</param>
    /// <returns>The match.</returns>
    public static ShapeMatchReport Check(SolidSummary solid, SurfaceDeviationReport deviation, Density looseDensity)
    {
        double more = deviation.HardenedCubicMetres - deviation.TargetCubicMetres;
        return new ShapeMatchReport
        {
            Overlap = solid.ShapeMatch,
            SurfaceCubicMetres = deviation.HardenedCubicMetres,
            VolumeError = deviation.TargetCubicMetres > 0.0 ? more / deviation.TargetCubicMetres : 0.0,
            MassErrorKilograms = more * looseDensity.KilogramsPerCubicMetre,
            MeanMetres = deviation.MeanMetres,
            SignedMeanMetres = deviation.SignedMeanMetres,
            Percentile95Metres = deviation.Percentile95Metres,
            DeepUnsetShare = deviation.DeepUnsetShare,
            PocketSquareMetres = deviation.PocketSquareMetres,
        };
    }
}
