using Dewstone.Model.Description;
using Dewstone.Model.Lattices;

namespace Dewstone.Compute.Dosing;

/// <summary>The dose of a voxel that is wanted solid all through.</summary>
/// <param name="WaterCement">Water/cement by mass that the dose gives if it stays in its voxel, 1.</param>
/// <param name="Millilitres">Volume, mL.</param>
public readonly record struct NominalDose(double WaterCement, double Millilitres)
{
    /// <summary>
    /// Water/cement aimed at when the wanted band allows, 1. In a reference run of an independent prototype of the same model (25 % cement,
    /// 1700 kg/m3, 50.8 mm pitch) dry pockets at the corners between needles closed at 28 to 30 mL a voxel, which is 0.50 to 0.54.
    /// </summary>
    public const double PocketClosingWaterCement = 0.52;

    /// <summary>Distance kept from the ends of the wanted band, 1: water moves between neighbouring voxels.</summary>
    public const double BandMargin = 0.02;

    /// <summary>Chooses the dose of a full voxel.</summary>
    /// <remarks>
    /// Water volume = water/cement x loose density x binder share x voxel volume / liquid density (dose balance of a voxel, exact). The water/cement is
    /// <see cref="PocketClosingWaterCement"/>, moved into the band less the margin at either end, or the band's middle when it is narrower than two margins.
    /// </remarks>
    /// <param name="job">Mix, tonight and requirements.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <returns>The dose, before any limit of printer or pores.</returns>
    public static NominalDose Choose(JobDescription job, Lattice lattice)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        double waterCement = Choose(job.Unit.Require.WaterCement);
        double binder = job.Mix.BinderKilogramsPerCubicMetre(job.LooseDensity);
        double voxel = lattice.PitchMetres * lattice.PitchMetres * lattice.LayerMetres;
        return new NominalDose(waterCement, VoxelMillilitres(waterCement, binder, voxel, job.Mix.Liquid.Density.KilogramsPerCubicMetre));
    }

    /// <summary>Water volume that gives a voxel a water/cement.</summary>
    /// <param name="waterCement">Water/cement by mass, 1.</param>
    /// <param name="binderKilogramsPerCubicMetre">Binder mass per volume of bed, kg/m3.</param>
    /// <param name="voxelCubicMetres">Voxel volume, m3.</param>
    /// <param name="liquidKilogramsPerCubicMetre">Liquid density, kg/m3.</param>
    /// <returns>Volume, mL.</returns>
    public static double VoxelMillilitres(
        double waterCement, double binderKilogramsPerCubicMetre, double voxelCubicMetres, double liquidKilogramsPerCubicMetre) =>
        waterCement * binderKilogramsPerCubicMetre * voxelCubicMetres / liquidKilogramsPerCubicMetre * 1e6;

    private static double Choose(WaterCementBand? band)
    {
        if (band is null)
        {
            return PocketClosingWaterCement;
        }

        double low = band.Min + BandMargin;
        double high = band.Max - BandMargin;
        return low > high ? (band.Min + band.Max) / 2.0 : Math.Clamp(PocketClosingWaterCement, low, high);
    }
}
