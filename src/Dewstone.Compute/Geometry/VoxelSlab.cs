using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Fills one slab of cells; holds the lists of parts in reach, one a size of block, so that nothing is allocated a cell.</summary>
internal sealed class VoxelSlab
{
    /// <summary>Cells along the edge of the largest block, and height of a slab.</summary>
    public const int Edge = 8;

    private const int Sizes = 5;

    private readonly ReefShape shape;
    private readonly UnitPlacement placement;
    private readonly CellGrid grid;
    private readonly float[] fraction;
    private readonly int[][] openings = new int[Sizes][];
    private readonly int[][] zones = new int[Sizes][];
    private readonly double filletReach;

    /// <summary>Makes a slab's filler.</summary>
    /// <param name="shape">The wanted solid.</param>
    /// <param name="placement">Where the unit stands.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="fraction">Where the shares go; must be 0.</param>
    public VoxelSlab(ReefShape shape, UnitPlacement placement, CellGrid grid, float[] fraction)
    {
        this.shape = shape;
        this.placement = placement;
        this.grid = grid;
        this.fraction = fraction;
        filletReach = Fillet.Reach * shape.BlendMetres;
        for (int size = 0; size < Sizes; size++)
        {
            openings[size] = new int[shape.Openings.Count];
            zones[size] = new int[shape.Keep.Count];
        }
        for (int part = 0; part < shape.Openings.Count; part++) { openings[0][part] = part; }
        for (int zone = 0; zone < shape.Keep.Count; zone++) { zones[0][zone] = zone; }
    }

    private enum Verdict
    {
        Void,
        Solid,
        Mixed,
    }

    /// <summary>Fills a slab.</summary>
    /// <param name="slab">Slab, from 0 at the bottom.</param>
    public void Fill(int slab)
    {
        for (int y = 0; y < grid.Ny; y += Edge)
        {
            for (int x = 0; x < grid.Nx; x += Edge) { Block(x, y, slab * Edge, Edge, 1, shape.Openings.Count, shape.Keep.Count); }
        }
    }

    // size counts the lists: the block reads list size - 1 and writes list size.
    private void Block(int x, int y, int z, int edge, int size, int openingCount, int zoneCount)
    {
        if (x >= grid.Nx || y >= grid.Ny || z >= grid.Nz) { return; }
        Verdict verdict = Decide(x, y, z, edge, size, ref openingCount, ref zoneCount);
        if (verdict == Verdict.Void) { return; }
        if (verdict == Verdict.Solid)
        {
            FillSolid(x, y, z, edge);
            return;
        }
        if (edge == 1)
        {
            fraction[(z * grid.Ny + y) * grid.Nx + x] = Sample(x, y, z, openings[size].AsSpan(0, openingCount), zones[size].AsSpan(0, zoneCount));
            return;
        }
        int half = edge / 2;
        for (int part = 0; part < 8; part++)
        {
            Block(x + (part & 1) * half, y + ((part >> 1) & 1) * half, z + (part >> 2) * half, half, size + 1, openingCount, zoneCount);
        }
    }

