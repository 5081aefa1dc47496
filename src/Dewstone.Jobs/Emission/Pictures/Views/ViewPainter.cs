using System.Numerics;
using System.Runtime.Intrinsics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// Looks at a scene at every fourth pixel of every fourth row, then, square by square, at those between: a square with the same thing and nearly the same
/// colour at all corners is filled in straight, any other is looked into. A cell of the moisture grid is some five pixels wide, so most of a picture is even.
/// Pixels that still differ from their neighbours are looked at in their corners too, which they share, so that edges come out smooth.
/// </summary>
internal static class ViewPainter
{
    // Rows handed to a thread at a time; a pixel depends on nothing but the scene, so this decides nothing but the speed.
    private const int RowsAtOnce = 8;

    // Pixels between the first looks, a power of 2.
    private const int Coarsest = 4;

    // Difference of a colour above which a pixel is looked at more closely, 1; half of it is enough to look into a square of the first looks.
    private const float Edge = 0.1f;

    /// <summary>Paints a scene over a whole sheet.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="scene">The scene.</param>
    /// <param name="parallelism">Threads; the picture does not depend on them.</param>
    /// <param name="cancellation">Looked at every few rows.</param>
    public static void Paint(Canvas canvas, IScene scene, Parallelism parallelism, CancellationToken cancellation)
    {
        int width = canvas.Width, height = canvas.Height;
        int stride = Up(width) + 1, rows = Up(height) + 1;
        Vector4[] seen = new Vector4[stride * rows];
        Rows(rows, Coarsest, parallelism, y =>
        {
            for (int x = 0; x < stride; x += Coarsest)
            {
                seen[y * stride + x] = scene.Look(x + 0.5f, y + 0.5f);
            }
        }, cancellation);
        for (int square = Coarsest; square > 1; square /= 2)
        {
            int side = square;
            Rows(rows, side / 2, parallelism, y => LookInto(seen, stride, rows, scene, y, side), cancellation);
        }

        bool[] edges = new bool[stride * rows];
        Rows(height, 1, parallelism, y =>
        {
            for (int x = 0; x < width; x++)
            {
                edges[y * stride + x] = IsEdge(seen, stride, x, y, width, height);
            }
        }, cancellation);
        Vector4[] corners = new Vector4[stride * rows];
        Rows(height + 1, 1, parallelism, y => LookAtCorners(corners, edges, stride, scene, y, width, height), cancellation);
        Rows(height, 1, parallelism, y =>
        {
            for (int x = 0; x < width; x++)
            {
                int at = y * stride + x;
                Vector4 colour = edges[at] ? (2f * seen[at] + corners[at] + corners[at + 1] + corners[at + stride] + corners[at + stride + 1]) / 6f : seen[at];
                canvas.Pixels[y * width + x] = ToPixel(colour.AsVector128().AsVector3());
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

    private static int Up(int pixels) => (pixels + Coarsest - 1) / Coarsest * Coarsest;

    private static void Rows(int height, int step, Parallelism parallelism, Action<int> row, CancellationToken cancellation) =>
        Parallel.For(0, (height + RowsAtOnce - 1) / RowsAtOnce, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads, CancellationToken = cancellation }, block =>
        {
            for (int y = block * RowsAtOnce; y < Math.Min(height, (block + 1) * RowsAtOnce); y += step)
            {
                row(y);
            }
        });

    // The points of a row between the corners of squares: in the middle of a square, or of a side that two squares share.
    private static void LookInto(Vector4[] seen, int stride, int rows, IScene scene, int y, int side)
    {
        int half = side / 2;
        bool between = (y & half) != 0;
        int top = between ? y - half : y;
        for (int x = between ? 0 : half; x < stride; x += between ? half : side)
        {
            bool across = (x & half) != 0;
            int left = across ? x - half : x, at = y * stride + x;
            bool uneven = IsUneven(seen, stride, rows, left, top, side)
                || (!between && IsUneven(seen, stride, rows, left, top - side, side))
                || (!across && IsUneven(seen, stride, rows, left - side, top, side));
            seen[at] = uneven ? scene.Look(x + 0.5f, y + 0.5f)
                : !between ? 0.5f * (seen[at - half] + seen[at + half])
                : !across ? 0.5f * (seen[at - half * stride] + seen[at + half * stride])
                : 0.25f * (seen[at - half * stride - half] + seen[at - half * stride + half] + seen[at + half * stride - half] + seen[at + half * stride + half]);
        }
    }

    private static bool IsUneven(Vector4[] seen, int stride, int rows, int left, int top, int side)
    {
        if (left < 0 || top < 0 || left + side >= stride || top + side >= rows)
        {
            return false;
        }

        int at = top * stride + left;
        Vector4 a = seen[at], b = seen[at + side], c = seen[at + side * stride], d = seen[at + side * stride + side];
        Vector4 most = Vector4.Max(Vector4.Max(a, b), Vector4.Max(c, d)), least = Vector4.Min(Vector4.Min(a, b), Vector4.Min(c, d));
        return most.W >= IScene.FinelyDrawn || Beyond(most - least, side == Coarsest ? 0.5f * Edge : Edge);
    }

    private static bool IsEdge(Vector4[] seen, int stride, int x, int y, int width, int height)
    {
        int at = y * stride + x;
        Vector4 here = seen[at], most = Vector4.Zero;
        most = x > 0 ? Vector4.Abs(here - seen[at - 1]) : most;
        most = x < width - 1 ? Vector4.Max(most, Vector4.Abs(here - seen[at + 1])) : most;
        most = y > 0 ? Vector4.Max(most, Vector4.Abs(here - seen[at - stride])) : most;
        most = y < height - 1 ? Vector4.Max(most, Vector4.Abs(here - seen[at + stride])) : most;
        return Beyond(most, Edge);
    }

    private static bool Beyond(Vector4 difference, float limit) => Vector128.GreaterThanAny(difference.AsVector128(), Vector128.Create(limit));

    // The upper left corners of a row's pixels, those that an edge touches.
    private static void LookAtCorners(Vector4[] corners, bool[] edges, int stride, IScene scene, int y, int width, int height)
    {
        for (int x = 0; x <= width; x++)
        {
            int at = y * stride + x;
            if ((y < height && ((x < width && edges[at]) || (x > 0 && edges[at - 1]))) || (y > 0 && ((x < width && edges[at - stride]) || (x > 0 && edges[at - stride - 1]))))
            {
                corners[at] = scene.Look(x, y);
            }
        }
    }
}
