namespace Dewstone.Compute.Numerics;

/// <summary>Where regions of a solid that a ball cannot go between hang together after all: the thickest way from each to a larger one.</summary>
/// <remarks>
/// Cells outside the regions are added in the order of falling depth and joined to their neighbours (union-find), as for
/// <see cref="PercolatingWidth"/>; the cell that joins two regions is the neck between them, and the smaller one hangs by it.
/// </remarks>
internal static class Necks
{
    private const int Closed = -1;

    /// <summary>Finds the necks.</summary>
    /// <param name="depths">Depth of each cell below the surface, above 0 in the solid; shape <paramref name="shape"/>.</param>
    /// <param name="regions">The regions.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <returns>For each region the cell of the neck by which it hangs on a larger one; -1 for one that hangs on none.</returns>
    public static int[] Of(float[] depths, ComponentMap regions, GridShape shape)
    {
        int[] necks = new int[regions.Pieces.Count], parents = new int[depths.Length], roots = new int[regions.Pieces.Count];
        long[] sizes = new long[regions.Pieces.Count];
        Array.Fill(necks, Closed);
        Array.Fill(parents, Closed);
        float[] between = [.. depths];
        for (int region = 0; region < roots.Length; region++)
        {
            (roots[region], sizes[region]) = (regions.Pieces[region].FirstCell, regions.Pieces[region].Cells);
        }

        for (int cell = 0; cell < between.Length; cell++)
        {
            if (regions.Labels[cell] > 0)
            {
                parents[cell] = roots[regions.Labels[cell] - 1];
                between[cell] = 0f;
            }
        }

        foreach (int cell in DescendingOrder.OfPositive(between))
        {
            parents[cell] = cell;
            int x = cell % shape.Nx, y = cell / shape.Nx % shape.Ny, z = cell / shape.Plane;
            Join(x > 0, cell, cell - 1, parents, regions.Labels, sizes, necks);
            Join(x + 1 < shape.Nx, cell, cell + 1, parents, regions.Labels, sizes, necks);
            Join(y > 0, cell, cell - shape.Nx, parents, regions.Labels, sizes, necks);
            Join(y + 1 < shape.Ny, cell, cell + shape.Nx, parents, regions.Labels, sizes, necks);
            Join(z > 0, cell, cell - shape.Plane, parents, regions.Labels, sizes, necks);
            Join(z + 1 < shape.Nz, cell, cell + shape.Plane, parents, regions.Labels, sizes, necks);
        }

        return necks;
    }

    // A root is the first cell of the largest region in its tree, or any cell of a tree without one.
    private static void Join(bool isInside, int cell, int neighbour, int[] parents, int[] labels, long[] sizes, int[] necks)
    {
        if (!isInside || parents[neighbour] == Closed)
        {
            return;
        }

        int a = Root(parents, cell), b = Root(parents, neighbour);
        if (a == b)
        {
            return;
        }

        int regionA = labels[a], regionB = labels[b];
        if (regionA > 0 && regionB > 0)
        {
            if (sizes[regionA - 1] > sizes[regionB - 1])
            {
                (a, b, regionA, regionB) = (b, a, regionB, regionA);
            }

            necks[regionA - 1] = cell;
            sizes[regionB - 1] += sizes[regionA - 1];
        }
        else if (regionA > 0)
        {
            (a, b) = (b, a);
        }

        parents[a] = b;
    }

    private static int Root(int[] parents, int cell)
    {
        while (parents[cell] != cell)
        {
            parents[cell] = parents[parents[cell]];
            cell = parents[cell];
        }

        return cell;
    }
}
