using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>
/// Where the predicted solid ends, placed between the cells: the one field that volume, mass, distances, meshes and pictures are taken from. Positive where it
/// hardened, 0 on the surface.
/// </summary>
/// <remarks>
/// The front is a cliff, so the content itself, straight between two cell centres, would put the surface too far in. With D proportional to s^m the field is
/// (s / s threshold)^(m - 1) - 1, with D = exp(b s) it is exp(b (s - s threshold)) - 1: nearly straight near the front. Values are cut off at 2: a cell beside
/// the front says how far the front has come, not how wet the solid is behind it, and uncut a wet cell throws the surface nearly a whole cell out. Measured:
/// the exact point source of Barenblatt (1952) and Pattle (1959), 35 mL on a pitch of 50.8 mm, 203.99 mL set, at 8, 12, 16, 24 cells a voxel: -5.5, -1.8,
/// -1.0, -0.7 % (uncut -2.6, -1.1, -1.0, -0.7 %; cells counted whole -12.6, -3.9, -3.1, -0.9 %). The block of 0.5 m3 of the examples at 4, 6, 8, 12 cells:
/// 538.4, 533.0, 533.4, 532.6 L (uncut 543.7, 538.1, 535.7, 533.6; counted 530.8, 524.7, 527.4, 529.2): all three near 531 L as cells get smaller. Counted
/// cells fall short because a cell at the front holds less than the threshold on the mean while its inner part has set.
/// </remarks>
public sealed class HardenedSurface
{
    /// <summary>Values are cut off here: only the neighbourhood of 0 shapes a surface.</summary>
    private const double Most = 2.0;

    /// <summary>Planes that one piece of work takes.</summary>
    private const int PlanesTogether = 4;

    private readonly Lazy<SurfaceMesh> mesh;

    private HardenedSurface(CellGrid grid, float[] level, Parallelism parallelism)
    {
        (Grid, Level) = (grid, level);
        mesh = new Lazy<SurfaceMesh>(() => IsoSurface.At(
            level, new GridShape(grid.Nx, grid.Ny, grid.Nz), new CellSize(grid.CellMetres, grid.CellHeightMetres), 0f, parallelism));
    }

    /// <summary>The cells.</summary>
    public CellGrid Grid { get; }

    /// <summary>The level field, 1, from -1 to 2; index order of the grid.</summary>
    public float[] Level { get; }

    /// <summary>The surface, closed; metres from the grid's lower corner. Made when first asked for.</summary>
    public SurfaceMesh Mesh => mesh.Value;

    /// <summary>The surface of a predicted solid.</summary>
    /// <param name="moisture">What the water did.</param>
    /// <param name="law">Law of diffusivity of the mix.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The surface.</returns>
    public static HardenedSurface Of(MoistureResult moisture, WettingLaw law, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(moisture);
        ArgumentNullException.ThrowIfNull(law);
        float[] level = new float[moisture.VolumetricWaterContent.Length];
        int plane = moisture.Grid.Nx * moisture.Grid.Ny;
        Chunks.Run(moisture.Grid.Nz, PlanesTogether, parallelism, (first, end) =>
        {
            Range cells = (first * plane)..(end * plane);
            if (law is PowerLaw)
            {
                Power(moisture.VolumetricWaterContent.AsSpan(cells), level.AsSpan(cells), law.Residual, moisture.ThresholdContent, Math.Max(law.Exponent - 1, 1));
            }
            else
            {
                double steepness = law.Exponent / (moisture.Porosity - law.Residual);
                Exponential(moisture.VolumetricWaterContent.AsSpan(cells), level.AsSpan(cells), law.Residual, moisture.ThresholdContent, steepness);
            }
        });
        return new HardenedSurface(moisture.Grid, level, parallelism);
    }

    private static void Power(ReadOnlySpan<float> content, Span<float> level, double residual, double threshold, int power)
    {
        double scale = 1.0 / (threshold - residual);
        for (int i = 0; i < content.Length; i++)
        {
            double ratio = (content[i] - residual) * scale;
            level[i] = ratio <= 0.0 ? -1f : (float)Math.Min(Most, Elementary.WholePower(ratio, power) - 1.0);
        }
    }

    private static void Exponential(ReadOnlySpan<float> content, Span<float> level, double residual, double threshold, double steepness)
    {
        float dry = (float)(Elementary.Exp(-steepness * (threshold - residual)) - 1.0);
        double full = threshold + Elementary.Log(1.0 + Most) / steepness;
        for (int i = 0; i < content.Length; i++)
        {
            level[i] = content[i] <= residual ? dry
                : content[i] >= full ? (float)Most
                : (float)(Elementary.Exp(steepness * (content[i] - threshold)) - 1.0);
        }
    }
}
