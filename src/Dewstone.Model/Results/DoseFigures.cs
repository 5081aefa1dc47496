namespace Dewstone.Model.Results;

/// <summary>What a set of doses gives, from the fine cells.</summary>
/// <param name="WaterCubicMetres">Water injected, cubic metres.</param>
/// <param name="HardenedCubicMetres">Volume that hardens, cubic metres.</param>
/// <param name="VolumeError">Hardened volume above the wanted one, share of it; below 0 when less hardens.</param>
/// <param name="ShapeMatch">Intersection over union of hardened and wanted cells, 0 to 1.</param>
/// <param name="MeanWaterCement">Mean water/cement of the hardened solid, 1.</param>
public sealed record DoseFigures(
    double WaterCubicMetres, double HardenedCubicMetres, double VolumeError, double ShapeMatch, double MeanWaterCement)
{
    /// <summary>The figures of a plan.</summary>
    /// <param name="doses">The doses.</param>
    /// <param name="solid">The solid they give.</param>
    /// <returns>The figures.</returns>
    public static DoseFigures Of(DosePlan doses, SolidSummary solid)
    {
        ArgumentNullException.ThrowIfNull(doses);
        ArgumentNullException.ThrowIfNull(solid);
        double error = solid.TargetCubicMetres > 0.0 ? solid.HardenedCubicMetres / solid.TargetCubicMetres - 1.0 : 0.0;
        return new DoseFigures(
            doses.TotalCentiMillilitres * 1e-8, solid.HardenedCubicMetres, error, solid.ShapeMatch, solid.MeanWaterCement);
    }
}
