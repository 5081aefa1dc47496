using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>The water content between the centres of the cells, straight from one to the next along each axis; beyond the outermost it stays.</summary>
/// <param name="moisture">What the water did.</param>
internal readonly struct MoistureSample(MoistureResult moisture)
{
    private readonly CellGrid grid = moisture.Grid;
    private readonly float[] content = moisture.VolumetricWaterContent;

    /// <summary>Content at a point.</summary>
    /// <param name="printer">Metres, printer frame.</param>
    /// <returns>Volumetric water content, 1.</returns>
    public double At(Point3 printer)
    {
        (int x, int stepX, double shareX) = Between((printer.X - grid.Origin.X) / grid.CellMetres, grid.Nx, 1);
        (int y, int stepY, double shareY) = Between((printer.Y - grid.Origin.Y) / grid.CellMetres, grid.Ny, grid.Nx);
        (int z, int stepZ, double shareZ) = Between((printer.Z - grid.Origin.Z) / grid.CellHeightMetres, grid.Nz, grid.Nx * grid.Ny);
        int at = (z * grid.Ny + y) * grid.Nx + x;
        return Mix(
            Mix(Row(at, stepX, shareX), Row(at + stepY, stepX, shareX), shareY),
            Mix(Row(at + stepZ, stepX, shareX), Row(at + stepZ + stepY, stepX, shareX), shareY),
            shareZ);
    }

    private static (int Cell, int Step, double Share) Between(double cells, int count, int step)
    {
        double along = Math.Clamp(cells - 0.5, 0.0, count - 1);
        int cell = (int)along;
        return cell + 1 < count ? (cell, step, along - cell) : (cell, 0, 0.0);
    }

    private static double Mix(double a, double b, double share) => a + share * (b - a);

    private double Row(int at, int step, double share) => Mix(content[at], content[at + step], share);
}
