using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>Between which doses a full voxel sets well, against what the needles can hold.</summary>
/// <remarks>
/// Lower end: <see cref="PocketClosing"/>. Upper end: the least of the water/cement limit by the dose balance of a voxel (water/cement x binder per volume
/// of bed x voxel / liquid density, exact), the most a needle gives and the pores at the densest likely packing. Two standard deviations: common
/// practice, no source.
/// </remarks>
public static class DoseWindowStudy
{
    /// <summary>Greatest water/cement where nothing else is asked for, 1; common practice, no source.</summary>
    public const double DefaultWaterCement = 0.60;

    /// <summary>The window of a mix on a printer.</summary>
    /// <param name="job">Mix, printer, needles and tonight.</param>
    /// <param name="lattice">Gives pitch, layer height and tip depth.</param>
    /// <param name="waterCementLimit">Greatest water/cement allowed, 1.</param>
    /// <returns>The window.</returns>
    public static DoseWindow Of(JobDescription job, Lattice lattice, double waterCementLimit) =>
        Of(job, lattice, waterCementLimit, PocketClosing.Millilitres(job, lattice));

    /// <summary>The window where the closing dose is known.</summary>
    /// <param name="job">Mix, printer, needles and tonight.</param>
    /// <param name="lattice">Gives pitch and layer height.</param>
    /// <param name="waterCementLimit">Greatest water/cement allowed, 1.</param>
    /// <param name="closingMillilitres">Least dose that leaves no dry pocket, mL.</param>
    /// <returns>The window.</returns>
    public static DoseWindow Of(JobDescription job, Lattice lattice, double waterCementLimit, double closingMillilitres)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        double voxel = lattice.PitchMetres * lattice.PitchMetres * lattice.LayerMetres;
        double perWaterCement = NominalDose.VoxelMillilitres(
            1.0, job.Mix.BinderKilogramsPerCubicMetre(job.LooseDensity), voxel, job.Mix.Liquid.Density.KilogramsPerCubicMetre);
        DoseLimits limits = DoseLimits.Of(job, lattice);
        double greatest = Math.Min(waterCementLimit * perWaterCement, limits.UpperMillilitres);
        double[] repeatabilities = Repeatabilities(job);
        DoseWindow window = new()
        {
            ClosingMillilitres = closingMillilitres,
            GreatestMillilitres = greatest,
            Ceiling = greatest < limits.UpperMillilitres ? DoseCeiling.WaterCement
                : limits.MostMillilitres <= limits.PoreMillilitres ? DoseCeiling.Needle : DoseCeiling.Pores,
            WaterCementLimit = waterCementLimit,
            WaterCementPerMillilitre = 1.0 / perWaterCement,
            Repeatability = job.Printer.Needle.Repeatability,
            Drift = job.Printer.Needle.Drift,
            WorstRepeatability = repeatabilities.Max(),
            Needles = repeatabilities.Length,
            NeedlesTooLoose = 0,
        };
        return window with { NeedlesTooLoose = repeatabilities.Count(r => window.TwoDeviationsMillilitres(r) > window.HalfMillilitres) };
    }

    // Of all needles in use; at least one figure, the printer's, when all are blocked.
    private static double[] Repeatabilities(JobDescription job)
    {
        HeadNeedles needles = HeadNeedles.Of(job.Printer, job.Needles);
        double common = job.Printer.Needle.Repeatability;
        List<double> found = [];
        for (int row = 1; row <= needles.Rows; row++)
        {
            for (int column = 1; column <= needles.Columns; column++)
            {
                if (!needles.IsBlocked(column, row))
                {
                    found.Add(needles.State(column, row)?.Repeatability ?? common);
                }
            }
        }

        return found.Count == 0 ? [common] : [.. found];
    }
}
