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
        CellGrid grid = moisture.Grid;
        if (target.Fraction.Length != grid.Count)
        {
            throw new ArgumentException($"The target has {target.Fraction.Length} cells, the moisture {grid.Count}.", nameof(target));
        }

        GridShape cells = new(grid.Nx, grid.Ny, grid.Nz);
        CellSize size = new(grid.CellMetres, grid.CellHeightMetres);
        float[] front = FrontField(moisture, surfaceExponent, residual);
        SurfaceMesh hardened = IsoSurface.At(front, cells, size, 1f, parallelism);
        SurfaceMesh wanted = IsoSurface.At(target.Fraction, cells, size, 0.5f, parallelism);
        NearestTriangle hardenedBins = new(hardened, 2.0 * grid.CellMetres), wantedBins = new(wanted, 2.0 * grid.CellMetres);
        bool[] pocketCells = DryPockets.Of(target, moisture, parallelism);

        var samples = new DeviationSamples(hardenedBins.Count + wantedBins.Count);
        Chunks.Run(hardenedBins.Count, TrianglesTogether, parallelism, (first, end) =>
        {
            for (int t = first; t < end; t++)
            {
                (float x, float y, float z) = hardenedBins.Centre(t);
                Point3 printer = new(grid.Origin.X + x, grid.Origin.Y + y, grid.Origin.Z + z);
                bool pocket = DryPockets.IsAt(pocketCells, grid, x, y, z);
                samples.Set(t, shape.SignedDistance(placement.ToUnit(printer)), hardenedBins.Area(t), pocket);
            }
        });
        Chunks.Run(wantedBins.Count, TrianglesTogether, parallelism, (first, end) =>
        {
            for (int t = first; t < end; t++)
            {
                (float x, float y, float z) = wantedBins.Centre(t);
                double distance = hardenedBins.Distance(x, y, z);
                double sign = front[CellAt(grid, x, y, z)] >= 1f ? 1.0 : -1.0;
                samples.Set(hardenedBins.Count + t, sign * distance, wantedBins.Area(t), double.IsInfinity(distance));
            }
        });
        return new SurfaceDeviationReport
        {
            MeanMetres = samples.Mean(),
            Percentile95Metres = samples.Percentile(0.95),
            SignedMeanMetres = samples.SignedMean(),
            PocketSquareMetres = samples.LeftOutArea(hardenedBins.Count),
            DeepUnsetShare = DeepUnset(target, moisture, cells, size, parallelism),
            HardenedCubicMetres = hardened.Volume,
            TargetCubicMetres = wanted.Volume,
            Tunnels = TunnelClearances.Measure(shape, placement, grid, wantedBins, hardenedBins, target.Fraction, front, parallelism),
        };
    }

    /// <summary>The field whose level 1 is the hardened surface.</summary>
    internal static float[] FrontField(MoistureResult moisture, int exponent, double residual)
    {
        ReadOnlySpan<float> content = moisture.VolumetricWaterContent;
        var field = new float[content.Length];
        double scale = 1.0 / (moisture.ThresholdContent - residual);
        for (int i = 0; i < field.Length; i++)
        {
            double ratio = Math.Max(0.0, (content[i] - residual) * scale);
            field[i] = ratio <= 0.0 ? 0f : (float)Elementary.WholePower(ratio, exponent);
        }

        return field;
    }

    private static int CellAt(CellGrid grid, double x, double y, double z) =>
        (Math.Clamp((int)(z / grid.CellHeightMetres), 0, grid.Nz - 1) * grid.Ny + Math.Clamp((int)(y / grid.CellMetres), 0, grid.Ny - 1)) * grid.Nx
        + Math.Clamp((int)(x / grid.CellMetres), 0, grid.Nx - 1);

    private static double DeepUnset(TargetField target, MoistureResult moisture, GridShape cells, CellSize size, Parallelism parallelism)
    {
        byte[] solid = new byte[target.Fraction.Length];
        for (int i = 0; i < solid.Length; i++)
        {
            solid[i] = target.Fraction[i] >= 0.5f ? (byte)1 : (byte)0;
        }

        float[] squared = DistanceTransform.Squared(solid, cells, size, Phase.Empty, OutsideCells.Empty, parallelism);
        double reach = DeepMetres + size.HalfMeanEdge;
        float deep = (float)(reach * reach);
        long all = 0, unset = 0;
        for (int i = 0; i < solid.Length; i++)
        {
            if (squared[i] > deep)
            {
                all++;
                unset += moisture.Hardened[i] == 0 ? 1 : 0;
            }
        }

        return all == 0 ? 0.0 : (double)unset / all;
    }
}
