using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>
/// The predicted solid as a level field: positive where it hardened, negative where it did not, 0 on the surface; index order of the grid.
/// The wetting front is a cliff, so the water content itself, interpolated between cells, would place the surface millimetres too far in.
/// With D proportional to s^m the field is (theta/threshold)^(m - 1) - 1, which is nearly straight near the front: in the reference run of
/// an independent prototype of the same model a lone ball of 73.04 mm read 73.4 mm at 8 cells a voxel with it and 69.9 mm without.
/// For the exponential law with exponent b it is exp(b (s - s_threshold)) - 1, for the same reason.
/// </summary>
internal sealed class HardeningSurface
{
    /// <summary>Values are cut off here: only the neighbourhood of 0 shapes a surface.</summary>
    private const float Most = 2f;

    private HardeningSurface(CellGrid grid, float[] level)
    {
        Grid = grid;
        Level = level;
    }

    /// <summary>The cells.</summary>
    public CellGrid Grid { get; }

    /// <summary>The level field, 1, from -1 to 2; index order of the grid.</summary>
    public float[] Level { get; }

    /// <summary>The level field of a job.</summary>
    /// <param name="moisture">What the water did.</param>
    /// <param name="law">Law of diffusivity.</param>
    /// <param name="parallelism">Threads; the result does not depend on them.</param>
    /// <returns>The field.</returns>
    public static HardeningSurface Of(MoistureResult moisture, WettingLaw law, Parallelism parallelism)
    {
        float[] content = moisture.VolumetricWaterContent;
        float[] level = new float[content.Length];
        int plane = moisture.Grid.Nx * moisture.Grid.Ny;
        float threshold = (float)moisture.ThresholdContent;
        float perContent = 1f / threshold;
        int power = law is PowerLaw ? Math.Max(law.Exponent - 1, 1) : 0;
        float steepness = (float)(law.Exponent / (moisture.Porosity - law.Residual));
        Parallel.For(0, moisture.Grid.Nz, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, z =>
        {
            ReadOnlySpan<float> from = content.AsSpan(z * plane, plane);
            Span<float> to = level.AsSpan(z * plane, plane);
            for (int i = 0; i < from.Length; i++)
            {
                to[i] = Math.Min(Most, power > 0 ? Raised(from[i] * perContent, power) - 1f : MathF.Exp(steepness * (from[i] - threshold)) - 1f);
            }
        });
        return new HardeningSurface(moisture.Grid, level);
    }

    private static float Raised(float ratio, int power)
    {
        float product = ratio;
        for (int i = 1; i < power; i++)
        {
            product *= ratio;
        }

        return product;
    }
}
