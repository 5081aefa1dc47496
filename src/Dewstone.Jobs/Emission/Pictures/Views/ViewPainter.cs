using System.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>Looks at a scene once a pixel, and four times where a pixel differs from its neighbours, so that edges come out smooth.</summary>
internal static class ViewPainter
{
    // Rows handed to a thread at a time; a pixel depends on nothing but the scene, so this decides nothing but the speed.
    private const int RowsAtOnce = 8;

    // Difference of a colour between neighbours above which a pixel is looked at more closely, 1.
    private const float Edge = 0.1f;

    /// <summary>Paints a scene over a whole sheet.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="scene">The scene.</param>
    /// <param name="parallelism">Threads; the picture does not depend on them.</param>
    /// <param name="cancellation">Looked at every few rows.</param>
    public static void Paint(Canvas canvas, IScene scene, Parallelism parallelism, CancellationToken cancellation)
    {
        int width = canvas.Width, height = canvas.Height;
        Vector3[] once = new Vector3[width * height];
        Rows(height, parallelism, y =>
        {
            for (int x = 0; x < width; x++)
            {
                once[y * width + x] = scene.Look(x + 0.5f, y + 0.5f);
            }
        }, cancellation);
        Rows(height, parallelism, y =>
        {
            for (int x = 0; x < width; x++)
            {
                Vector3 colour = IsEdge(once, x, y, width, height) ? Closer(scene, x, y) : once[y * width + x];
                canvas.Pixels[y * width + x] = ToPixel(colour);
            }
        }, cancellation);
    }

    /// <summary>A colour as a pixel.</summary>
    /// <param name="colour">Red, green, blue, 0 to 1.</param>
    /// <returns>The pixel.</returns>
    public static Rgb24 ToPixel(Vector3 colour)
    {
        Vector3 steps = Vector3.Clamp(colour, Vector3.Zero, Vector3.One) * 255f + new Vector3(0.5f);
        return new Rgb24((byte)steps.X, (byte)steps.Y, (byte)steps.Z);
    }

    /// <summary>An ink as a colour.</summary>
    /// <param name="ink">The ink.</param>
    /// <returns>Red, green, blue, 0 to 1.</returns>
    public static Vector3 ToColour(Rgb24 ink) => new Vector3(ink.R, ink.G, ink.B) / 255f;

    private static void Rows(int height, Parallelism parallelism, Action<int> row, CancellationToken cancellation) =>
        Parallel.For(0, (height + RowsAtOnce - 1) / RowsAtOnce, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads, CancellationToken = cancellation }, block =>
        {
            for (int y = block * RowsAtOnce; y < Math.Min(height, (block + 1) * RowsAtOnce); y++)
            {
                row(y);
            }
        });

    private static bool IsEdge(Vector3[] colours, int x, int y, int width, int height)
    {
        Vector3 here = colours[y * width + x];
        return (x > 0 && Differs(here, colours[y * width + x - 1])) || (x < width - 1 && Differs(here, colours[y * width + x + 1]))
            || (y > 0 && Differs(here, colours[(y - 1) * width + x])) || (y < height - 1 && Differs(here, colours[(y + 1) * width + x]));
    }

    private static bool Differs(Vector3 a, Vector3 b)
    {
        Vector3 difference = Vector3.Abs(a - b);
        return difference.X > Edge || difference.Y > Edge || difference.Z > Edge;
    }

    private static Vector3 Closer(IScene scene, int x, int y) => 0.25f * (
        scene.Look(x + 0.25f, y + 0.25f) + scene.Look(x + 0.75f, y + 0.25f) + scene.Look(x + 0.25f, y + 0.75f) + scene.Look(x + 0.75f, y + 0.75f));
}
