namespace Dewstone.Compute.Numerics;

/// <summary>
/// Diameter of the largest ball that passes between two regions: the way between them whose least clearance is greatest.
/// </summary>
/// <remarks>
/// Cells are opened in the order of falling clearance and joined to their open neighbours (union-find); the cell that joins the two regions
/// is the narrowest place (widest path, Pollack, "The maximum capacity through a network", 1960; from memory). Equal clearances are opened
/// in index order. The ball's centre steps between cell centres, so off the axis of a way its width is up to the way to the nearest centre too
/// small. One thread: less work than the distances.
/// </remarks>
public static class PercolatingWidth
{
    /// <summary>Mark of a cell from which the way starts.</summary>
    public const byte From = 1;

    /// <summary>Mark of a cell at which the way ends; a cell may carry both marks.</summary>
    public const byte To = 2;

    private const int Closed = -1;

    /// <summary>The widest way through a field of clearances, such as distances to a surface between the cells.</summary>
    /// <param name="clearances">Radius of the largest ball around each cell centre; 0 or less is wall. Shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="regions"><see cref="From"/>, <see cref="To"/>, both or 0 for each cell; marks on walls count for nothing.</param>
    /// <param name="steps">Which cells the ball's centre may step to.</param>
    /// <returns>The passage, width in the unit of the clearances; nothing when there is no way.</returns>
    public static Passage? Between(float[] clearances, GridShape shape, byte[] regions, Connectivity steps)
    {
        ArgumentNullException.ThrowIfNull(clearances);
        ArgumentNullException.ThrowIfNull(regions);
        shape.Require(clearances.Length, nameof(clearances));
        shape.Require(regions.Length, nameof(regions));
        int[] parents = new int[clearances.Length];
        Array.Fill(parents, Closed);
        byte[] marks = [.. regions];
        foreach (int cell in DescendingOrder.OfPositive(clearances))
        {
            parents[cell] = cell;
            JoinNeighbours(cell, shape, steps, parents, marks);
            if ((marks[Root(parents, cell)] & (From | To)) == (From | To))
            {
                return new Passage(2.0 * clearances[cell], cell);
            }
        }

        return null;
    }

    private static void JoinNeighbours(int cell, GridShape shape, Connectivity steps, int[] parents, byte[] marks)
    {
        int x = cell % shape.Nx;
        int row = cell / shape.Nx;
        int y = row % shape.Ny;
        int z = row / shape.Ny;
        if (steps == Connectivity.Faces)
        {
            if (x > 0) { Join(cell, cell - 1, parents, marks); }
            if (x + 1 < shape.Nx) { Join(cell, cell + 1, parents, marks); }
            if (y > 0) { Join(cell, cell - shape.Nx, parents, marks); }
            if (y + 1 < shape.Ny) { Join(cell, cell + shape.Nx, parents, marks); }
            if (z > 0) { Join(cell, cell - shape.Plane, parents, marks); }
            if (z + 1 < shape.Nz) { Join(cell, cell + shape.Plane, parents, marks); }
            return;
        }

        int firstX = x > 0 ? -1 : 0, lastX = x + 1 < shape.Nx ? 1 : 0;
        int firstY = y > 0 ? -1 : 0, lastY = y + 1 < shape.Ny ? 1 : 0;
        int firstZ = z > 0 ? -1 : 0, lastZ = z + 1 < shape.Nz ? 1 : 0;
        for (int dz = firstZ; dz <= lastZ; dz++)
        {
            for (int dy = firstY; dy <= lastY; dy++)
            {
                int there = cell + dz * shape.Plane + dy * shape.Nx;
                for (int dx = firstX; dx <= lastX; dx++)
                {
                    Join(cell, there + dx, parents, marks);
                }
            }
        }
    }

    private static void Join(int cell, int neighbour, int[] parents, byte[] marks)
    {
        if (parents[neighbour] == Closed)
        {
            return;
        }

        int a = Root(parents, cell);
        int b = Root(parents, neighbour);
        if (a == b)
        {
            return;
        }

        // The neighbour's tree is the older and mostly the larger one.
        parents[a] = b;
        marks[b] |= marks[a];
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
