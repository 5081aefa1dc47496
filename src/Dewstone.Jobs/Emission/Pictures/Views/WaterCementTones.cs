using System.Numerics;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>Tones of water/cement in even bands of one hue, the wetter the deeper: bands are read off a picture more surely than a smooth ramp, in grey too.</summary>
internal sealed class WaterCementTones
{
    /// <summary>Tone of a pocket that did not set.</summary>
    public static readonly Vector3 Loose = new(0.86f, 0.72f, 0.50f);

    /// <summary>Tone of the driest band.</summary>
    public static readonly Rgb24 Driest = new(226, 235, 240);

    /// <summary>Tone halfway.</summary>
    public static readonly Rgb24 Middle = new(110, 158, 194);

    /// <summary>Tone of the wettest band.</summary>
    public static readonly Rgb24 Wettest = new(20, 58, 92);

    private readonly MoistureResult moisture;
    private readonly float[] level;
    private readonly Vector3[] tones;
    private readonly float perContent;
    private readonly float cellsPerLength;

    /// <summary>The tones for a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surface">Its predicted solid.</param>
    public WaterCementTones(PredictedJob job, HardenedSurface surface)
    {
        moisture = job.Moisture;
        level = surface.Level;
        double ratio = moisture.LiquidKilogramsPerCubicMetre / moisture.BinderKilogramsPerCubicMetre;
        double least = moisture.ThresholdContent * ratio, most = Math.Max(job.Solid.LargestWaterCement, least + 0.05);
        Step = most - least > 0.5 ? 0.1 : 0.05;
        First = Math.Floor(least / Step + 1e-9) * Step;
        int count = Math.Max(2, (int)Math.Ceiling((most - First) / Step - 1e-9));
        tones = [.. Enumerable.Range(0, count).Select(band => ViewPainter.ToColour(Ramp(band / (count - 1f))))];
        perContent = (float)ratio;
        cellsPerLength = (float)(moisture.Grid.CellMetres / moisture.Grid.CellHeightMetres);
    }

    /// <summary>Lower end of the first band, 1.</summary>
    public double First { get; }

    /// <summary>Width of a band, 1.</summary>
    public double Step { get; }

    /// <summary>Colours of the bands, driest first; what lies beyond takes the outermost.</summary>
    public IReadOnlyList<Vector3> Bands => tones;

    /// <summary>Tone at a point.</summary>
    /// <param name="point">In horizontal cell edges from the grid's lower corner.</param>
    /// <returns>Red, green, blue, 0 to 1.</returns>
    public Vector3 At(Vector3 point)
    {
        float px = point.X - 0.5f, py = point.Y - 0.5f, pz = point.Z * cellsPerLength - 0.5f;
        int x = Math.Clamp((int)px, 0, moisture.Grid.Nx - 2), y = Math.Clamp((int)py, 0, moisture.Grid.Ny - 2), z = Math.Clamp((int)pz, 0, moisture.Grid.Nz - 2);
        Vector3 share = Vector3.Clamp(new Vector3(px - x, py - y, pz - z), Vector3.Zero, Vector3.One);
        int at = (z * moisture.Grid.Ny + y) * moisture.Grid.Nx + x;
        if (Between(level, at, share) <= 0f)
        {
            return Loose;
        }

        int band = (int)MathF.Floor((float)((perContent * Between(moisture.VolumetricWaterContent, at, share) - First) / Step));
        return tones[Math.Clamp(band, 0, tones.Length - 1)];
    }

    private static Rgb24 Ramp(float share) => share < 0.5f ? Ink.Mix(Driest, Middle, 2f * share) : Ink.Mix(Middle, Wettest, 2f * share - 1f);

    private float Between(float[] f, int at, Vector3 share)
    {
        int plane = moisture.Grid.Nx * moisture.Grid.Ny;
        float low = InPlane(f, at, share), high = InPlane(f, at + plane, share);
        return low + share.Z * (high - low);
    }

    private float InPlane(float[] f, int at, Vector3 share)
    {
        int nx = moisture.Grid.Nx;
        float near = f[at] + share.X * (f[at + 1] - f[at]), far = f[at + nx] + share.X * (f[at + nx + 1] - f[at + nx]);
        return near + share.Y * (far - near);
    }
}
