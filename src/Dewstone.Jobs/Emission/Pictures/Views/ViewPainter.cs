using System.Numerics;
using System.Runtime.Intrinsics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Views;

/// <summary>
/// Looks at a scene at every fourth pixel of every fourth row and in the middle of the squares between. A square in which one thing is seen and whose middle is the
/// mean of its corners is filled in straight, any other is looked into; a cell of the moisture grid is some five pixels wide, so most of a picture is even.
/// Pixels that differ from their neighbours are looked at in their corners too, which they share, so that edges come out smooth.
/// </summary>
internal sealed class ViewPainter
{
    // Rows handed to a thread at a time, whole squares; a pixel depends on nothing but the scene, so this decides nothing but the speed.
    private const int RowsAtOnce = 8;

    private const int Square = 4, Half = Square / 2;

    // Differences of a colour, 1: within a square that is not even looked at in its middle; of the middle from the mean of the corners; between pixels, at an edge.
    private const float Flat = 0.02f, Straight = 0.04f, Edge = 0.1f;

    private readonly int width;
    private readonly int height;
    private readonly int stride;
    private readonly int rows;
    private readonly int across;
    private readonly Vector4[] seen;
    private readonly bool[] even;
    private readonly bool[] edges;
    private readonly Vector4[] corners;
    private readonly Parallelism parallelism;
    private readonly CancellationToken cancellation;

    /// <summary>A painter of sheets of one size, one after another: they share what it needs, which is larger than a sheet.</summary>
    /// <param name="width">Pixels across.</param>
    /// <param name="height">Pixels down.</param>
    /// <param name="parallelism">Threads; no picture depends on them.</param>
    /// <param name="cancellation">Looked at every few rows.</param>
    public ViewPainter(int width, int height, Parallelism parallelism, CancellationToken cancellation)
    {
        (this.width, this.height, this.parallelism, this.cancellation) = (width, height, parallelism, cancellation);
        across = (width + Square - 1) / Square;
        int down = (height + Square - 1) / Square;
        // One point more than squares, whose far corners may lie beyond the sheet.
        (stride, rows) = (across * Square + 1, down * Square + 1);
        seen = new Vector4[stride * rows];
        even = new bool[across * down];
        edges = new bool[seen.Length];
        corners = new Vector4[stride * (height + 1)];
    }

    /// <summary>Paints a scene over a whole sheet.</summary>
    /// <param name="scene">The scene.</param>
    /// <returns>The sheet.</returns>
    public Canvas Paint(IScene scene)
    {
        Canvas canvas = new(width, height);
        Rows(rows, Square, y => LookAtCorners(scene, y));
        Rows(rows - 1, Square, y => LookAtMiddles(scene, y));
        Rows(rows, Half, y => LookAtSides(scene, y));
        Rows(rows, 1, y => LookBetween(scene, y));
        Rows(height, 1, FindEdges);
        Rows(height + 1, 1, y => LookAtPixelCorners(scene, y));
        Rows(height, 1, y => PaintPixels(canvas, y));
        return canvas;
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

    private void Rows(int count, int step, Action<int> row) =>
        Parallel.For(0, (count + RowsAtOnce - 1) / RowsAtOnce, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads, CancellationToken = cancellation }, block =>
        {
            for (int y = block * RowsAtOnce; y < Math.Min(count, (block + 1) * RowsAtOnce); y += step)
            {
                row(y);
            }
        });

    private static Vector4 Look(IScene scene, int x, int y) => scene.Look(x + 0.5f, y + 0.5f);

    private void LookAtCorners(IScene scene, int y)
    {
        for (int x = 0; x < stride; x += Square)
        {
            seen[y * stride + x] = Look(scene, x, y);
        }
    }

    private void LookAtMiddles(IScene scene, int y)
    {
        for (int x = 0; x < stride - 1; x += Square)
        {
            Vector4 spread = Spread(x, y, Square, out Vector4 mean);
            bool flat = mean.W < IScene.FinelyDrawn && !Beyond(spread, Flat);
            Vector4 middle = flat ? mean : Look(scene, x + Half, y + Half);
            seen[(y + Half) * stride + x + Half] = middle;
            even[y / Square * across + x / Square] = flat || (mean.W < IScene.FinelyDrawn && spread.W < Edge && !Beyond(Vector4.Abs(middle - mean), Straight));
        }
    }

