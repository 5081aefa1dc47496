using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Mean residual around each needle tip: what a position has too little (above 0) or too much of.</summary>
/// <remarks>
/// Weighted mean with exp(-(r / (0.63 pitch))^2) over two pitches by two pitches by two layers around the tip (32 mm at a pitch of 50.8 mm: reference run of
/// an independent prototype of the same model). The three directions separate, so the weights are three short tables.
/// </remarks>
internal sealed class NeedleErrors
{
    private const double RadiusInPitches = 0.63;
    private const int RowsTogether = 16;
    private readonly Lattice lattice;
    private readonly CellGrid grid;
    private readonly Parallelism parallelism;
    private readonly double[] level;
    private readonly double[] upright;
    private readonly int lowest;

    /// <summary>Lays the weights on the cells.</summary>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="grid">Cells over them.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public NeedleErrors(Lattice lattice, CellGrid grid, Parallelism parallelism)
    {
        (this.lattice, this.grid, this.parallelism) = (lattice, grid, parallelism);
        int n = grid.CellsPerPitch, nz = grid.CellsPerLayer;
        double radius = RadiusInPitches * lattice.PitchMetres;
        level = new double[2 * n];
        for (int a = 0; a < level.Length; a++)
        {
            level[a] = Bell((a + 0.5 - n) * grid.CellMetres / radius);
        }

        double tip = lattice.LayerMetres - lattice.TipDepthMetres;
        lowest = (int)Math.Floor(tip / grid.CellHeightMetres - nz + 0.5);
        upright = new double[2 * nz];
        for (int c = 0; c < upright.Length; c++)
        {
            upright[c] = Bell(((c + lowest + 0.5) * grid.CellHeightMetres - tip) / radius);
        }
    }

    /// <summary>Takes the means.</summary>
    /// <param name="residual">Weighted residuals; index order of the grid.</param>
    /// <param name="weight">Their weights; index order of the grid.</param>
    /// <param name="active">Positions to take; index order of the lattice.</param>
    /// <param name="errors">Filled at active positions, 1; index order of the lattice.</param>
    public void Take(float[] residual, float[] weight, bool[] active, double[] errors) =>
        Chunks.Run(lattice.Rows * lattice.Layers, RowsTogether, parallelism, (first, end) =>
        {
            for (int index = first * lattice.Columns; index < end * lattice.Columns; index++)
            {
                errors[index] = active[index] ? Mean(index, residual, weight) : 0.0;
            }
        });

    private double Mean(int index, float[] residual, float[] weight)
    {
        int i = index % lattice.Columns, j = index / lattice.Columns % lattice.Rows, k = index / (lattice.Columns * lattice.Rows);
        int n = grid.CellsPerPitch, start = lattice.IsShifted(k) ? 0 : -(n / 2);
        int x0 = i * n + start, y0 = j * n + start, z0 = k * grid.CellsPerLayer + lowest;
        double sum = 0.0, norm = 0.0;
        for (int c = Math.Max(0, -z0); c < upright.Length && z0 + c < grid.Nz; c++)
        {
            for (int b = Math.Max(0, -y0); b < level.Length && y0 + b < grid.Ny; b++)
            {
                double rowSum = 0.0, rowNorm = 0.0;
                int row = ((z0 + c) * grid.Ny + y0 + b) * grid.Nx + x0;
                for (int a = Math.Max(0, -x0); a < level.Length && x0 + a < grid.Nx; a++)
                {
                    rowSum += level[a] * residual[row + a];
                    rowNorm += level[a] * weight[row + a];
                }

                double share = upright[c] * level[b];
                sum += share * rowSum;
                norm += share * rowNorm;
            }
        }

        return norm > 0.0 ? sum / norm : 0.0;
    }

    private static double Bell(double x) => Elementary.Exp(-x * x);
}
