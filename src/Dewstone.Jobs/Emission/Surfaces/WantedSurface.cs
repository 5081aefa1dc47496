using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>The surface of the wanted solid on the job's cells, from its signed distance.</summary>
internal static class WantedSurface
{
    /// <summary>Finds it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="shape">The wanted solid.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>The surface.</returns>
    public static UnitSurface Of(PredictedJob job, ReefShape shape, Parallelism parallelism)
    {
        (CellGrid grid, float[] distances) = SurfaceDistances.Of(shape, job.Placement, job.Target, parallelism);
        SurfaceMesh mesh = IsoSurface.At(
            distances, new GridShape(grid.Nx, grid.Ny, grid.Nz), new CellSize(grid.CellMetres, grid.CellHeightMetres), 0f, parallelism);
        return UnitSurface.Of(mesh, grid, job.Placement, parallelism);
    }
}
