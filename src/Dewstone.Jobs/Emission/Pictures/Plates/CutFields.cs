using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>What a plane cuts: level of the predicted solid and of the wanted one, on the cell centres of the plane.</summary>
/// <param name="Width">Cells along the first direction (x, or y in the section across x).</param>
/// <param name="Height">Cells along the second direction (y in a plan, z in a section).</param>
/// <param name="Solid">Level of the predicted solid, positive inside; second direction slowest.</param>
/// <param name="Target">Wanted share less a half, positive inside; same order.</param>
internal sealed record CutFields(int Width, int Height, float[] Solid, float[] Target)
{
    /// <summary>The plan at a height, interpolated between the two nearest planes of cells.</summary>
    /// <param name="surface">Predicted solid.</param>
    /// <param name="target">Wanted solid.</param>
    /// <param name="zMetres">Height, metres, printer frame.</param>
    /// <returns>The cut, x by y.</returns>
    public static CutFields AtHeight(HardenedSurface surface, TargetField target, double zMetres)
    {
        CellGrid grid = surface.Grid;
        (int below, float share) = Between((zMetres - grid.Origin.Z) / grid.CellHeightMetres, grid.Nz);
        int plane = grid.Nx * grid.Ny, above = Math.Min(below + 1, grid.Nz - 1);
        CutFields cut = New(grid.Nx, grid.Ny);
        for (int i = 0; i < plane; i++)
        {
            cut.Set(i, surface.Level, target.Fraction, below * plane + i, above * plane + i, share);
        }

        return cut;
    }

    /// <summary>The section across y, seen along y: x by z.</summary>
    /// <param name="surface">Predicted solid.</param>
    /// <param name="target">Wanted solid.</param>
    /// <param name="yMetres">Where, metres, printer frame.</param>
    /// <returns>The cut, x by z.</returns>
    public static CutFields AcrossY(HardenedSurface surface, TargetField target, double yMetres)
    {
        CellGrid grid = surface.Grid;
        (int before, float share) = Between((yMetres - grid.Origin.Y) / grid.CellMetres, grid.Ny);
        int behind = Math.Min(before + 1, grid.Ny - 1);
        CutFields cut = New(grid.Nx, grid.Nz);
        for (int z = 0; z < grid.Nz; z++)
        {
            for (int x = 0; x < grid.Nx; x++)
            {
                cut.Set(z * grid.Nx + x, surface.Level, target.Fraction, (z * grid.Ny + before) * grid.Nx + x, (z * grid.Ny + behind) * grid.Nx + x, share);
            }
        }

        return cut;
    }

    /// <summary>The section across x: y by z.</summary>
    /// <param name="surface">Predicted solid.</param>
    /// <param name="target">Wanted solid.</param>
    /// <param name="xMetres">Where, metres, printer frame.</param>
    /// <returns>The cut, y by z.</returns>
    public static CutFields AcrossX(HardenedSurface surface, TargetField target, double xMetres)
    {
        CellGrid grid = surface.Grid;
        (int before, float share) = Between((xMetres - grid.Origin.X) / grid.CellMetres, grid.Nx);
        int behind = Math.Min(before + 1, grid.Nx - 1);
        CutFields cut = New(grid.Ny, grid.Nz);
        for (int z = 0; z < grid.Nz; z++)
        {
            for (int y = 0; y < grid.Ny; y++)
            {
                int row = (z * grid.Ny + y) * grid.Nx;
                cut.Set(z * grid.Ny + y, surface.Level, target.Fraction, row + before, row + behind, share);
            }
        }

        return cut;
    }

    /// <summary>Greatest level of the predicted solid over the height of a layer.</summary>
    /// <param name="surface">Predicted solid.</param>
    /// <param name="layer">Layer, from 0.</param>
    /// <returns>The level, x by y.</returns>
    public static float[] AnywhereInLayer(HardenedSurface surface, int layer)
    {
        CellGrid grid = surface.Grid;
        int plane = grid.Nx * grid.Ny;
        float[] greatest = new float[plane];
        Array.Fill(greatest, -1f);
        for (int z = layer * grid.CellsPerLayer; z < (layer + 1) * grid.CellsPerLayer; z++)
        {
            ReadOnlySpan<float> level = surface.Level.AsSpan(z * plane, plane);
            for (int i = 0; i < plane; i++)
            {
                greatest[i] = Math.Max(greatest[i], level[i]);
            }
        }

        return greatest;
    }

    private static CutFields New(int width, int height) => new(width, height, new float[width * height], new float[width * height]);

    private static (int Below, float Share) Between(double cells, int count)
    {
        double centre = Math.Clamp(cells - 0.5, 0.0, count - 1.0);
        int below = (int)centre;
        return (below, (float)(centre - below));
    }

    private void Set(int i, float[] level, float[] fraction, int a, int b, float share)
    {
        Solid[i] = level[a] + share * (level[b] - level[a]);
        Target[i] = fraction[a] + share * (fraction[b] - fraction[a]) - 0.5f;
    }
}
