using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Inspection;

/// <summary>Cells and moisture whose hardened surface lies where a signed distance is 0.</summary>
internal static class FrontFields
{
    private const double Threshold = 0.0935;

    /// <summary>Cubic cells from a corner at 0.</summary>
    public static CellGrid Grid(int nx, int ny, int nz, double cellMetres) => new()
    {
        Nx = nx,
        Ny = ny,
        Nz = nz,
        CellsPerPitch = 2,
        CellsPerLayer = 2,
        Origin = new Point3(0.0, 0.0, 0.0),
        CellMetres = cellMetres,
        CellHeightMetres = cellMetres,
    };

    /// <summary>Content straight across the front: the threshold where the distance is 0, twice that two cells inside, nothing two cells outside.</summary>
    public static MoistureResult Moisture(CellGrid grid, Func<Point3, double> distance) => Samples.Moisture(
        grid,
        i =>
        {
            Point3 centre = grid.Centre(i % grid.Nx, i / grid.Nx % grid.Ny, i / (grid.Nx * grid.Ny));
            return Threshold * Math.Clamp(1.0 - 0.5 * distance(centre) / grid.CellMetres, 0.0, 2.0);
        });

    /// <summary>The surface of such moisture: the law's exponent 2 makes the level field go straight with the content.</summary>
    public static HardenedSurface Surface(MoistureResult moisture) =>
        HardenedSurface.Of(moisture, new PowerLaw { AtSaturation = new Diffusivity(3.2e-6), Exponent = 2 }, new Parallelism(1));

    /// <summary>Signed distance to a ball.</summary>
    public static double Ball(Point3 p, Point3 centre, double radius)
    {
        double x = p.X - centre.X, y = p.Y - centre.Y, z = p.Z - centre.Z;
        return Math.Sqrt(x * x + y * y + z * z) - radius;
    }
}