    // The middles of the sides that two squares share.
    private void LookAtSides(IScene scene, int y)
    {
        bool upright = y % Square != 0;
        for (int x = upright ? 0 : Half; x < stride; x += Square)
        {
            int at = y * stride + x, toEnd = upright ? Half * stride : Half, toMiddle = upright ? Half : Half * stride;
            bool before = upright ? x > 0 : y > 0, behind = upright ? x < stride - 1 : y < rows - 1;
            int here = y / Square * across + x / Square, last = upright ? here - 1 : here - across;
            seen[at] = (before && !even[last]) || (behind && !even[here]) ? Look(scene, x, y)
                : before && behind ? 0.25f * (seen[at - toEnd] + seen[at + toEnd] + seen[at - toMiddle] + seen[at + toMiddle])
                : 0.5f * (seen[at - toEnd] + seen[at + toEnd]);
        }
    }

    // The points that are still missing, between those of squares of half the side.
    private void LookBetween(IScene scene, int y)
    {
        bool between = y % Half != 0;
        int top = between ? y - 1 : y;
        for (int x = between ? 0 : 1; x < stride; x += between ? 1 : Half)
        {
            bool beside = x % Half != 0;
            int left = beside ? x - 1 : x, at = y * stride + x;
            bool uneven = IsUneven(left, top) || (!between && IsUneven(left, top - Half)) || (!beside && IsUneven(left - Half, top));
            seen[at] = uneven ? Look(scene, x, y)
                : !between ? 0.5f * (seen[at - 1] + seen[at + 1])
                : !beside ? 0.5f * (seen[at - stride] + seen[at + stride])
                : 0.25f * (seen[at - stride - 1] + seen[at - stride + 1] + seen[at + stride - 1] + seen[at + stride + 1]);
        }
    }

    private bool IsUneven(int left, int top)
    {
        if (left < 0 || top < 0 || left + Half >= stride || top + Half >= rows || even[top / Square * across + left / Square])
        {
            return false;
        }

        Vector4 spread = Spread(left, top, Half, out Vector4 mean);
        return mean.W >= IScene.FinelyDrawn || Beyond(spread, Edge);
    }

    // How far the corners of a square differ.
    private Vector4 Spread(int left, int top, int side, out Vector4 mean)
    {
        int at = top * stride + left;
        Vector4 a = seen[at], b = seen[at + side], c = seen[at + side * stride], d = seen[at + side * stride + side];
        mean = 0.25f * (a + b + c + d);
        return Vector4.Max(Vector4.Max(a, b), Vector4.Max(c, d)) - Vector4.Min(Vector4.Min(a, b), Vector4.Min(c, d));
    }

    private void FindEdges(int y)
    {
        for (int x = 0; x < width; x++)
        {
            edges[y * stride + x] = IsEdge(x, y);
        }
    }

    private void PaintPixels(Canvas canvas, int y)
    {
        for (int x = 0; x < width; x++)
        {
            int at = y * stride + x;
            Vector4 colour = edges[at] ? (2f * seen[at] + corners[at] + corners[at + 1] + corners[at + stride] + corners[at + stride + 1]) / 6f : seen[at];
            canvas.Pixels[y * width + x] = ToPixel(colour.AsVector128().AsVector3());
        }
    }

    private bool IsEdge(int x, int y)
    {
        int at = y * stride + x;
        Vector4 here = seen[at], most = Vector4.Zero;
        most = x > 0 ? Vector4.Abs(here - seen[at - 1]) : most;
        most = x < width - 1 ? Vector4.Max(most, Vector4.Abs(here - seen[at + 1])) : most;
        most = y > 0 ? Vector4.Max(most, Vector4.Abs(here - seen[at - stride])) : most;
        most = y < height - 1 ? Vector4.Max(most, Vector4.Abs(here - seen[at + stride])) : most;
        return Beyond(most, Edge);
    }

    // The upper left corners of a row's pixels, those that an edge touches.
    private void LookAtPixelCorners(IScene scene, int y)
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

    private static bool Beyond(Vector4 difference, float limit) => Vector128.GreaterThanAny(difference.AsVector128(), Vector128.Create(limit));
}
