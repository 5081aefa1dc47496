using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>A field of the cells with several taken together along each axis, their mean standing for them: a page has no room for all.</summary>
/// <param name="Shape">Coarse cells; the last ones may hold fewer fine ones.</param>
/// <param name="Size">Edges of a coarse cell, m.</param>
/// <param name="Values">One a coarse cell; index order of the grid.</param>
internal sealed record CoarseField(GridShape Shape, CellSize Size, float[] Values)
{
    /// <summary>Takes cells together.</summary>
    /// <param name="values">Values of the fine cells.</param>
    /// <param name="grid">The fine cells.</param>
    /// <param name="together">How many along each axis, 1 or more.</param>
    /// <param name="most">Values are cut off here before the mean is taken: a surface moves towards the side whose values reach further.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>The coarse field; the fine one itself when nothing is taken together.</returns>
    public static CoarseField Of(float[] values, CellGrid grid, int together, float most, Parallelism parallelism)
    {
        GridShape shape = ShapeOf(grid, together);
        CellSize size = new(together * grid.CellMetres, together * grid.CellHeightMetres);
        if (together == 1)
        {
            return new CoarseField(shape, size, values);
        }

        float[] means = new float[shape.Nx * shape.Ny * shape.Nz];
        Parallel.For(0, shape.Nz, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, z =>
        {
            int z0 = z * together, z1 = Math.Min(z0 + together, grid.Nz);
            for (int y = 0; y < shape.Ny; y++)
            {
                int y0 = y * together, y1 = Math.Min(y0 + together, grid.Ny);
                for (int x = 0; x < shape.Nx; x++)
                {
                    int x0 = x * together, x1 = Math.Min(x0 + together, grid.Nx);
                    means[(z * shape.Ny + y) * shape.Nx + x] = Sum(values, grid, most, x0, x1, y0, y1, z0, z1) / ((x1 - x0) * (y1 - y0) * (z1 - z0));
                }
            }
        });
        return new CoarseField(shape, size, means);
    }

    /// <summary>How many cells there will be.</summary>
    /// <param name="grid">The fine cells.</param>
    /// <param name="together">How many along each axis.</param>
    /// <returns>Coarse cells.</returns>
    public static GridShape ShapeOf(CellGrid grid, int together) =>
        new(Over(grid.Nx, together), Over(grid.Ny, together), Over(grid.Nz, together));

    /// <summary>How many cells must be taken together so that no more than some are left.</summary>
    /// <param name="grid">The fine cells.</param>
    /// <param name="most">Coarse cells at most.</param>
    /// <returns>How many along each axis.</returns>
    public static int TogetherForAtMost(CellGrid grid, int most)
    {
        int together = 1;
        while (ShapeOf(grid, together) is var shape && (long)shape.Nx * shape.Ny * shape.Nz > most)
        {
            together++;
        }

        return together;
    }

    private static int Over(int cells, int together) => (cells + together - 1) / together;

    private static float Sum(float[] values, CellGrid grid, float most, int x0, int x1, int y0, int y1, int z0, int z1)
    {
        float sum = 0f;
        for (int z = z0; z < z1; z++)
        {
            for (int y = y0; y < y1; y++)
            {
                int row = (z * grid.Ny + y) * grid.Nx;
                for (int x = x0; x < x1; x++)
                {
                    sum += Math.Min(values[row + x], most);
                }
            }
        }

        return sum;
    }
}
