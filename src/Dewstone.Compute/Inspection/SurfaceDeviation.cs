using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Measures how far the hardened surface lies from the wanted one, both ways, without a cap.</summary>
/// <remarks>
/// Each patch of the hardened surface (<see cref="SurfacePatches"/>) counts with its area and the distance of its middle to the shape; each patch of the wanted
/// surface with its area and the distance of its middle to the hardened mesh. Walls of dry pockets that the hardened solid encloses where solid was wanted are
/// left out of the distances and given as an area: a few of them would drown everything said about the outside.
/// </remarks>
public static class SurfaceDeviation
{
    /// <summary>Depth below the wanted surface from which unset solid counts as deep, metres.</summary>
    public const double DeepMetres = 0.02;

    private const int PatchesTogether = 4096;

    /// <summary>Room for the rounding of single precision, 1.</summary>
    private const double RoundingRoom = 1.0 + 1e-4;

    /// <summary>Measures.</summary>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="target">Wanted solid on the cells.</param>
    /// <param name="moisture">What the water did, on the same cells.</param>
    /// <param name="surface">Where the hardened solid ends.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The deviations.</returns>
    /// <exception cref="ArgumentException">Target and moisture on different cells.</exception>
    public static SurfaceDeviationReport Measure(
        ReefShape shape, UnitPlacement placement, TargetField target, MoistureResult moisture, HardenedSurface surface, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(moisture);
        ArgumentNullException.ThrowIfNull(surface);
        if (target.Fraction.Length != moisture.Grid.Count)
        {
            throw new ArgumentException($"The target has {target.Fraction.Length} cells, the moisture {moisture.Grid.Count}.", nameof(target));
        }

        SolidField wanted = SolidField.Of(target, parallelism), hardened = SolidField.Of(surface, parallelism);
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
        SurfacePatches hardenedPatches = SurfacePatches.Of(hardenedMesh, hardened.Size), wantedPatches = SurfacePatches.Of(wantedMesh, wanted.Size);
        var samples = new DeviationSamples(hardenedPatches.Count + wantedPatches.Count);
        Chunks.Run(hardenedPatches.Count, PatchesTogether, parallelism, (first, end) =>
        {
            for (int patch = first; patch < end; patch++)
            {
                (float x, float y, float z) = hardenedPatches.Middle(patch);
                Point3 printer = new(grid.Origin.X + x, grid.Origin.Y + y, grid.Origin.Z + z);
                bool pocket = DryPockets.IsAt(pockets, grid, x, y, z);
                samples.Set(patch, pocket ? 0.0 : shape.SignedDistance(placement.ToUnit(printer)), hardenedPatches.Area(patch), pocket);
            }
        });
        Chunks.Run(wantedPatches.Count, PatchesTogether, parallelism, (first, end) =>
        {
            int triangle = 0;
            for (int patch = first; patch < end; patch++)
            {
                (float x, float y, float z) = wantedPatches.Middle(patch);
                int cell = hardened.CellAt(x, y, z);
                triangle = Foot(hardened, nearest, cell, x, y, z, triangle);
                double distance = nearest.Distance(x, y, z, ref triangle, AtMost(hardened, x, y, z));
                double sign = hardened.Distances[cell] < 0f ? 1.0 : -1.0;
                samples.Set(hardenedPatches.Count + patch, sign * distance, wantedPatches.Area(patch), double.IsInfinity(distance));
            }
        });
        return new SurfaceDeviationReport
        {
            MeanMetres = samples.Mean(),
            Percentile95Metres = samples.Percentile(0.95),
            SignedMeanMetres = samples.SignedMean(),
            PocketSquareMetres = samples.LeftOutArea(hardenedPatches.Count),
            DeepUnsetShare = DeepUnset(wanted, hardened),
            HardenedCubicMetres = hardenedMesh.Volume,
            TargetCubicMetres = wantedMesh.Volume,
        };
    }

    // A triangle where the way down the slope of the distances ends: hardly ever far from the nearest one.
    private static int Foot(SolidField solid, NearestTriangle nearest, int cell, double x, double y, double z, int otherwise)
    {
        (GridShape cells, CellSize size, float[] distances) = (solid.Cells, solid.Size, solid.Distances);
        int i = cell % cells.Nx, j = cell / cells.Nx % cells.Ny, k = cell / cells.Plane;
        if (i == 0 || j == 0 || k == 0 || i == cells.Nx - 1 || j == cells.Ny - 1 || k == cells.Nz - 1)
        {
            return otherwise;
        }

        double slopeX = (distances[cell + 1] - distances[cell - 1]) / (2.0 * size.Width);
        double slopeY = (distances[cell + cells.Nx] - distances[cell - cells.Nx]) / (2.0 * size.Width);
        double slopeZ = (distances[cell + cells.Plane] - distances[cell - cells.Plane]) / (2.0 * size.Height);
        double here = distances[cell] + slopeX * (x - (i + 0.5) * size.Width) + slopeY * (y - (j + 0.5) * size.Width) + slopeZ * (z - (k + 0.5) * size.Height);
        double along = here / Math.Max(slopeX * slopeX + slopeY * slopeY + slopeZ * slopeZ, 0.25);
        return nearest.Near(x - along * slopeX, y - along * slopeY, z - along * slopeZ, otherwise);
    }

    // By way of one of the eight cell centres around the point to the nearest corner of the mesh: never less than the distance to the mesh.
    private static double AtMost(SolidField solid, double x, double y, double z)
    {
        (GridShape cells, CellSize size) = (solid.Cells, solid.Size);
        int i = (int)Math.Floor(x / size.Width - 0.5), j = (int)Math.Floor(y / size.Width - 0.5), k = (int)Math.Floor(z / size.Height - 0.5);
        double least = double.PositiveInfinity;
        for (int corner = 0; corner < 8; corner++)
        {
            int a = Math.Clamp(i + (corner & 1), 0, cells.Nx - 1), b = Math.Clamp(j + (corner >> 1 & 1), 0, cells.Ny - 1);
            int c = Math.Clamp(k + (corner >> 2), 0, cells.Nz - 1);
            double far = Math.Abs(solid.Distances[cells.Index(a, b, c)]);
            double dx = x - (a + 0.5) * size.Width, dy = y - (b + 0.5) * size.Width, dz = z - (c + 0.5) * size.Height;
            least = far * RoundingRoom < solid.Farthest ? Math.Min(least, far + Math.Sqrt(dx * dx + dy * dy + dz * dz)) : least;
        }

        return least * RoundingRoom;
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
