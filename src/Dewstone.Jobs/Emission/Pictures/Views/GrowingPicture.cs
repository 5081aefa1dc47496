using System.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// The unit growing, one picture a layer. Seen from above, a layer always lies before those below it, so each picture is the one before with the
/// new layer laid over it, and only the new layer is followed along the sight lines. The fresh top is toned as damp mix.
/// </summary>
internal sealed class GrowingPicture
{
    /// <summary>Pixels across.</summary>
    public const int Width = 480;

    /// <summary>Pixels down.</summary>
    public const int Height = 420;

    private static readonly Vector3 Concrete = new(0.900f, 0.868f, 0.812f);
    private static readonly Vector3 Damp = new(0.33f, 0.45f, 0.56f);

    /// <summary>The colours the pictures need: lettering, the damp top, and concrete from shade to sun.</summary>
    public static Rgb24[] Palette { get; } =
    [
        .. Enumerable.Range(0, 16).Select(step => Ink.Mix(Ink.Line, Ink.Paper, step / 15f)),
        .. Enumerable.Range(0, 12).Select(step => Ink.Mix(Ink.Quiet, Ink.Paper, step / 12f)),
        .. Enumerable.Range(1, 100).Select(step => ViewPainter.ToPixel(Concrete * (step / 90f))),
        ViewPainter.ToPixel(Damp),
    ];

    private readonly CompiledJob job;
    private readonly Body solid;
    private readonly ViewCamera camera;
    private readonly Daylight light;

    /// <summary>The pictures of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="solid">Its predicted solid.</param>
    public GrowingPicture(CompiledJob job, Body solid)
    {
        this.job = job;
        this.solid = solid;
        camera = new ViewCamera(job, 33.0, 32.0, Width, Height, 22, 44);
        light = new Daylight(camera);
    }

    /// <summary>Draws all pictures.</summary>
    /// <param name="parallelism">Threads; no picture depends on them.</param>
    /// <param name="cancellation">Looked at once a layer.</param>
    /// <returns>One sheet a layer, lowest first.</returns>
    public Canvas[] Draw(Parallelism parallelism, CancellationToken cancellation)
    {
        Lattice lattice = job.Lattice;
        double cell = job.Moisture.Grid.CellMetres;
        Canvas[] sheets = new Canvas[lattice.Layers];
        Rgb24[] standing = new Canvas(Width, Height).Pixels;
        for (int layer = 0; layer < lattice.Layers; layer++)
        {
            cancellation.ThrowIfCancellationRequested();
            float foot = (float)(layer * lattice.LayerMetres / cell), top = (float)((layer + 1) * lattice.LayerMetres / cell);
            Canvas sheet = new(Width, Height);
            Parallel.For(0, Height, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads }, y => Row(standing, sheet.Pixels, y, foot, top));
            Lettering.Plain.Write(sheet, job.Description.Unit.Name, 18f, Height - 18f, Ink.Line);
            Lettering.Plain.Write(sheet, $"layer {layer + 1} of {lattice.Layers}", Width - 18f, Height - 18f, Ink.Quiet, 1f);
            sheets[layer] = sheet;
        }

        return sheets;
    }

    private void Row(Rgb24[] standing, Rgb24[] fresh, int y, float foot, float top)
    {
        for (int x = 0; x < Width; x++)
        {
            int pixel = y * Width + x;
            Vector3 from = camera.Through(x + 0.5f, y + 0.5f), forward = camera.Forward;
            float enter = (top - from.Z) / forward.Z, leave = (foot - from.Z) / forward.Z;
            float t = solid.Meet(from, forward, enter, leave);
            if (float.IsPositiveInfinity(t))
            {
                fresh[pixel] = standing[pixel];
                continue;
            }

            Vector3 point = from + t * forward;
            if (t <= enter)
            {
                standing[pixel] = ViewPainter.ToPixel(Concrete * light.On(Vector3.UnitZ, 1f, 1f));
                fresh[pixel] = ViewPainter.ToPixel(Damp);
                continue;
            }

            Vector3 normal = solid.Normal(point);
            // Half the openness of the finished unit: all of it would shade a tunnel's floor before the roof is there.
            float open = 0.5f + 0.5f * solid.Open(point, normal);
            standing[pixel] = ViewPainter.ToPixel(Concrete * light.On(normal, open, 1f));
            fresh[pixel] = standing[pixel];
        }
    }
}
