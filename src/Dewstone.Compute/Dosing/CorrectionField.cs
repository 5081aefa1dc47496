using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>The wanted solid on the cells of one level of the correction, and what a misfit weighs in each.</summary>
internal sealed class CorrectionField
{
    private const int PlanesTogether = 2;

    private CorrectionField(TargetField target, float[] weights) => (Target, Weights) = (target, weights);

    /// <summary>The wanted solid.</summary>
    public TargetField Target { get; }

    /// <summary>Weight of each cell's misfit, 1; index order of the grid.</summary>
    public float[] Weights { get; }

    /// <summary>The cells.</summary>
    public CellGrid Grid => Target.Grid;

    /// <summary>Lays the wanted solid on cells.</summary>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="reliefMetres">Amplitude of the relief, metres; 0 for none.</param>
    /// <param name="rule">What weighs how much.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at once a slab.</param>
    /// <returns>The field.</returns>
    public static CorrectionField Over(
        ReefShape shape, UnitPlacement placement, CellGrid grid, double reliefMetres, CorrectionRule rule, Parallelism parallelism,
        CancellationToken cancellation)
    {
        TargetField target = Voxelizer.Voxelize(shape, placement, grid, parallelism, null, cancellation);
        GridShape cells = new(grid.Nx, grid.Ny, grid.Nz);
        CellSize size = new(grid.CellMetres, grid.CellHeightMetres);
        byte[] solid = new byte[grid.Count];
        for (int i = 0; i < solid.Length; i++)
        {
            solid[i] = target.Fraction[i] >= 0.5f ? (byte)1 : (byte)0;
        }

        float[] outward = DistanceTransform.Squared(solid, cells, size, Phase.Set, OutsideCells.Ignored, parallelism);
        float[] inward = DistanceTransform.Squared(solid, cells, size, Phase.Empty, OutsideCells.Empty, parallelism);
        double half = size.HalfMeanEdge;
        float[] weights = outward;
        Chunks.Run(grid.Nz, PlanesTogether, parallelism, (first, end) =>
        {
            for (int cell = first * cells.Plane; cell < end * cells.Plane; cell++)
            {
                double distance = Math.Max(0.0, Math.Sqrt(Math.Max(outward[cell], inward[cell])) - half);
                double weight = 1.0 + Math.Min(distance, rule.FarthestMetres) / rule.DepthMetres;
                bool isOpening = solid[cell] == 0 && distance <= 2.0 * rule.FarthestMetres && IsInOpening(shape, placement, grid, cell);
                weight *= isOpening ? rule.OpeningWeight : distance < reliefMetres ? rule.ReliefWeight : 1.0;
                weights[cell] = (float)weight;
            }
        });
        return new CorrectionField(target, weights);
    }

    /// <summary>A wanted field that is given, such as what another wetting gave.</summary>
    /// <param name="target">Wanted shares.</param>
    /// <param name="weights">Weight of each cell, 1.</param>
    /// <returns>The field.</returns>
    public static CorrectionField Given(TargetField target, float[] weights) => new(target, weights);

    /// <summary>Makes the solid in a position's own voxel weigh more.</summary>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="index">Position, flat lattice index.</param>
    /// <param name="factor">How many times, 1.</param>
    public void Stress(Lattice lattice, int index, double factor)
    {
        int layer = index / (lattice.Columns * lattice.Rows);
        int shift = lattice.IsShifted(layer) ? Grid.CellsPerPitch / 2 : 0;
        int x0 = index % lattice.Columns * Grid.CellsPerPitch + shift, y0 = index / lattice.Columns % lattice.Rows * Grid.CellsPerPitch + shift;
        for (int z = layer * Grid.CellsPerLayer; z < (layer + 1) * Grid.CellsPerLayer; z++)
        {
            for (int y = y0; y < y0 + Grid.CellsPerPitch; y++)
            {
                int row = (z * Grid.Ny + y) * Grid.Nx;
                for (int cell = row + x0; cell < row + x0 + Grid.CellsPerPitch; cell++)
                {
                    Weights[cell] *= Target.Fraction[cell] >= 0.5f ? (float)factor : 1f;
                }
            }
        }
    }

    /// <summary>The part of the field that a window sees from which the unit stands whole cells further than on these cells.</summary>
    /// <param name="grid">Cells of the window, of the same size.</param>
    /// <param name="x">Cell here, along x, that the window's first one shows; may lie outside.</param>
    /// <param name="y">The same along y.</param>
    /// <param name="z">The same along z.</param>
    /// <returns>A field of its own; cells that lie outside here are not wanted and weigh as the farthest.</returns>
    public CorrectionField Cut(CellGrid grid, int x, int y, int z)
    {
        float[] fraction = new float[grid.Count], weights = new float[grid.Count];
        Array.Fill(weights, Weights[0]);
        int first = Math.Max(0, -x), length = Math.Min(grid.Nx, Grid.Nx - x) - first;
        double cells = 0.0;
        for (int row = 0; length > 0 && row < grid.Ny * grid.Nz; row++)
        {
            int b = row % grid.Ny + y, c = row / grid.Ny + z;
            if (b < 0 || c < 0 || b >= Grid.Ny || c >= Grid.Nz)
            {
                continue;
            }

            int from = (c * Grid.Ny + b) * Grid.Nx + x + first, to = row * grid.Nx + first;
            Target.Fraction.AsSpan(from, length).CopyTo(fraction.AsSpan(to));
            Weights.AsSpan(from, length).CopyTo(weights.AsSpan(to));
            foreach (float share in fraction.AsSpan(to, length))
            {
                cells += share;
            }
        }

        return new CorrectionField(new TargetField { Grid = grid, Fraction = fraction, CubicMetres = cells * grid.CellCubicMetres }, weights);
    }

    private static bool IsInOpening(ReefShape shape, UnitPlacement placement, CellGrid grid, int cell)
    {
        Point3 point = placement.ToUnit(grid.Centre(cell % grid.Nx, cell / grid.Nx % grid.Ny, cell / (grid.Nx * grid.Ny)));
        Size3 box = shape.Box;
        if (point.X < 0.0 || point.Y < 0.0 || point.Z < 0.0 || point.X > box.X || point.Y > box.Y || point.Z > box.Z)
        {
            return false;
        }

        for (int opening = 0; opening < shape.Named.Count; opening++)
        {
            if (shape.OpeningDistance(opening, point) < 0.0)
            {
                return true;
            }
        }

        return false;
    }
}
