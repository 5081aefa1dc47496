using System.Runtime.CompilerServices;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Drawing;

/// <summary>A sheet of pixels with the few strokes our pictures need. Origin at the upper left corner, x right, y down, pixels; pixel (i, j) has its centre at (i + 0.5, j + 0.5).</summary>
internal sealed class Canvas
{
    /// <summary>A sheet of paper.</summary>
    /// <param name="width">Pixels across.</param>
    /// <param name="height">Pixels down.</param>
    public Canvas(int width, int height)
    {
        Width = width;
        Height = height;
        Pixels = GC.AllocateUninitializedArray<Rgb24>(width * height);
        Pixels.AsSpan(0, width).Fill(Ink.Paper);
        for (int y = 1; y < height; y++)
        {
            Pixels.AsSpan(0, width).CopyTo(Pixels.AsSpan(y * width));
        }
    }

    /// <summary>Pixels across.</summary>
    public int Width { get; }

    /// <summary>Pixels down.</summary>
    public int Height { get; }

    /// <summary>The pixels, row by row from the top.</summary>
    public Rgb24[] Pixels { get; }

    /// <summary>Lays ink over one pixel.</summary>
    /// <param name="x">Pixel across; outside the sheet nothing happens.</param>
    /// <param name="y">Pixel down.</param>
    /// <param name="ink">Colour.</param>
    /// <param name="cover">How much of the pixel it covers, 0 to 1.</param>
    public void Touch(int x, int y, Rgb24 ink, float cover)
    {
        if ((uint)x < (uint)Width && (uint)y < (uint)Height && cover > 0f)
        {
            ref Rgb24 pixel = ref Pixels[y * Width + x];
            pixel = Ink.Mix(pixel, ink, Math.Min(cover, 1f));
        }
    }

    /// <summary>Fills an upright rectangle of whole pixels.</summary>
    /// <param name="left">First column.</param>
    /// <param name="top">First row.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="ink">Colour.</param>
    /// <param name="cover">Opacity, 0 to 1.</param>
    public void Fill(int left, int top, int width, int height, Rgb24 ink, float cover = 1f)
    {
        for (int y = top; y < top + height; y++)
        {
            for (int x = left; x < left + width; x++)
            {
                Touch(x, y, ink, cover);
            }
        }
    }

    /// <summary>Draws the outline of an upright rectangle, inside its edges.</summary>
    /// <param name="left">First column.</param>
    /// <param name="top">First row.</param>
    /// <param name="width">Columns.</param>
    /// <param name="height">Rows.</param>
    /// <param name="thickness">Pixels.</param>
    /// <param name="ink">Colour.</param>
    public void Frame(int left, int top, int width, int height, int thickness, Rgb24 ink)
    {
        Fill(left, top, width, thickness, ink);
        Fill(left, top + height - thickness, width, thickness, ink);
        Fill(left, top + thickness, thickness, height - 2 * thickness, ink);
        Fill(left + width - thickness, top + thickness, thickness, height - 2 * thickness, ink);
    }

    /// <summary>Draws a straight stroke with round ends.</summary>
    /// <param name="x0">Start across.</param>
    /// <param name="y0">Start down.</param>
    /// <param name="x1">End across.</param>
    /// <param name="y1">End down.</param>
    /// <param name="thickness">Pixels.</param>
    /// <param name="ink">Colour.</param>
    /// <param name="cover">Opacity, 0 to 1.</param>
    // Compiled in full at once: a job is drawn once, and would be over before the runtime got round to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Line(float x0, float y0, float x1, float y1, float thickness, Rgb24 ink, float cover = 1f)
    {
        float radius = thickness / 2f, reach = radius + 1f;
        int left = (int)MathF.Floor(Math.Min(x0, x1) - reach), right = (int)MathF.Ceiling(Math.Max(x0, x1) + reach);
        int top = (int)MathF.Floor(Math.Min(y0, y1) - reach), bottom = (int)MathF.Ceiling(Math.Max(y0, y1) + reach);
        float dx = x1 - x0, dy = y1 - y0, square = dx * dx + dy * dy;
        for (int y = Math.Max(top, 0); y < Math.Min(bottom, Height); y++)
        {
            for (int x = Math.Max(left, 0); x < Math.Min(right, Width); x++)
            {
                float px = x + 0.5f - x0, py = y + 0.5f - y0;
                float along = square > 0f ? Math.Clamp((px * dx + py * dy) / square, 0f, 1f) : 0f;
                float ex = px - along * dx, ey = py - along * dy;
                float inside = radius + 0.5f - MathF.Sqrt(ex * ex + ey * ey);
                if (inside > 0f)
                {
                    Touch(x, y, ink, Math.Min(inside, Math.Min(thickness, 1f)) * cover);
                }
            }
        }
    }

