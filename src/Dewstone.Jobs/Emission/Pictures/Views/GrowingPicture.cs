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

    // Looked at are the corners of the pixels, which neighbours share: one look a pixel makes smooth edges. The rightmost and lowest have corners beyond the sheet.
    private const int Stride = Width + 1;

    private const int TilesAcross = Width / Approach.Tile + 1, TilesDown = Height / Approach.Tile + 1;

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

    private readonly PredictedJob job;
    private readonly Body solid;
    private readonly ViewCamera camera;
    private readonly Daylight light;

    /// <summary>The pictures of a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="solid">Its predicted solid.</param>
    public GrowingPicture(PredictedJob job, Body solid)
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
        Vector3[] standing = new Vector3[Stride * (Height + 1)], shown = new Vector3[standing.Length];
        Array.Fill(standing, ViewPainter.ToColour(Ink.Paper));
        Array.Fill(shown, ViewPainter.ToColour(Ink.Paper));
        Rgb24[] drawn = new Canvas(Width, Height).Pixels;
        Approach? below = null;
        ParallelOptions options = new() { MaxDegreeOfParallelism = parallelism.Threads };
        for (int layer = 0; layer < lattice.Layers; layer++)
        {
            cancellation.ThrowIfCancellationRequested();
            float foot = (float)(layer * lattice.LayerMetres / cell), top = (float)((layer + 1) * lattice.LayerMetres / cell);
            Approach here = solid.From(camera, foot, top);
            Parallel.For(0, TilesDown, options, row =>
            {
                for (int column = 0; column < TilesAcross; column++)
                {
                    if (here.Reaches(column, row) || (below?.Reaches(column, row) ?? false))
                    {
                        LookAt(standing, shown, column, row, foot, top, here.Reaches(column, row));
                    }
                }
            });
            Parallel.For(0, TilesDown, options, row =>
            {
                for (int column = 0; column < TilesAcross; column++)
                {
                    if (IsFresh(here, column, row) || (below is not null && IsFresh(below, column, row)))
                    {
                        Fill(shown, drawn, column, row);
                    }
                }
            });
            below = here;
            Canvas sheet = new(Width, Height);
            drawn.CopyTo(sheet.Pixels);
            Lettering.Plain.Write(sheet, job.Description.Unit.Name, 18f, Height - 18f, Ink.Line);
            Lettering.Plain.Write(sheet, $"layer {layer + 1} of {lattice.Layers}", Width - 18f, Height - 18f, Ink.Quiet, 1f);
            sheets[layer] = sheet;
        }

        return sheets;
    }

    // The points of a tile: shown as they look now, standing as they will below the next layer.
    private void LookAt(Vector3[] standing, Vector3[] shown, int column, int row, float foot, float top, bool reached)
    {
        for (int y = row * Approach.Tile; y < Math.Min(Height + 1, (row + 1) * Approach.Tile); y++)
        {
            for (int x = column * Approach.Tile; x < Math.Min(Stride, (column + 1) * Approach.Tile); x++)
            {
                ref Vector3 stands = ref standing[y * Stride + x];
                shown[y * Stride + x] = reached ? Look(x, y, foot, top, ref stands) : stands;
            }
        }
    }

    // A tile's last pixels have corners in the next tiles.
    private static bool IsFresh(Approach reach, int column, int row) =>
        reach.Reaches(column, row) || reach.Reaches(column + 1, row) || reach.Reaches(column, row + 1) || reach.Reaches(column + 1, row + 1);

    private static void Fill(Vector3[] shown, Rgb24[] drawn, int column, int row)
    {
        for (int y = row * Approach.Tile; y < Math.Min(Height, (row + 1) * Approach.Tile); y++)
        {
            for (int x = column * Approach.Tile; x < Math.Min(Width, (column + 1) * Approach.Tile); x++)
            {
                int at = y * Stride + x;
                drawn[y * Width + x] = ViewPainter.ToPixel(0.25f * (shown[at] + shown[at + 1] + shown[at + Stride] + shown[at + Stride + 1]));
            }
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