    private Verdict Decide(int x, int y, int z, int edge, int size, ref int openingCount, ref int zoneCount)
    {
        double halfWidth = edge * grid.CellMetres / 2.0, halfHeight = edge * grid.CellHeightMetres / 2.0;
        double radius = Math.Sqrt(2.0 * halfWidth * halfWidth + halfHeight * halfHeight);
        Point3 p = placement.ToUnit(new Point3(
            grid.Origin.X + x * grid.CellMetres + halfWidth,
            grid.Origin.Y + y * grid.CellMetres + halfWidth,
            grid.Origin.Z + z * grid.CellHeightMetres + halfHeight));
        double body = shape.Body.Plain(p.X, p.Y, p.Z);
        if (body > radius) { return Verdict.Void; }

        int near = 0;
        double greatest = double.NegativeInfinity;
        int[] before = openings[size - 1], now = openings[size];
        for (int i = 0; i < openingCount; i++)
        {
            double a = -shape.Openings.Distance(before[i], p.X, p.Y, p.Z);
            if (a <= -filletReach - radius) { continue; }
            now[near++] = before[i];
            greatest = Math.Max(greatest, a);
        }
        int reach = 0;
        double keep = double.PositiveInfinity;
        int[] zonesBefore = zones[size - 1], zonesNow = zones[size];
        for (int i = 0; i < zoneCount; i++)
        {
            double k = shape.Keep.Distance(zonesBefore[i], p.X, p.Y, p.Z);
            if (k > radius) { continue; }
            zonesNow[reach++] = zonesBefore[i];
            keep = Math.Min(keep, k);
        }
        openingCount = near;
        zoneCount = reach;

        double amplitude = shape.Body.AmplitudeMetres;
        bool bodyFar = body + amplitude < -radius;
        if (reach == 0 && greatest > radius) { return Verdict.Void; }
        if (bodyFar && (near == 0 || keep < -radius)) { return Verdict.Solid; }
        bool bodyOutOfReach = body + amplitude <= -filletReach - radius;
        if (near == 1 && bodyOutOfReach && greatest < -radius) { return Verdict.Solid; }
        // Only the relieved body is near: its value and slope decide a cell within the depth of the relief.
        if (edge == 1 && near == 0 && amplitude > 0.0)
        {
            double value = shape.Body.Relieved(p.X, p.Y, p.Z), least = (1.0 + shape.Body.ReliefSlope) * radius;
            if (value > least) { return Verdict.Void; }
            if (value < -least) { return Verdict.Solid; }
        }
        return Verdict.Mixed;
    }

    private void FillSolid(int x, int y, int z, int edge)
    {
        int right = Math.Min(grid.Nx, x + edge), back = Math.Min(grid.Ny, y + edge), top = Math.Min(grid.Nz, z + edge);
        for (int k = z; k < top; k++)
        {
            for (int j = y; j < back; j++) { fraction.AsSpan((k * grid.Ny + j) * grid.Nx + x, right - x).Fill(1.0f); }
        }
    }

    private float Sample(int x, int y, int z, ReadOnlySpan<int> parts, ReadOnlySpan<int> keep)
    {
        Span<double> d = stackalloc double[8];
        double h = grid.CellMetres / 2.0, hz = grid.CellHeightMetres / 2.0;
        double left = grid.Origin.X + x * grid.CellMetres, front = grid.Origin.Y + y * grid.CellMetres, low = grid.Origin.Z + z * grid.CellHeightMetres;
        for (int i = 0; i < 8; i++)
        {
            Point3 p = placement.ToUnit(new Point3(
                left + ((i & 1) == 0 ? 0.5 : 1.5) * h, front + ((i & 2) == 0 ? 0.5 : 1.5) * h, low + ((i & 4) == 0 ? 0.5 : 1.5) * hz));
            d[i] = shape.Value(p.X, p.Y, p.Z, parts, keep);
        }
        // Differences over one sample distance, times that distance: the slope times the eighth's own edge. Pairs first, so that mirrored
        // cells agree.
        double gx = (d[1] - d[0] + (d[3] - d[2]) + (d[5] - d[4] + (d[7] - d[6]))) / 4.0;
        double gy = (d[2] - d[0] + (d[3] - d[1]) + (d[6] - d[4] + (d[7] - d[5]))) / 4.0;
        double gz = (d[4] - d[0] + (d[5] - d[1]) + (d[6] - d[2] + (d[7] - d[3]))) / 4.0;
        // Where the surface folds within the cell the mean slope says too little; half an edge is the least width worth believing.
        double width = Math.Max(Math.Sqrt(gx * gx + gy * gy + gz * gz), Math.Min(h, hz) / 2.0);
        // Opposite corners of a level first, so that a turned cell sums to the same bits.
        double lower = Share(d[0], width) + Share(d[3], width) + (Share(d[1], width) + Share(d[2], width));
        double upper = Share(d[4], width) + Share(d[7], width) + (Share(d[5], width) + Share(d[6], width));
        return (float)((lower + upper) / 8.0);
    }

    private static double Share(double distance, double width) => Math.Min(Math.Max(0.5 - distance / width, 0.0), 1.0);
}
