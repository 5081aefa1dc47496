using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Habitat;

/// <summary>Box-counting dimension of a set of cells.</summary>
/// <remarks>
/// Slope of log count against log 1 / box over boxes that lie on a raster from the grid's corner, least squares. A finite sphere's surface gives 1.87 to 1.92 and not 2: compare
/// figures of like bodies on like cells only. Source: Mandelbrot, 1982, "The fractal geometry of nature"; from memory.
/// </remarks>
internal static class BoxCounting
{
    /// <summary>Counts the boxes that hold a set cell.</summary>
    /// <param name="cells">0 empty, else set.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="box">Edge of a box, cells.</param>
    /// <returns>Number of boxes.</returns>
    public static int Count(byte[] cells, GridShape shape, int box)
    {
        int nx = (shape.Nx + box - 1) / box, ny = (shape.Ny + box - 1) / box, nz = (shape.Nz + box - 1) / box;
        bool[] holds = new bool[nx * ny * nz];
        int count = 0;
        for (int i = 0; i < cells.Length; i++)
        {
            if (cells[i] != 0)
            {
                int at = (i / shape.Plane / box * ny + i / shape.Nx % shape.Ny / box) * nx + i % shape.Nx / box;
                count += holds[at] ? 0 : 1;
                holds[at] = true;
            }
        }

        return count;
    }

    /// <summary>The dimension.</summary>
    /// <param name="cells">0 empty, else set.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="boxes">Edges of the boxes, cells, two or more.</param>
    /// <returns>1; 0 for an empty set.</returns>
    public static double Dimension(byte[] cells, GridShape shape, ReadOnlySpan<int> boxes)
    {
        double sumX = 0.0, sumY = 0.0, sumXx = 0.0, sumXy = 0.0;
        foreach (int box in boxes)
        {
            int count = Count(cells, shape, box);
            if (count == 0)
            {
                return 0.0;
            }

            double x = -Math.Log(box), y = Math.Log(count);
            (sumX, sumY, sumXx, sumXy) = (sumX + x, sumY + y, sumXx + x * x, sumXy + x * y);
        }

        return (boxes.Length * sumXy - sumX * sumY) / (boxes.Length * sumXx - sumX * sumX);
    }
}
