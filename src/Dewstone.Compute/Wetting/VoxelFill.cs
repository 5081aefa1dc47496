using Dewstone.Model.Lattices;

namespace Dewstone.Compute.Wetting;

/// <summary>
/// Fills a needle's own voxel shell by shell from the tip: cells at equal distance take the same share of their own room, and no cell takes
/// more than its pores. Voxels of one layer do not overlap, so the order of the needles does not matter.
/// </summary>
internal sealed class VoxelFill
{
    // Rooms are summed as whole numbers of this fraction, which no order of summation changes: turned doses give turned fields to the last bit.
    private const double RoomUnits = 1L << 44;

    private readonly (int Offset, int Row, int Plane)[] cells;
    private readonly int[] shellEnds;
    private readonly int rowsPerPlane;
    private readonly int rowStride;

    /// <summary>The shells of a voxel.</summary>
    /// <param name="grid">The cells.</param>
    /// <param name="tipHeightMetres">Height of the tip above the voxel's floor, m.</param>
    /// <param name="rowStride">Distance between rows of the field, floats.</param>
    public VoxelFill(CellGrid grid, double tipHeightMetres, int rowStride)
    {
        int cellsPerPitch = grid.CellsPerPitch;
        rowsPerPlane = grid.Ny;
        this.rowStride = rowStride;
        (int Cell, double Square)[] byDistance = new (int, double)[cellsPerPitch * cellsPerPitch * grid.CellsPerLayer];
        int count = 0;
        for (int z = 0; z < grid.CellsPerLayer; z++)
        {
            double up = (z + 0.5) * grid.CellHeightMetres - tipHeightMetres;
            for (int y = 0; y < cellsPerPitch; y++)
            {
                for (int x = 0; x < cellsPerPitch; x++)
                {
                    // Twice the distance in cells, whole numbers: the eight images of a cell get the same distance to the last bit.
                    int dx = 2 * x + 1 - cellsPerPitch;
                    int dy = 2 * y + 1 - cellsPerPitch;
                    double level = (dx * dx + dy * dy) * (grid.CellMetres * grid.CellMetres / 4.0);
                    byDistance[count++] = ((z * cellsPerPitch + y) * cellsPerPitch + x, level + up * up);
                }
            }
        }

        Array.Sort(byDistance, (a, b) => a.Square != b.Square ? a.Square.CompareTo(b.Square) : a.Cell.CompareTo(b.Cell));
        // Where each cell lies from the first of its voxel; worked out here, because dividing in every shot took 4 % of a compile.
        cells = Array.ConvertAll(byDistance, c =>
        {
            (int plane, int inPlane) = Math.DivRem(c.Cell, cellsPerPitch * cellsPerPitch);
            (int row, int column) = Math.DivRem(inPlane, cellsPerPitch);
            return ((plane * rowsPerPlane + row) * rowStride + column, row, plane);
        });
        double tolerance = 1e-9 * grid.CellMetres * grid.CellMetres;
        List<int> ends = [];
        for (int i = 1; i <= count; i++)
        {
            if (i == count || byDistance[i].Square - byDistance[i - 1].Square > tolerance)
            {
                ends.Add(i);
            }
        }

        shellEnds = [.. ends];
    }

    /// <summary>Pours a shot into a voxel.</summary>
    /// <param name="field">The field.</param>
    /// <param name="x">First cell of the voxel along x.</param>
    /// <param name="y">First cell of the voxel along y.</param>
    /// <param name="z">First cell of the voxel along z.</param>
    /// <param name="contents">Water to pour, as a sum of contents: volume over cell volume, 1.</param>
    /// <param name="porosity">Most a cell holds, 1.</param>
    /// <returns>What the pores did not take, as a sum of contents, 1.</returns>
    public double Pour(TransportStepper field, int x, int y, int z, double contents, float porosity)
    {
        Span<float> voxel = field.Content.AsSpan((z * rowsPerPlane + y) * rowStride + x);
        double rest = contents;
        int start = 0;
        foreach (int end in shellEnds)
        {
            if (!(rest > 0.0))
            {
                return 0.0;
            }

            ReadOnlySpan<(int Offset, int Row, int Plane)> shell = cells.AsSpan(start, end - start);
            start = end;
            long units = 0;
            foreach ((int offset, _, _) in shell)
            {
                units += (long)((porosity - (double)voxel[offset]) * RoomUnits);
            }

            double room = units / RoomUnits;
            if (!(room > 0.0))
            {
                continue;
            }

            double share = Math.Min(1.0, rest / room);
            rest = rest >= room ? rest - room : 0.0;
            foreach ((int offset, int row, int plane) in shell)
            {
                ref float content = ref voxel[offset];
                if (content == porosity)
                {
                    continue;
                }

                content = share >= 1.0 ? Math.Max(content, porosity) : (float)(content + share * (porosity - (double)content));
                field.Touch(y + row, z + plane, content);
            }
        }

        return rest;
    }
}
