using System.Runtime.CompilerServices;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>Paints what a plane cuts: solid, deviation from the wanted solid, and the wanted outline.</summary>
internal static class CutPainter
{
    /// <summary>Tones a cut on bare paper, pixel by pixel.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="map">Where the cut lies on it.</param>
    /// <param name="cut">The cut.</param>
    /// <param name="elsewhere">Level whose inside is toned lightly below the rest; null for none.</param>
    /// <param name="builtTo">Second coordinate above which all is still to come and toned lightly, metres, printer frame.</param>
    /// <param name="hatch">Distance of the hatching's lines, pixels.</param>
    // Compiled in full at once: a job is drawn once, and would be over before the runtime got round to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static void Tone(Canvas canvas, in SheetMap map, CutFields cut, float[]? elsewhere, double builtTo, int hatch)
    {
        int left = (int)map.Left, top = (int)map.Top, height = map.Height;
        float perX = cut.Width / (float)map.Width, perY = cut.Height / (float)height;
        float builtRow = map.Y(builtTo);
        int[] firstPixel = FirstPixels(cut.Width, map.Width, perX);
        Square[] squares = Squares(cut, elsewhere);
        (Rgb24 Plain, Rgb24 Hatched)[] built = Tones(true), toCome = Tones(false);
        for (int j = 0; j < height; j++)
        {
            float v = Math.Clamp((height - j - 0.5f) * perY - 0.5f, 0f, cut.Height - 1.001f);
            int row = (int)v;
            bool isBuilt = top + j + 0.5f > builtRow;
            Strip strip = new(canvas, left, top + j, v - row, perX, isBuilt, hatch);
            for (int x = 0; x < cut.Width - 1; x++)
            {
                int at = row * cut.Width + x, first = firstPixel[x];
                Square square = squares[at];
                if (square == Square.Mixed)
                {
                    strip.Paint(first, firstPixel[x + 1], cut, elsewhere, at, x);
                }
                else if (square != Square.Empty)
                {
                    for (; x < cut.Width - 2 && squares[at + 1] == square; at++)
                    {
                        x++;
                    }

                    strip.Paint(first, firstPixel[x + 1], (isBuilt ? built : toCome)[(int)square]);
                }
            }
        }
    }

    // Of squares that are one thing all over: as they are between the lines of the hatching, and on them.
    private static (Rgb24 Plain, Rgb24 Hatched)[] Tones(bool built)
    {
        (Rgb24, Rgb24)[] tones = new (Rgb24, Rgb24)[(int)Square.Mixed];
        for (int square = 0; square < tones.Length; square++)
        {
            float solid = (square & (int)Square.Solid) != 0 ? 1f : 0f, wanted = (square & (int)Square.Wanted) != 0 ? 1f : 0f, light = (square & (int)Square.Light) != 0 ? 1f : 0f;
            tones[square] = (Blend(Ink.Paper, solid, wanted, light, built, hatched: false), Blend(Ink.Paper, solid, wanted, light, built, hatched: true));
        }

        return tones;
    }

    /// <summary>Draws the outline of the wanted solid.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="map">Where the cut lies on it.</param>
    /// <param name="cut">The cut.</param>
    /// <param name="thickness">Pixels.</param>
    public static void Outline(Canvas canvas, in SheetMap map, CutFields cut, float thickness)
    {
        float perX = map.Width / (float)cut.Width, perY = map.Height / (float)cut.Height;
        foreach (LevelLine.Segment segment in LevelLine.Of(cut.Target, cut.Width, cut.Height))
        {
            canvas.Line(
                map.Left + (segment.X0 + 0.5f) * perX, map.Bottom - (segment.Y0 + 0.5f) * perY,
                map.Left + (segment.X1 + 0.5f) * perX, map.Bottom - (segment.Y1 + 0.5f) * perY, thickness, Ink.Line);
        }
    }

    // Pixel whose centre is the first at or right of a cell's centre; cells at the rim reach to the window's edge.
    private static int[] FirstPixels(int cells, int pixels, float cellsPerPixel)
    {
        int[] first = new int[cells];
        for (int x = 1; x < cells - 1; x++)
        {
            first[x] = Math.Clamp((int)MathF.Ceiling((x + 0.5f) / cellsPerPixel - 0.5f), 0, pixels);
        }

        first[cells - 1] = pixels;
        return first;
    }

