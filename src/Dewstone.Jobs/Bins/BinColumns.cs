using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Bins;

/// <summary>For each column of cells of a bin: to which unit it belongs, and which column of that unit's own cells stands there.</summary>
/// <param name="Owner">Unit, from 0: the one whose box is nearest, of two as near the first. Index y * Nx + x.</param>
/// <param name="Source">Index of the column in a plane of the unit's own cells; -1 where they do not reach.</param>
internal sealed record BinColumns(int[] Owner, int[] Source)
{
    /// <summary>Finds the columns.</summary>
    /// <param name="grid">Cells of the bin.</param>
    /// <param name="lattice">Needle positions they lie over.</param>
    /// <param name="units">The units.</param>
    /// <returns>The columns.</returns>
    public static BinColumns Of(CellGrid grid, Lattice lattice, IReadOnlyList<StandingUnit> units)
    {
        int n = grid.CellsPerPitch;
        int[] owner = new int[grid.Nx * grid.Ny], source = new int[grid.Nx * grid.Ny];
        for (int y = 0; y < grid.Ny; y++)
        {
            for (int x = 0; x < grid.Nx; x++)
            {
                int nearest = Nearest(grid, units, x, y);
                Lattice solved = units[nearest].Placed.Solved.Lattice;
                (int a, int b) = units[nearest].Move.CellBefore(x + lattice.FirstColumn * n, y + lattice.FirstRow * n, n);
                a -= solved.FirstColumn * n;
                b -= solved.FirstRow * n;
                owner[y * grid.Nx + x] = nearest;
                source[y * grid.Nx + x] = a >= 0 && b >= 0 && a < solved.Columns * n && b < solved.Rows * n ? b * solved.Columns * n + a : -1;
            }
        }

        return new BinColumns(owner, source);
    }

    private static int Nearest(CellGrid grid, IReadOnlyList<StandingUnit> units, int x, int y)
    {
        Model.Quantities.Point3 centre = grid.Centre(x, y, 0);
        int nearest = 0;
        double least = double.PositiveInfinity;
        for (int unit = 0; unit < units.Count; unit++)
        {
            UnitPlacement place = units[unit].Binned.Placement;
            double dx = Outside(centre.X - place.Corner.X, place.TurnedBox.X), dy = Outside(centre.Y - place.Corner.Y, place.TurnedBox.Y);
            double square = dx * dx + dy * dy;
            (nearest, least) = square < least ? (unit, square) : (nearest, least);
        }

        return nearest;
    }

    private static double Outside(double from, double length) => Math.Max(0.0, Math.Max(-from, from - length));
}
