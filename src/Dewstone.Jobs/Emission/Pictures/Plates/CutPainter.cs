using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>Paints what a plane cuts: solid, deviation from the wanted solid, and the wanted outline.</summary>
internal static class CutPainter
{
    /// <summary>Tones a cut pixel by pixel.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="map">Where the cut lies on it.</param>
    /// <param name="cut">The cut.</param>
    /// <param name="elsewhere">Level whose inside is toned lightly below the rest; null for none.</param>
    /// <param name="builtTo">Second coordinate above which all is still to come and toned lightly, metres, printer frame.</param>
    /// <param name="hatch">Distance of the hatching's lines, pixels.</param>
    public static void Tone(Canvas canvas, in SheetMap map, CutFields cut, float[]? elsewhere, double builtTo, int hatch)
    {
        int left = (int)map.Left, top = (int)map.Top, width = map.Width, height = map.Height;
        float perX = cut.Width / (float)width, perY = cut.Height / (float)height;
        float builtRow = map.Y(builtTo);
        for (int j = 0; j < height; j++)
        {
            float v = Math.Clamp((height - j - 0.5f) * perY - 0.5f, 0f, cut.Height - 1.001f);
            int row = (int)v;
            bool built = top + j + 0.5f > builtRow;
            for (int i = 0; i < width; i++)
            {
                float u = Math.Clamp((i + 0.5f) * perX - 0.5f, 0f, cut.Width - 1.001f);
                int at = row * cut.Width + (int)u;
                float tu = u - (int)u, tv = v - row;
                float solid = Cover(cut.Solid, at, cut.Width, tu, tv, perX);
                float wanted = Cover(cut.Target, at, cut.Width, tu, tv, perX);
                float light = elsewhere is null ? 0f : Cover(elsewhere, at, cut.Width, tu, tv, perX);
                if (solid > 0f || wanted > 0f || light > 0f)
                {
                    int index = (top + j) * canvas.Width + left + i;
                    bool hatched = ((left + i) + (top + j)) % hatch < Math.Max(2, hatch / 3);
                    canvas.Pixels[index] = Blend(canvas.Pixels[index], solid, wanted, light, built, hatched);
                }
            }
        }
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
