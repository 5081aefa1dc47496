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
    public const int Width = 432;

    /// <summary>Pixels down.</summary>
    public const int Height = 378;

    // The top of the last layer is the top of the bed too: which of the two a sight line meets first is a matter of rounding. Cells.
    private const float Slack = 1e-3f;

    // Two looks a pixel, on a diagonal, are enough for smooth edges at this size.
    private static readonly Vector2[] Points = [new(0.25f, 0.25f), new(0.75f, 0.75f)];
    private static readonly Vector3 Concrete = new(0.900f, 0.868f, 0.812f);
    private static readonly Vector3 Damp = new(0.33f, 0.45f, 0.56f);

    /// <summary>The colours the pictures need: lettering, the damp top, and concrete from shade to sun.</summary>
    public static Rgb24[] Palette { get; } =
    [
        .. Enumerable.Range(0, 16).Select(step => Ink.Mix(Ink.Line, Ink.Paper, step / 15f)),
        .. Enumerable.Range(0, 12).Select(step => Ink.Mix(Ink.Quiet, Ink.Paper, step / 12f)),
        .. Enumerable.Range(1, 100).Select(step => ViewPainter.ToPixel(Concrete * (step / 90f))),
        .. Enumerable.Range(0, 9).SelectMany(step => new[] { Concrete, Concrete * 0.6f, ViewPainter.ToColour(Ink.Paper) }
            .Select(other => ViewPainter.ToPixel(Vector3.Lerp(Damp, other, step / 8f)))),
        .. Enumerable.Range(1, 8).SelectMany(step => new[] { 0.3f, 0.5f, 0.7f }
            .Select(share => ViewPainter.ToPixel(Vector3.Lerp(Concrete * (step / 9f), ViewPainter.ToColour(Ink.Paper), share)))),
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
        Vector3[] standing = new Vector3[Points.Length * Width * Height];
        Array.Fill(standing, ViewPainter.ToColour(Ink.Paper));
        for (int layer = 0; layer < lattice.Layers; layer++)
        {
            cancellation.ThrowIfCancellationRequested();
            float foot = (float)(layer * lattice.LayerMetres / cell), top = (float)((layer + 1) * lattice.LayerMetres / cell);
            Canvas sheet = new(Width, Height);
            (int from, int to) = Rows(foot, top);
            Parallel.For(0, Height, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads },
                y => Row(standing, sheet.Pixels, y, foot, top, y >= from && y < to));
            Lettering.Plain.Write(sheet, job.Description.Unit.Name, 18f, Height - 18f, Ink.Line);
            Lettering.Plain.Write(sheet, $"layer {layer + 1} of {lattice.Layers}", Width - 18f, Height - 18f, Ink.Quiet, 1f);
            sheets[layer] = sheet;
        }

        return sheets;
    }

    // Rows of the picture that a layer can appear in.
    private (int From, int To) Rows(float foot, float top)
    {
        CellGrid grid = job.Moisture.Grid;
        float highest = float.MaxValue, lowest = float.MinValue;
        for (int corner = 0; corner < 8; corner++)
        {
            float y = camera.Seen(new Vector3((corner & 1) * grid.Nx, (corner >> 1 & 1) * grid.Ny, (corner & 4) == 0 ? foot : top)).Y;
            highest = Math.Min(highest, y);
            lowest = Math.Max(lowest, y);
        }

        return ((int)highest - 1, (int)lowest + 2);
    }

    private void Row(Vector3[] standing, Rgb24[] fresh, int y, float foot, float top, bool reached)
    {
        for (int x = 0; x < Width; x++)
        {
            Vector3 sum = Vector3.Zero;
            for (int point = 0; point < Points.Length; point++)
            {
                ref Vector3 stands = ref standing[(y * Width + x) * Points.Length + point];
                sum += reached ? Look(x + Points[point].X, y + Points[point].Y, foot, top, ref stands) : stands;
            }

            fresh[y * Width + x] = ViewPainter.ToPixel(sum / Points.Length);
        }
    }

    private Vector3 Look(float x, float y, float foot, float top, ref Vector3 stands)
    {
        Vector3 from = camera.Through(x, y), forward = camera.Forward;
        float enter = (top - from.Z) / forward.Z, leave = (foot - from.Z) / forward.Z;
        float t = solid.Meet(from, forward, enter, leave);
        if (float.IsPositiveInfinity(t))
        {
            return stands;
        }

        if (t <= enter + Slack)
        {
            stands = Concrete * light.On(Vector3.UnitZ, 1f, 1f);
            return Damp;
        }

        Vector3 point = from + t * forward, normal = solid.Normal(point);
        // Half the openness of the finished unit: all of it would shade a tunnel's floor before the roof is there.
        float open = 0.5f + 0.5f * solid.Open(point, normal);
        stands = Concrete * light.On(normal, open, 1f);
        return stands;
    }
}
