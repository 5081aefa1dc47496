using Dewstone.Compute.Geometry;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Which needle positions lie near a change of the wanted solid.</summary>
internal static class DoseNeighbourhood
{
    /// <summary>Distance within which doses may answer a change, pitches.</summary>
    public const double ReachPitches = 3.0;

    // Share of a cell by which the wanted solid must differ to count as changed: above what rounding leaves in a share.
    private const float Changed = 1e-4f;

    /// <summary>Marks the positions.</summary>
    /// <param name="before">Shape before.</param>
    /// <param name="placement">Where both stand.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="now">Wanted solid now.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at once a slab.</param>
    /// <returns>True within reach of a cell that differs; index order of the lattice.</returns>
    public static bool[] OfChange(
        ReefShape before, UnitPlacement placement, Lattice lattice, TargetField now, Parallelism parallelism, CancellationToken cancellation)
    {
        CellGrid grid = now.Grid;
        float[] old = Voxelizer.Voxelize(before, placement, grid, parallelism, null, cancellation).Fraction;
        var changed = new bool[lattice.Count];
        for (int i = 0; i < old.Length; i++)
        {
            if (Math.Abs(old[i] - now.Fraction[i]) > Changed)
            {
                int x = i % grid.Nx / grid.CellsPerPitch, y = i / grid.Nx % grid.Ny / grid.CellsPerPitch;
                changed[lattice.Index(x, y, i / (grid.Nx * grid.Ny) / grid.CellsPerLayer)] = true;
            }
        }

        return Of(lattice, changed);
    }

    /// <summary>Marks the positions near some of them.</summary>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="centres">Those; index order of the lattice.</param>
    /// <returns>True within reach of one of them, itself included.</returns>
    public static bool[] Of(Lattice lattice, bool[] centres)
    {
        var near = new bool[lattice.Count];
        int across = (int)ReachPitches, up = (int)(ReachPitches * lattice.PitchMetres / lattice.LayerMetres);
        for (int i = 0; i < centres.Length; i++)
        {
            if (centres[i])
            {
                Mark(lattice, i, across, up, near);
            }
        }

        return near;
    }

    private static void Mark(Lattice lattice, int centre, int across, int up, bool[] near)
    {
        int i0 = centre % lattice.Columns, j0 = centre / lattice.Columns % lattice.Rows, k0 = centre / (lattice.Columns * lattice.Rows);
        Point3 tip = lattice.Tip(i0, j0, k0);
        double reach = ReachPitches * lattice.PitchMetres;
        for (int k = Math.Max(0, k0 - up); k <= Math.Min(lattice.Layers - 1, k0 + up); k++)
        {
            for (int j = Math.Max(0, j0 - across); j <= Math.Min(lattice.Rows - 1, j0 + across); j++)
            {
                for (int i = Math.Max(0, i0 - across); i <= Math.Min(lattice.Columns - 1, i0 + across); i++)
                {
                    Point3 apart = lattice.Tip(i, j, k) - tip;
                    near[lattice.Index(i, j, k)] |= apart.X * apart.X + apart.Y * apart.Y + apart.Z * apart.Z <= reach * reach;
                }
            }
        }
    }
}
