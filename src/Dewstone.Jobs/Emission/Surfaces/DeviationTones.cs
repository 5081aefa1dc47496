using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Surfaces;

/// <summary>Tones of a deviation: blue where solid is missing, white where it is as drawn, orange where there is too much.</summary>
internal static class DeviationTones
{
    /// <summary>Deviations of this size and more have the full tone, mm.</summary>
    public const float FullMillimetres = 25f;

    private const int StepsPerSide = 250;

    private static readonly Rgb24 AsDrawn = new(255, 255, 255);

    private static readonly byte[] LinearOfSrgb = [.. Enumerable.Range(0, 256).Select(step => Linear(step / 255.0))];

    private static readonly Rgb24[] Tones = [.. Enumerable.Range(-StepsPerSide, 2 * StepsPerSide + 1).Select(step =>
        Ink.Mix(AsDrawn, step < 0 ? Ink.Missing : Ink.Excess, Math.Abs(step) / (float)StepsPerSide))];

    /// <summary>Tone of a deviation.</summary>
    /// <param name="millimetres">Deviation, mm.</param>
    /// <returns>The tone as a screen takes it (sRGB).</returns>
    public static Rgb24 Of(float millimetres) =>
        Tones[StepsPerSide + (int)MathF.Round(Math.Clamp(millimetres / FullMillimetres, -1f, 1f) * StepsPerSide)];

    /// <summary>The same tone as light adds up, which is what glTF's vertex colours are.</summary>
    /// <param name="millimetres">Deviation, mm.</param>
    /// <returns>Linear red, green and blue, opaque.</returns>
    public static Rgba32 LinearOf(float millimetres)
    {
        Rgb24 tone = Of(millimetres);
        return new Rgba32(LinearOfSrgb[tone.R], LinearOfSrgb[tone.G], LinearOfSrgb[tone.B]);
    }

    // IEC 61966-2-1, the sRGB curve; from memory.
    private static byte Linear(double tone) =>
        (byte)Math.Round(255.0 * (tone <= 0.04045 ? tone / 12.92 : Math.Pow((tone + 0.055) / 1.055, 2.4)));
}
