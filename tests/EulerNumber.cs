using Dewstone.Compute.Numerics;

namespace Dewstone.Tests;

/// <summary>
/// Euler number of the set cells, pieces - tunnels + closed cavities, counted from the cell complex itself: what surfaces and meshes are held against.
/// </summary>
/// <remarks>
/// With corners touching, the cells are closed cubes: vertices - edges + faces - cells, each of them there when any cell around it is set. With faces only,
/// the complex is made of cell centres: cells - face pairs + full 2 x 2 squares - full 2 x 2 x 2 cubes. (Toriwaki and Yonekura, "Euler number and connectivity
/// indexes of a three dimensional digital picture", 2002; from memory.) Cells beyond the grid's edge are empty.
/// </remarks>
internal static class EulerNumber
{
    public static long Of(byte[] cells, GridShape shape, Connectivity connectivity)
    {
        int[] counts = [.. Enumerable.Range(0, 256).Select(around => AtCorner(around, connectivity == Connectivity.FacesEdgesCorners))];
        long sum = 0;
        for (int z = -1; z < shape.Nz; z++)
        {
            for (int y = -1; y < shape.Ny; y++)
            {
                for (int x = -1; x < shape.Nx; x++)
                {
                    sum += counts[Around(cells, shape, x, y, z)];
                }
            }
        }

        return sum;
    }

    /// <summary>Bit dx + 2 dy + 4 dz is on where that neighbour is set.</summary>
    private static int Around(byte[] cells, GridShape shape, int x, int y, int z)
    {
        int around = 0;
        for (int c = 0; c < 8; c++)
        {
            int cx = x + (c & 1), cy = y + ((c >> 1) & 1), cz = z + (c >> 2);
            around |= cx >= 0 && cy >= 0 && cz >= 0 && cx < shape.Nx && cy < shape.Ny && cz < shape.Nz && cells[shape.Index(cx, cy, cz)] != 0 ? 1 << c : 0;
        }

        return around;
    }

    /// <summary>The blocks that begin here and reach over to the next cell along some of the axes.</summary>
    private static int AtCorner(int around, bool corners)
    {
        int sum = 0;
        for (int axes = 0; axes < 8; axes++)
        {
            int block = Enumerable.Range(0, 8).Where(c => (c & ~axes) == 0).Sum(c => 1 << c), reach = int.PopCount(axes);
            bool counts = corners ? (around & block) != 0 : (around & block) == block;
            sum += !counts ? 0 : ((corners ? 3 - reach : reach) & 1) == 0 ? 1 : -1;
        }

        return sum;
    }
}
