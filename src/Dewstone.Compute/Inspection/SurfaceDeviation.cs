using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Measures how far the hardened surface lies from the wanted one, both ways, without a cap.</summary>
/// <remarks>
/// The hardened surface lies where the effective saturation raised to the surface exponent crosses the threshold's: the front is a cliff, and the power makes
/// it nearly straight between two cells. Each triangle of it counts with its area and the distance of its centre to the shape; each triangle of the wanted
/// surface with its area and the distance of its centre to the hardened mesh. Walls of dry pockets that the hardened solid encloses where solid was wanted are
/// left out of the distances and given as an area: a few of them would drown everything said about the outside.
/// </remarks>
public static class SurfaceDeviation
{
    /// <summary>Depth below the wanted surface from which unset solid counts as deep, metres.</summary>
    public const double DeepMetres = 0.02;

    private const int TrianglesTogether = 4096;

    /// <summary>Room for the rounding of single precision, 1.</summary>
    private const double RoundingRoom = 1.0 + 1e-5;

    /// <summary>Measures.</summary>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="target">Wanted solid on the cells.</param>
    /// <param name="moisture">What the water did, on the same cells.</param>
    /// <param name="surfaceExponent">Power of the effective saturation that is nearly straight across a front, 1 or more.</param>
    /// <param name="residual">Residual water content of the law, 1.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The deviations.</returns>
    /// <exception cref="ArgumentException">Target and moisture on different cells.</exception>
    public static SurfaceDeviationReport Measure(
        ReefShape shape, UnitPlacement placement, TargetField target, MoistureResult moisture, int surfaceExponent, double residual, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(moisture);
        if (target.Fraction.Length != moisture.Grid.Count)
        {
            throw new ArgumentException($"The target has {target.Fraction.Length} cells, the moisture {moisture.Grid.Count}.", nameof(target));
        }

        SolidField wanted = SolidField.Of(target, parallelism), hardened = SolidField.Of(moisture, surfaceExponent, residual, parallelism);
        return Measure(shape, placement, wanted, hardened, DryPockets.Of(target, moisture, parallelism), parallelism);
    }

    /// <summary>Measures, with the fields at hand.</summary>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="wanted">Wanted solid on the cells.</param>
    /// <param name="hardened">Hardened solid on the same cells.</param>
    /// <param name="pockets">True in the cells of dry pockets.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The deviations.</returns>
    internal static SurfaceDeviationReport Measure(
        ReefShape shape, UnitPlacement placement, SolidField wanted, SolidField hardened, bool[] pockets, Parallelism parallelism)
    {
        CellGrid grid = hardened.Grid;
        SurfaceMesh hardenedMesh = hardened.Mesh(parallelism), wantedMesh = wanted.Mesh(parallelism);
        NearestTriangle nearest = new(hardenedMesh, grid.CellMetres);
        var samples = new DeviationSamples(hardenedMesh.Count + wantedMesh.Count);
        Chunks.Run(hardenedMesh.Count, TrianglesTogether, parallelism, (first, end) =>
        {
            for (int t = first; t < end; t++)
            {
                (float x, float y, float z) = hardenedMesh.Centre(t);
                Point3 printer = new(grid.Origin.X + x, grid.Origin.Y + y, grid.Origin.Z + z);
                bool pocket = DryPockets.IsAt(pockets, grid, x, y, z);
                samples.Set(t, pocket ? 0.0 : shape.SignedDistance(placement.ToUnit(printer)), hardenedMesh.TriangleArea(t), pocket);
            }
        });
        Chunks.Run(wantedMesh.Count, TrianglesTogether, parallelism, (first, end) =>
        {
            int triangle = 0;
            for (int t = first; t < end; t++)
            {
                (float x, float y, float z) = wantedMesh.Centre(t);
                int cell = hardened.CellAt(x, y, z);
                double distance = nearest.Distance(x, y, z, ref triangle, AtMost(hardened, cell, x, y, z));
                double sign = hardened.Distances[cell] < 0f ? 1.0 : -1.0;
                samples.Set(hardenedMesh.Count + t, sign * distance, wantedMesh.TriangleArea(t), double.IsInfinity(distance));
            }
        });
        return new SurfaceDeviationReport
        {
            MeanMetres = samples.Mean(),
            Percentile95Metres = samples.Percentile(0.95),
            SignedMeanMetres = samples.SignedMean(),
            PocketSquareMetres = samples.LeftOutArea(hardenedMesh.Count),
            DeepUnsetShare = DeepUnset(wanted, hardened),
            HardenedCubicMetres = hardenedMesh.Volume,
            TargetCubicMetres = wantedMesh.Volume,
        };
    }

    // From the point to its cell's centre and on to the nearest corner of the mesh: never less than the distance to the mesh.
    private static double AtMost(SolidField solid, int cell, double x, double y, double z)
    {
        double far = Math.Abs(solid.Distances[cell]) * RoundingRoom;
        double dx = x - (cell % solid.Cells.Nx + 0.5) * solid.Size.Width, dy = y - (cell / solid.Cells.Nx % solid.Cells.Ny + 0.5) * solid.Size.Width;
        double dz = z - (cell / solid.Cells.Plane + 0.5) * solid.Size.Height;
        return far >= solid.Farthest ? double.PositiveInfinity : far + Math.Sqrt(dx * dx + dy * dy + dz * dz) * RoundingRoom;
    }

    private static double DeepUnset(SolidField wanted, SolidField hardened)
    {
        long all = 0, unset = 0;
        for (int i = 0; i < wanted.Distances.Length; i++)
        {
            if (wanted.Distances[i] < -DeepMetres)
            {
                all++;
                unset += hardened.Distances[i] >= 0f ? 1 : 0;
            }
        }

        return all == 0 ? 0.0 : (double)unset / all;
    }
}