    // Most of a cut is plain, and is then painted without looking at the levels of each pixel.
    private static Square[] Squares(CutFields cut, float[]? elsewhere)
    {
        Square[] squares = new Square[cut.Width * cut.Height];
        for (int y = 0; y < cut.Height - 1; y++)
        {
            for (int x = 0; x < cut.Width - 1; x++)
            {
                int at = y * cut.Width + x;
                int solid = Inside(cut.Solid, at, cut.Width), wanted = Inside(cut.Target, at, cut.Width);
                int light = elsewhere is null ? 0 : Inside(elsewhere, at, cut.Width);
                squares[at] = solid % 4 != 0 || wanted % 4 != 0 || (light % 4 != 0 && solid == 0) ? Square.Mixed
                    : (solid > 0 ? Square.Solid : Square.Empty) | (wanted > 0 ? Square.Wanted : Square.Empty) | (light > 0 && solid == 0 ? Square.Light : Square.Empty);
            }
        }

        return squares;
    }

    private static int Inside(float[] level, int at, int stride) =>
        (level[at] > 0f ? 1 : 0) + (level[at + 1] > 0f ? 1 : 0) + (level[at + stride] > 0f ? 1 : 0) + (level[at + stride + 1] > 0f ? 1 : 0);

    [Flags]
    private enum Square : byte
    {
        Empty = 0,
        Solid = 1,
        Wanted = 2,
        Light = 4,
        Mixed = 8,
    }

    /// <summary>A row of pixels within a row of cells.</summary>
    private readonly struct Strip(Canvas canvas, int left, int row, float tv, float perX, bool built, int hatch)
    {
        private readonly int start = row * canvas.Width + left;

        public void Paint(int from, int to, (Rgb24 Plain, Rgb24 Hatched) tone)
        {
            if (tone.Plain == tone.Hatched)
            {
                canvas.Pixels.AsSpan(start + from, to - from).Fill(tone.Plain);
                return;
            }

            for (int i = from; i < to; i++)
            {
                canvas.Pixels[start + i] = IsHatched(i) ? tone.Hatched : tone.Plain;
            }
        }

        [MethodImpl(MethodImplOptions.AggressiveOptimization)]
        public void Paint(int from, int to, CutFields cut, float[]? elsewhere, int at, int x)
        {
            for (int i = from; i < to; i++)
            {
                float tu = Math.Clamp((i + 0.5f) * perX - 0.5f - x, 0f, 1f);
                float solid = Cover(cut.Solid, at, cut.Width, tu, tv, perX);
                float wanted = Cover(cut.Target, at, cut.Width, tu, tv, perX);
                float light = elsewhere is null ? 0f : Cover(elsewhere, at, cut.Width, tu, tv, perX);
                canvas.Pixels[start + i] = Blend(Ink.Paper, solid, wanted, light, built, IsHatched(i));
            }
        }

        private bool IsHatched(int pixel) => (left + pixel + row) % hatch < Math.Max(2, hatch / 3);
    }

    private static Rgb24 Blend(Rgb24 paper, float solid, float wanted, float light, bool built, bool hatched)
    {
        Rgb24 ground = light > 0f ? Ink.Mix(paper, Ink.SolidElsewhere, light) : paper;
        if (!built)
        {
            return Ink.Mix(ground, Ink.SolidElsewhere, solid);
        }

        Rgb24 missing = hatched ? Ink.Mix(ground, Ink.Missing, wanted) : ground;
        Rgb24 inside = Ink.Mix(Ink.Excess, Ink.Solid, wanted);
        return Ink.Mix(missing, inside, solid);
    }

    // Share of a pixel inside a level, from the level's value and slope at its centre.
    private static float Cover(float[] level, int at, int stride, float tu, float tv, float cellsPerPixel)
    {
        float a = level[at], b = level[at + 1], c = level[at + stride], d = level[at + stride + 1];
        if (a > 0f && b > 0f && c > 0f && d > 0f)
        {
            return 1f;
        }

        if (a <= 0f && b <= 0f && c <= 0f && d <= 0f)
        {
            return 0f;
        }

        float slopeX = (b - a) + tv * (d - c - b + a), slopeY = (c - a) + tu * (d - c - b + a);
        float value = a + tu * (b - a) + tv * slopeY;
        float slope = MathF.Sqrt(slopeX * slopeX + slopeY * slopeY) * cellsPerPixel;
        return Math.Clamp(0.5f + value / Math.Max(slope, 1e-6f), 0f, 1f);
    }
}
