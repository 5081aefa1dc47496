using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>Local thickness: diameter of the largest ball that fits in the solid and covers a cell's centre.</summary>
/// <remarks>
/// Hildebrand and Rüegsegger, "A new method for the model-independent assessment of thickness in three-dimensional images", Journal of
/// Microscopy 185, 1997, equation 1 (from memory). Only balls on ridges are laid: a cell whose neighbour is deeper by nearly the way there has its
/// ball inside the neighbour's, but for a rim. A ridge ball has the largest radius found within its cell (<see cref="RidgePeak"/>), so that a
/// plate has its thickness wherever it lies between the cells. Balls are laid from the largest down, row by row, over the cells not yet
/// covered, found through pointers past those that are: each cell is written once. Threads take planes, so no result depends on them.
/// Near sharp outer edges the largest ball is a small one: the thickness there is small in any body, whatever its walls.
/// </remarks>
public static class LocalThickness
{
    /// <summary>Rise per way to a neighbour from which a cell counts as part of its slope and not of a ridge, 1.</summary>
    private const float RidgeSlope = 0.8f;

    private const int PlanesTogether = 8;
    private const int CellsTogether = 1 << 14;

    /// <summary>Measures the cells at negative signed distances.</summary>
    /// <param name="distances">Signed distance of every cell centre, negative in the solid; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Diameters in the unit of the edges, 0 outside the solid; index order of the grid.</returns>
    public static float[] Of(float[] distances, GridShape shape, CellSize size, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(distances);
        shape.Require(distances.Length, nameof(distances));
        size.Require(nameof(size));
        float[] radii = Ridges(distances, shape, size, parallelism);
        int[] order = DescendingOrder.OfPositive(radii);
        float[] thickness = new float[distances.Length];
        Chunks.Run(shape.Nz, PlanesTogether, parallelism, (first, end) => Lay(distances, radii, order, shape, size, first, end, thickness));
        return thickness;
    }

    /// <summary>Radius of the ball of every ridge cell, 0 elsewhere.</summary>
    /// <param name="distances">Signed distances, negative in the solid.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="size">Edges of a cell.</param>
    /// <param name="parallelism">Threads.</param>
    /// <returns>Radii, edge unit.</returns>
    internal static float[] Ridges(float[] distances, GridShape shape, CellSize size, Parallelism parallelism)
    {
        float[] radii = new float[distances.Length];
        float flat = RidgeSlope * (float)size.Width, steep = RidgeSlope * (float)size.Height;
        float level = RidgeSlope * MathF.Sqrt(2f) * (float)size.Width;
        Chunks.Run(distances.Length, CellsTogether, parallelism, (first, end) =>
        {
            for (int cell = first; cell < end; cell++)
            {
                if (distances[cell] < 0f && !IsSlope(distances, shape, cell, flat, level, steep))
                {
                    radii[cell] = -distances[cell] + RidgePeak.Gain(distances, -1f, shape, size, cell);
                }
            }
        });
        return radii;
    }

    private static bool IsSlope(ReadOnlySpan<float> distances, GridShape shape, int cell, float flat, float level, float steep)
    {
        int x = cell % shape.Nx, y = cell / shape.Nx % shape.Ny, z = cell / shape.Plane;
        if (x == 0 || y == 0 || z == 0 || x == shape.Nx - 1 || y == shape.Ny - 1 || z == shape.Nz - 1)
        {
            return false;
        }

        float here = distances[cell];
        ReadOnlySpan<float> middle = distances.Slice(cell - shape.Nx - 1, 2 * shape.Nx + 3);
        if (Deepest(middle[shape.Nx], middle[shape.Nx + 2], middle[1], middle[2 * shape.Nx + 1]) <= here - flat
            || Deepest(middle[0], middle[2], middle[2 * shape.Nx], middle[2 * shape.Nx + 2]) <= here - level
            || Math.Min(distances[cell - shape.Plane], distances[cell + shape.Plane]) <= here - steep)
        {
            return true;
        }

        float slant = MathF.Sqrt(flat * flat + steep * steep), corner = MathF.Sqrt(level * level + steep * steep);
        for (int dz = -1; dz <= 1; dz += 2)
        {
            ReadOnlySpan<float> other = distances.Slice(cell + dz * shape.Plane - shape.Nx - 1, 2 * shape.Nx + 3);
            if (Deepest(other[shape.Nx], other[shape.Nx + 2], other[1], other[2 * shape.Nx + 1]) <= here - slant
                || Deepest(other[0], other[2], other[2 * shape.Nx], other[2 * shape.Nx + 2]) <= here - corner)
            {
                return true;
            }
        }

        return false;
    }

    private static float Deepest(float a, float b, float c, float d) => Math.Min(Math.Min(a, b), Math.Min(c, d));

    // Lays all balls over some planes of cells.
    private static void Lay(
        float[] distances, float[] radii, int[] order, GridShape shape, CellSize size, int first, int end, float[] thickness)
    {
        UncoveredCells uncovered = new(distances.AsSpan(first * shape.Plane, (end - first) * shape.Plane), shape.Nx);
        float width = (float)size.Width, height = (float)size.Height;
        foreach (int cell in order)
        {
            float radius = radii[cell], square = radius * radius;
            int cx = cell % shape.Nx, cy = cell / shape.Nx % shape.Ny, cz = cell / shape.Plane;
            int up = (int)(radius / height);
            for (int z = Math.Max(first, cz - up); z <= Math.Min(end - 1, cz + up); z++)
            {
                float plane = square - (z - cz) * height * ((z - cz) * height);
                if (plane < 0f)
                {
                    continue;
                }

                int across = (int)(MathF.Sqrt(plane) / width), left = Math.Max(0, cx - across), right = Math.Min(shape.Nx - 1, cx + across);
                for (int y = Math.Max(0, cy - across); y <= Math.Min(shape.Ny - 1, cy + across); y++)
                {
                    // Most rows are covered by larger balls all the way across.
                    if (!uncovered.Any((z - first) * shape.Ny + y, left, right))
                    {
                        continue;
                    }

                    float row = plane - (y - cy) * width * ((y - cy) * width);
                    if (row < 0f)
                    {
                        continue;
                    }

                    int half = (int)(MathF.Sqrt(row) / width);
                    int start = (z * shape.Ny + y) * shape.Nx;
                    uncovered.Cover(
                        (z - first) * shape.Ny + y, Math.Max(0, cx - half), Math.Min(shape.Nx - 1, cx + half),
                        thickness.AsSpan(start, shape.Nx), 2f * radius);
                }
            }
        }
    }
}
