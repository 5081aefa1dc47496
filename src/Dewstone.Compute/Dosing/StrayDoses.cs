using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// Finds doses that set a lump of their own, apart from the unit: slivers of a rounded edge or of the relief whose own water does not reach their neighbours'.
/// Such a lump falls off at dig-out, so its dose is better left out.
/// </summary>
public static class StrayDoses
{
    /// <summary>Wanted share of a voxel from which a dose is never left out, 1: what is wanted there must be seen to be missing.</summary>
    public const double WantedShare = 0.5;

    /// <summary>Times the least that counts as the least: pump steps and offsets round it up.</summary>
    public const double LeastTimes = 1.1;

    /// <summary>Leaves out stray doses.</summary>
    /// <param name="doses">The doses.</param>
    /// <param name="fractions">Wanted share of each voxel; index order of the lattice.</param>
    /// <param name="moisture">What they set.</param>
    /// <param name="joined">Times the content at which the mix sets that a cell must hold to join its neighbours, 1 or more: above 1, lumps that hang on by
    /// cells that barely set go too.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The doses without those whose tips lie alone in pieces other than the largest; null when there are none.</returns>
    public static DosePlan? Without(DosePlan doses, IReadOnlyList<double> fractions, MoistureResult moisture, double joined, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(doses);
        ArgumentNullException.ThrowIfNull(fractions);
        ArgumentNullException.ThrowIfNull(moisture);
        CellGrid grid = moisture.Grid;
        byte[] set = moisture.Hardened;
        if (joined > 1.0)
        {
            float least = (float)(joined * moisture.ThresholdContent);
            set = Array.ConvertAll(moisture.VolumetricWaterContent, content => content >= least ? (byte)1 : (byte)0);
        }

        ComponentMap pieces = Components.Label(set, new GridShape(grid.Nx, grid.Ny, grid.Nz), Phase.Set, Connectivity.Faces, parallelism);
        if (pieces.Pieces.Count < 2)
        {
            return null;
        }

        Lattice lattice = doses.Lattice;
        int[] tips = new int[pieces.Pieces.Count + 1], only = new int[tips.Length];
        for (int index = 0; index < lattice.Count; index++)
        {
            if (doses.CentiMillilitres[index] > 0)
            {
                int piece = pieces.Labels[Cell(lattice, grid, index)];
                tips[piece]++;
                only[piece] = index;
            }
        }

        int main = 1;
        for (int piece = 2; piece < tips.Length; piece++)
        {
            main = pieces.Pieces[piece - 1].Cells > pieces.Pieces[main - 1].Cells ? piece : main;
        }

        int[] steps = [.. doses.Steps], delivered = [.. doses.CentiMillilitres];
        bool any = false;
        for (int piece = 1; piece < tips.Length; piece++)
        {
            if (piece != main && tips[piece] == 1 && fractions[only[piece]] < WantedShare)
            {
                (steps[only[piece]], delivered[only[piece]], any) = (0, 0, true);
            }
        }

        return any ? new DosePlan { Lattice = lattice, Steps = steps, CentiMillilitres = delivered } : null;
    }

    /// <summary>Leaves out doses at the needle's least in voxels that are hardly wanted: they set little balls on the unit's skin.</summary>
    /// <param name="doses">The doses.</param>
    /// <param name="fractions">Wanted share of each voxel; index order of the lattice.</param>
    /// <param name="limits">Limits of a dose.</param>
    /// <returns>The doses without them; null when there are none.</returns>
    public static DosePlan? WithoutLeast(DosePlan doses, IReadOnlyList<double> fractions, DoseLimits limits)
    {
        ArgumentNullException.ThrowIfNull(doses);
        ArgumentNullException.ThrowIfNull(fractions);
        ArgumentNullException.ThrowIfNull(limits);
        int[] steps = [.. doses.Steps], delivered = [.. doses.CentiMillilitres];
        double most = LeastTimes * limits.LeastMillilitres * 100.0;
        bool any = false;
        for (int index = 0; index < steps.Length; index++)
        {
            if (delivered[index] > 0 && delivered[index] <= most && fractions[index] < WantedShare)
            {
                (steps[index], delivered[index], any) = (0, 0, true);
            }
        }

        return any ? new DosePlan { Lattice = doses.Lattice, Steps = steps, CentiMillilitres = delivered } : null;
    }

    private static int Cell(Lattice lattice, CellGrid grid, int index)
    {
        Point3 tip = lattice.Tip(index % lattice.Columns, index / lattice.Columns % lattice.Rows, index / (lattice.Columns * lattice.Rows)) - grid.Origin;
        int x = Math.Clamp((int)(tip.X / grid.CellMetres), 0, grid.Nx - 1), y = Math.Clamp((int)(tip.Y / grid.CellMetres), 0, grid.Ny - 1);
        return (Math.Clamp((int)(tip.Z / grid.CellHeightMetres), 0, grid.Nz - 1) * grid.Ny + y) * grid.Nx + x;
    }
}