    /// <summary>Draws a straight stroke of dashes; only along x or y are they measured exactly.</summary>
    /// <param name="x0">Start across.</param>
    /// <param name="y0">Start down.</param>
    /// <param name="x1">End across.</param>
    /// <param name="y1">End down.</param>
    /// <param name="pattern">Lengths of dash, gap, dash, gap..., pixels.</param>
    /// <param name="thickness">Pixels.</param>
    /// <param name="ink">Colour.</param>
    public void Dashes(float x0, float y0, float x1, float y1, ReadOnlySpan<float> pattern, float thickness, Rgb24 ink)
    {
        float dx = x1 - x0, dy = y1 - y0, length = MathF.Sqrt(dx * dx + dy * dy);
        float at = 0f;
        for (int i = 0; at < length; i++)
        {
            float end = Math.Min(at + pattern[i % pattern.Length], length);
            if (i % 2 == 0)
            {
                Line(x0 + dx * at / length, y0 + dy * at / length, x0 + dx * end / length, y0 + dy * end / length, thickness, ink);
            }

            at = end;
        }
    }

    /// <summary>Draws a filled disc.</summary>
    /// <param name="x">Centre across.</param>
    /// <param name="y">Centre down.</param>
    /// <param name="radius">Pixels.</param>
    /// <param name="ink">Colour.</param>
    /// <param name="cover">Opacity, 0 to 1.</param>
    public void Disc(float x, float y, float radius, Rgb24 ink, float cover = 1f) => Ring(x, y, 0f, radius, ink, cover);

    /// <summary>Draws a ring; with an inner radius of 0, a disc.</summary>
    /// <param name="x">Centre across.</param>
    /// <param name="y">Centre down.</param>
    /// <param name="inner">Inner radius, pixels.</param>
    /// <param name="outer">Outer radius, pixels.</param>
    /// <param name="ink">Colour.</param>
    /// <param name="cover">Opacity, 0 to 1.</param>
    public void Ring(float x, float y, float inner, float outer, Rgb24 ink, float cover = 1f)
    {
        int left = (int)MathF.Floor(x - outer - 1f), right = (int)MathF.Ceiling(x + outer + 1f);
        int top = (int)MathF.Floor(y - outer - 1f), bottom = (int)MathF.Ceiling(y + outer + 1f);
        // Squares of the distances between which a pixel is covered all over, and beyond which it is not touched.
        float allFrom = inner > 0f ? (inner + 0.5f) * (inner + 0.5f) : 0f, allTo = outer > 0.5f ? (outer - 0.5f) * (outer - 0.5f) : -1f, none = (outer + 0.5f) * (outer + 0.5f);
        for (int j = top; j < bottom; j++)
        {
            for (int i = left; i < right; i++)
            {
                float ex = i + 0.5f - x, ey = j + 0.5f - y, square = ex * ex + ey * ey;
                if (square >= none)
                {
                    continue;
                }

                if (square >= allFrom && square <= allTo)
                {
                    Touch(i, j, ink, cover);
                    continue;
                }

                float distance = MathF.Sqrt(square), inside = Math.Clamp(outer + 0.5f - distance, 0f, 1f);
                if (inner > 0f)
                {
                    inside = Math.Min(inside, Math.Clamp(distance - inner + 0.5f, 0f, 1f));
                }

                Touch(i, j, ink, inside * cover);
            }
        }
    }

    /// <summary>Fills a triangle.</summary>
    /// <param name="a">First corner.</param>
    /// <param name="b">Second corner.</param>
    /// <param name="c">Third corner.</param>
    /// <param name="ink">Colour.</param>
    public void Triangle((float X, float Y) a, (float X, float Y) b, (float X, float Y) c, Rgb24 ink)
    {
        float turn = (b.X - a.X) * (c.Y - a.Y) - (b.Y - a.Y) * (c.X - a.X) < 0f ? -1f : 1f;
        int left = (int)MathF.Floor(Math.Min(a.X, Math.Min(b.X, c.X))) - 1, right = (int)MathF.Ceiling(Math.Max(a.X, Math.Max(b.X, c.X))) + 1;
        int top = (int)MathF.Floor(Math.Min(a.Y, Math.Min(b.Y, c.Y))) - 1, bottom = (int)MathF.Ceiling(Math.Max(a.Y, Math.Max(b.Y, c.Y))) + 1;
        for (int y = top; y < bottom; y++)
        {
            for (int x = left; x < right; x++)
            {
                float inside = Math.Min(Side(a, b, x, y, turn), Math.Min(Side(b, c, x, y, turn), Side(c, a, x, y, turn)));
                Touch(x, y, ink, Math.Clamp(inside + 0.5f, 0f, 1f));
            }
        }
    }

    private static float Side((float X, float Y) from, (float X, float Y) to, int x, int y, float turn)
    {
        float dx = to.X - from.X, dy = to.Y - from.Y;
        return turn * (dx * (y + 0.5f - from.Y) - dy * (x + 0.5f - from.X)) / MathF.Sqrt(dx * dx + dy * dy);
    }
}
