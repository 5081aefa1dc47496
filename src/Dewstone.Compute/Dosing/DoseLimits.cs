using Dewstone.Model.Description;
using Dewstone.Model.Lattices;

namespace Dewstone.Compute.Dosing;

/// <summary>What a single dose may be: limits of the needle and of the pores of its own voxel. Volumes in mL.</summary>
public sealed record DoseLimits
{
    /// <summary>Packing above the stated loose density that is allowed for when the mix gives no uncertainty, 1.</summary>
    public const double DefaultPackingAllowance = 0.02;

    /// <summary>Least dose of a needle, mL.</summary>
    public required double LeastMillilitres { get; init; }

    /// <summary>Greatest dose of a needle, mL.</summary>
    public required double MostMillilitres { get; init; }

    /// <summary>Pore volume of a voxel at the densest likely packing, mL; not negative.</summary>
    public required double PoreMillilitres { get; init; }

    /// <summary>Greatest dose that both needle and pores allow, mL.</summary>
    public double UpperMillilitres => Math.Min(MostMillilitres, PoreMillilitres);

    /// <summary>The limits of a job.</summary>
    /// <remarks>Densest likely packing: loose density x (1 + 2 standard deviations), or x 1.02 when the mix gives none. Pores = porosity x pitch^2 x layer height.</remarks>
    /// <param name="job">Mix, tonight and printer.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <returns>The limits.</returns>
    public static DoseLimits Of(JobDescription job, Lattice lattice)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        double allowance = job.Mix.Uncertainty is { } uncertainty ? 2.0 * uncertainty.LooseDensity : DefaultPackingAllowance;
        var densest = new Model.Quantities.Density(job.LooseDensity.KilogramsPerCubicMetre * (1.0 + allowance));
        double voxel = lattice.PitchMetres * lattice.PitchMetres * lattice.LayerMetres;
        return new DoseLimits
        {
            LeastMillilitres = job.Printer.Needle.Least.Millilitres,
            MostMillilitres = job.Printer.Needle.Most.Millilitres,
            PoreMillilitres = Math.Max(0.0, job.Mix.Porosity(densest)) * voxel * 1e6,
        };
    }

    /// <summary>Nearest volume the limits allow: none, or least to the upper limit. Below the least, none or the least, whichever is nearer (the least when as near).</summary>
    /// <param name="wantedMillilitres">Wanted volume, mL.</param>
    /// <returns>Allowed volume, mL; 0 for none.</returns>
    public double Clamp(double wantedMillilitres)
    {
        if (UpperMillilitres < LeastMillilitres || wantedMillilitres < LeastMillilitres / 2.0)
        {
            return 0.0;
        }

        return Math.Min(Math.Max(wantedMillilitres, LeastMillilitres), UpperMillilitres);
    }
}
