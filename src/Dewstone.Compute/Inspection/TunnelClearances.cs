using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Clear opening of each tunnel in the wanted and in the hardened solid, from the surfaces between the cells.</summary>
/// <remarks>
/// The ball goes from the mouth at one end (all of the tunnel outside the box less one cell) to that at the other. Distances between cell centres find the
/// narrowest place to a cell; then the cells whose clearance lies within <see cref="RefinedCells"/> of that are measured to the surface itself.
/// </remarks>
internal static class TunnelClearances
{
    private const int CellsTogether = 64;
    private const int CellsLookedAtTogether = 1 << 16;

    /// <summary>Cells that a distance between centres may differ from the one to the surface.</summary>
    private const double RefinedCells = 1.5;

    /// <summary>Measures all tunnels.</summary>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="wanted">Wanted surface.</param>
    /// <param name="hardened">Hardened surface.</param>
    /// <param name="fraction">Wanted share of each cell.</param>
    /// <param name="front">Field whose level 1 is the hardened surface.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>One a tunnel, in the unit's order.</returns>
    public static IReadOnlyList<TunnelClearance> Measure(
        ReefShape shape, UnitPlacement placement, CellGrid grid, NearestTriangle wanted, NearestTriangle hardened, float[] fraction, float[] front,
        Parallelism parallelism)
    {
        List<TunnelClearance> found = [];
        float[]? toWanted = null, toHardened = null;
        for (int opening = 0; opening < shape.Named.Count; opening++)
        {
            if (shape.Named[opening].Tunnel >= 0)
            {
                toWanted ??= CentreDistances(grid, fraction, 0.5f, parallelism);
                toHardened ??= CentreDistances(grid, front, 1f, parallelism);
                (int[] inner, byte[] regions) = Inner(shape, placement, grid, opening, parallelism);
                found.Add(new TunnelClearance(
                    shape.Named[opening].Name, Width(grid, inner, regions, wanted, toWanted, parallelism),
                    Width(grid, inner, regions, hardened, toHardened, parallelism)));
            }
        }

        return found;
    }

    /// <summary>From each empty cell to the surface, by way of cell centres; 0 in the solid.</summary>
    internal static float[] CentreDistances(CellGrid grid, float[] field, float level, Parallelism parallelism)
    {
        var set = new byte[field.Length];
        for (int i = 0; i < set.Length; i++)
        {
            set[i] = field[i] >= level ? (byte)1 : (byte)0;
        }

        CellSize size = new(grid.CellMetres, grid.CellHeightMetres);
        float[] distances = DistanceTransform.Squared(
            set, new GridShape(grid.Nx, grid.Ny, grid.Nz), size, Phase.Set, OutsideCells.Ignored, parallelism);
        float half = (float)size.HalfMeanEdge;
        for (int i = 0; i < distances.Length; i++)
        {
            distances[i] = set[i] != 0 ? 0f : MathF.Sqrt(distances[i]) - half;
        }

        return distances;
    }

    /// <summary>Diameter of the largest ball that gets from one mouth to the other through the inner cells, metres; 0 when none does.</summary>
    internal static double Width(CellGrid grid, int[] inner, byte[] regions, NearestTriangle surface, float[] distances, Parallelism parallelism)
    {
        var clearances = new float[grid.Count];
        foreach (int cell in inner)
        {
            clearances[cell] = distances[cell];
        }

        GridShape cells = new(grid.Nx, grid.Ny, grid.Nz);
        if (PercolatingWidth.Between(clearances, cells, regions, Connectivity.FacesEdgesCorners) is not { } coarse)
        {
            return 0.0;
        }

        float band = (float)(RefinedCells * Math.Max(grid.CellMetres, grid.CellHeightMetres));
        float middle = (float)(coarse.Width / 2.0);
        int[] near = [.. inner.Where(cell => distances[cell] > 0f && Math.Abs(distances[cell] - middle) <= band)];
        Chunks.Run(near.Length, CellsTogether, parallelism, (first, end) =>
        {
            for (int i = first; i < end; i++)
            {
                int cell = near[i];
                double x = (cell % grid.Nx + 0.5) * grid.CellMetres, y = (cell / grid.Nx % grid.Ny + 0.5) * grid.CellMetres;
                double z = (cell / (grid.Nx * grid.Ny) + 0.5) * grid.CellHeightMetres;
                clearances[cell] = (float)surface.Distance(x, y, z);
            }
        });
        return PercolatingWidth.Between(clearances, cells, regions, Connectivity.FacesEdgesCorners)?.Width ?? 0.0;
    }

    // Cells of a tunnel, and the marks of those in its two mouths.
    private static (int[] Cells, byte[] Regions) Inner(ReefShape shape, UnitPlacement placement, CellGrid grid, int opening, Parallelism parallelism)
    {
        List<int> cells = [], outside = [];
        var mouths = new byte[grid.Count];
        var isOpen = new bool[grid.Count];
        Chunks.Run(grid.Count, CellsLookedAtTogether, parallelism, (first, end) =>
        {
            for (int cell = first; cell < end; cell++)
            {
                isOpen[cell] = shape.OpeningDistance(opening, Unit(placement, grid, cell)) < 0.0;
            }
        });
        for (int cell = 0; cell < mouths.Length; cell++)
        {
            if (!isOpen[cell])
            {
                continue;
            }

            cells.Add(cell);
            if (!IsInside(shape.Box, Unit(placement, grid, cell), grid))
            {
                outside.Add(cell);
                mouths[cell] = 1;
            }
        }

        return ([.. cells], outside.Count == 0 ? mouths : Ends(placement, grid, mouths, outside, parallelism));
    }

    // A mouth that hangs together is one end, however wide; where both run into one along a face, a cell belongs to the end it is nearer to.
    private static byte[] Ends(UnitPlacement placement, CellGrid grid, byte[] mouths, List<int> outside, Parallelism parallelism)
    {
        ComponentMap map = Components.Label(mouths, new GridShape(grid.Nx, grid.Ny, grid.Nz), Phase.Set, Connectivity.FacesEdgesCorners, parallelism);
        Point3 from = Unit(placement, grid, outside[0]), to = from;
        foreach (int cell in outside)
        {
            to = Farther(from, Unit(placement, grid, cell), to);
        }

        var regions = new byte[grid.Count];
        foreach (int cell in outside)
        {
            Point3 point = Unit(placement, grid, cell);
            bool first = map.Pieces.Count > 1 ? map.Labels[cell] == map.Labels[outside[0]] : Square(point, from) <= Square(point, to);
            regions[cell] = first ? PercolatingWidth.From : PercolatingWidth.To;
        }

        return regions;
    }

    private static Point3 Farther(Point3 from, Point3 a, Point3 b) => Square(a, from) > Square(b, from) ? a : b;

    private static double Square(Point3 a, Point3 b) => (a.X - b.X) * (a.X - b.X) + (a.Y - b.Y) * (a.Y - b.Y) + (a.Z - b.Z) * (a.Z - b.Z);

    private static bool IsInside(Size3 box, Point3 p, CellGrid grid)
    {
        double level = grid.CellMetres, upright = grid.CellHeightMetres;
        return p.X >= level && p.Y >= level && p.Z >= upright && p.X <= box.X - level && p.Y <= box.Y - level && p.Z <= box.Z - upright;
    }

    private static Point3 Unit(UnitPlacement placement, CellGrid grid, int cell) =>
        placement.ToUnit(grid.Centre(cell % grid.Nx, cell / grid.Nx % grid.Ny, cell / (grid.Nx * grid.Ny)));
}
