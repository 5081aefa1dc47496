using System.Runtime.CompilerServices;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Drawing;

/// <summary>Letters of one size, ready as coverage masks: lettering a sheet is then only laying masks side by side.</summary>
internal sealed class Lettering
{
    /// <summary>For edge numbers and notes.</summary>
    public static readonly Lettering Small = new(9f, 1.15f);

    /// <summary>For captions and figures.</summary>
    public static readonly Lettering Plain = new(11f, 1.35f);

    /// <summary>For the title.</summary>
    public static readonly Lettering Large = new(18f, 2.1f);

    private readonly Dictionary<char, Mask> masks = [];
    private readonly float unit;

    private Lettering(float capitalPixels, float strokePixels)
    {
        CapitalPixels = capitalPixels;
        unit = capitalPixels / StrokeAlphabet.CapitalHeight;
        foreach (char letter in StrokeAlphabet.All.Append('\uffff'))
        {
            masks[letter] = Draw(letter, strokePixels);
        }
    }

    /// <summary>Height of a capital, pixels.</summary>
    public float CapitalPixels { get; }

    /// <summary>Length of a text, pixels.</summary>
    /// <param name="text">The text.</param>
    /// <returns>From the first letter's left edge to the last one's right edge.</returns>
    public float Length(string text)
    {
        float length = 0f;
        foreach (char letter in Spelled(text))
        {
            length += Of(letter).Advance;
        }

        return Math.Max(0f, length - 2.4f * unit);
    }

    /// <summary>Letters a text.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="text">The text; letters with accents lose them, letters the alphabet does not hold become boxes.</param>
    /// <param name="x">Where it begins, ends or has its middle, pixels.</param>
    /// <param name="baseline">Baseline, pixels down.</param>
    /// <param name="ink">Colour.</param>
    /// <param name="anchor">Which point of the text <paramref name="x"/> is: 0 the beginning, 0.5 the middle, 1 the end.</param>
    public void Write(Canvas canvas, string text, float x, float baseline, Rgb24 ink, float anchor = 0f)
    {
        float at = x - anchor * Length(text);
        foreach (char letter in Spelled(text))
        {
            Mask mask = Of(letter);
            int left = (int)MathF.Round(at) - mask.Left, top = (int)MathF.Round(baseline) - mask.Rise;
            for (int j = 0; j < mask.Height; j++)
            {
                for (int i = 0; i < mask.Width; i++)
                {
                    canvas.Touch(left + i, top + j, ink, mask.Cover[j * mask.Width + i]);
                }
            }

            at += mask.Advance;
        }
    }

    /// <summary>The text, shortened with two dots to fit a length.</summary>
    /// <param name="text">The text.</param>
    /// <param name="pixels">Room, pixels.</param>
    /// <returns>The text itself when it fits.</returns>
    public string Fit(string text, float pixels)
    {
        string fitted = text;
        for (int keep = text.Length - 1; keep > 0 && Length(fitted) > pixels; keep--)
        {
            fitted = text[..keep].TrimEnd() + "..";
        }

        return fitted;
    }

    private static IEnumerable<char> Spelled(string text) => text.Select(StrokeAlphabet.Plain);

    private Mask Of(char letter) => masks.TryGetValue(letter, out Mask? mask) ? mask : masks['\uffff'];

    private Mask Draw(char letter, float strokePixels)
    {
        int border = 2;
        int width = (int)MathF.Ceiling(StrokeAlphabet.Width(letter) * unit) + 2 * border;
        int rise = (int)MathF.Ceiling((StrokeAlphabet.CapitalHeight + 1) * unit) + border;
        int height = rise + (int)MathF.Ceiling(StrokeAlphabet.Baseline * unit) + border;
        float[] cover = new float[width * height];
        foreach ((int X, int Y)[] stroke in StrokeAlphabet.Strokes(letter))
        {
            for (int i = 1; i < stroke.Length; i++)
            {
                Stroke(cover, width, height,
                    border + 0.5f + stroke[i - 1].X * unit, rise - 0.5f - (stroke[i - 1].Y - StrokeAlphabet.Baseline) * unit,
                    border + 0.5f + stroke[i].X * unit, rise - 0.5f - (stroke[i].Y - StrokeAlphabet.Baseline) * unit, strokePixels);
            }
        }

        return new Mask(width, height, border, rise, StrokeAlphabet.Width(letter) * unit + 2.4f * unit, cover);
    }

    // Strokes of one letter are united by the larger cover, so that joints do not darken.
    // Compiled in full at once: a job is drawn once, and would be over before the runtime got round to it.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Stroke(float[] cover, int width, int height, float x0, float y0, float x1, float y1, float thickness)
    {
        float dx = x1 - x0, dy = y1 - y0, square = dx * dx + dy * dy;
        for (int y = 0; y < height; y++)
        {
            for (int x = 0; x < width; x++)
            {
                float px = x + 0.5f - x0, py = y + 0.5f - y0;
                float along = Math.Clamp((px * dx + py * dy) / square, 0f, 1f);
                float ex = px - along * dx, ey = py - along * dy;
                float inside = Math.Clamp(thickness / 2f + 0.5f - MathF.Sqrt(ex * ex + ey * ey), 0f, 1f);
                cover[y * width + x] = Math.Max(cover[y * width + x], inside);
            }
        }
    }

    private sealed record Mask(int Width, int Height, int Left, int Rise, float Advance, float[] Cover);
}
