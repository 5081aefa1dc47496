using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// The first dosing: each voxel gets its wanted share of the dose of a full voxel. It knows nothing of the water of its neighbours, so thin walls come
/// out lean and inner corners full; it is where a correction starts from.
/// </summary>
public static class PlainDoser
{
    /// <summary>Share of a voxel below which it gets no water, 1: a sliver that small is a rounded edge passing by.</summary>
    public const double FractionCut = 0.02;

    /// <summary>Doses a wanted solid.</summary>
    /// <param name="job">Unit, mix, printer and needles.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="target">Wanted solid on the cells over the lattice.</param>
    /// <returns>The doses and findings about what the printer cannot do.</returns>
    public static DoseResult Dose(JobDescription job, Lattice lattice, TargetField target)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(target);
        NominalDose nominal = NominalDose.Choose(job, lattice);
        double[] fractions = VoxelFractions.Average(lattice, target);
        var wanted = new double[fractions.Length];
        for (int index = 0; index < wanted.Length; index++)
        {
            wanted[index] = fractions[index] < FractionCut ? 0.0 : fractions[index] * nominal.Millilitres;
        }

        var rounder = new DoseRounder(job, lattice);
        DosePlan doses = rounder.Round(wanted);
        return new DoseResult
        {
            Doses = doses,
            Nominal = nominal,
            PlainMillilitres = nominal.Millilitres,
            Plain = doses,
            Limits = rounder.Limits,
            VoxelFractions = fractions,
            Findings = DoseCheck.Check(job, rounder, nominal, wanted, doses),
        };
    }
}
