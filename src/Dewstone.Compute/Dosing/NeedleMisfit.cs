using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Gathers the weighted misfit around each tip: what a dose there should answer for.</summary>
/// <remarks>
/// Mean of weight x misfit over the cells one pitch (one layer) to each side of the tip, with the Gaussian exp(-r^2/R^2), over the mean of the weights: above 0
/// where water is missing. Each row of needles is summed by itself, in the order of its cells.
/// </remarks>
internal sealed class NeedleMisfit
{
    private const int RowsTogether = 16;

    private readonly Lattice lattice;
    private readonly CorrectionField field;
    private readonly Parallelism parallelism;
    private readonly double[] across;
    private readonly double[] up;
    private readonly int lowest;

    /// <summary>The gatherer of one level of cells.</summary>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="field">Weights.</param>
    /// <param name="reachPitches">Width of the Gaussian, pitches.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public NeedleMisfit(Lattice lattice, CorrectionField field, double reachPitches, Parallelism parallelism)
    {
        this.lattice = lattice;
        this.field = field;
        this.parallelism = parallelism;
        CellGrid grid = field.Grid;
        double reach = reachPitches * lattice.PitchMetres;
        double tip = lattice.LayerMetres - lattice.TipDepthMetres;
        lowest = (int)Math.Floor(tip / grid.CellHeightMetres - grid.CellsPerLayer + 0.5);
        across = Gaussian(2 * grid.CellsPerPitch, -grid.CellsPerPitch * grid.CellMetres, grid.CellMetres, reach);
        up = Gaussian(2 * grid.CellsPerLayer, lowest * grid.CellHeightMetres - tip, grid.CellHeightMetres, reach);
    }

    /// <summary>Gathers.</summary>
    /// <param name="weighted">Weighted misfit of each cell.</param>
    /// <param name="isFree">Positions wanted; index order of the lattice.</param>
    /// <param name="misfits">Receives the mean misfit of each of them, 1.</param>
    public void Gather(float[] weighted, bool[] isFree, double[] misfits) =>
        Chunks.Run(lattice.Rows * lattice.Layers, RowsTogether, parallelism, (first, end) =>
        {
            for (int index = first * lattice.Columns; index < end * lattice.Columns; index++)
            {
                if (isFree[index])
                {
                    misfits[index] = At(weighted, index);
                }
            }
        });

    private double At(float[] weighted, int index)
    {
        CellGrid grid = field.Grid;
        int layer = index / (lattice.Columns * lattice.Rows);
        int half = grid.CellsPerPitch / 2, shift = lattice.IsShifted(layer) ? half : 0;
        int x0 = index % lattice.Columns * grid.CellsPerPitch + shift + LeftOfTip(grid);
        int y0 = index / lattice.Columns % lattice.Rows * grid.CellsPerPitch + shift + LeftOfTip(grid);
        int z0 = layer * grid.CellsPerLayer + lowest;
        int firstX = Math.Max(0, -x0), endX = Math.Min(across.Length, grid.Nx - x0);
        double sum = 0.0, all = 0.0;
        for (int c = Math.Max(0, -z0); c < up.Length && z0 + c < grid.Nz; c++)
        {
            double planeSum = 0.0, planeAll = 0.0;
            for (int b = Math.Max(0, -y0); b < across.Length && y0 + b < grid.Ny; b++)
            {
                int row = ((z0 + c) * grid.Ny + y0 + b) * grid.Nx + x0;
                double rowSum = 0.0, rowAll = 0.0;
                for (int a = firstX; a < endX; a++)
                {
                    rowSum += across[a] * weighted[row + a];
                    rowAll += across[a] * field.Weights[row + a];
                }

                planeSum += across[b] * rowSum;
                planeAll += across[b] * rowAll;
            }

            sum += up[c] * planeSum;
            all += up[c] * planeAll;
        }

        return all > 0.0 ? sum / all : 0.0;
    }

    // The needle stands in the middle of its voxel; cells reach a whole pitch to each side. An odd number of cells leaves half a cell to one side.
    private static int LeftOfTip(CellGrid grid) => grid.CellsPerPitch / 2 - grid.CellsPerPitch;

    private static double[] Gaussian(int cells, double from, double edge, double reach)
    {
        var values = new double[cells];
        for (int i = 0; i < cells; i++)
        {
            double ratio = (from + (i + 0.5) * edge) / reach;
            values[i] = Elementary.Exp(-ratio * ratio);
        }

        return values;
    }
}
