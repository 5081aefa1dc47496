using System.Buffers.Binary;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>
/// Writes sheets as an animated GIF, which redraws only what changes from one sheet to the next. By the GIF specification, version 89a, sections 17 to 27, and
/// the usual application extension for running for ever; from memory.
/// </summary>
internal static class GifFile
{
    private const int FrameHundredths = 35;
    private const int LastFrameHundredths = 250;

    private const int Colours = 256;

    /// <summary>Sheets of one size as an animated GIF that runs for ever and rests on the last.</summary>
    /// <param name="sheets">The sheets, at least one.</param>
    /// <param name="palette">Colours to draw with, at most 255.</param>
    /// <returns>The file.</returns>
    /// <exception cref="ArgumentException">The palette is too large.</exception>
    public static byte[] Write(IReadOnlyList<Canvas> sheets, Rgb24[] palette)
    {
        if (palette.Length >= Colours)
        {
            throw new ArgumentException($"At most {Colours - 1} colours, not {palette.Length}.", nameof(palette));
        }

        using MemoryStream file = new();
        file.Write("GIF89a"u8);
        Short(file, sheets[0].Width);
        Short(file, sheets[0].Height);
        // A palette of 2^8 colours of 8 bits follows; no background, square pixels.
        file.Write([0xF7, 0, 0]);
        for (int colour = 0; colour < Colours; colour++)
        {
            Rgb24 ink = colour < palette.Length ? palette[colour] : default;
            file.Write([ink.R, ink.G, ink.B]);
        }

        file.Write([0x21, 0xFF, 11]);
        file.Write("NETSCAPE2.0"u8);
        file.Write([3, 1, 0, 0, 0]);
        NearestInk nearest = new(palette);
        for (int i = 0; i < sheets.Count; i++)
        {
            Frame(file, i == 0 ? null : sheets[i - 1], sheets[i], nearest, palette.Length, i == sheets.Count - 1 ? LastFrameHundredths : FrameHundredths);
        }

        file.WriteByte(0x3B);
        return file.ToArray();
    }

    // The smallest rectangle that holds all that changed; within it what did not change is see-through.
    private static void Frame(MemoryStream file, Canvas? before, Canvas sheet, NearestInk nearest, int clear, int hundredths)
    {
        (int left, int top, int right, int bottom) = before is null ? (0, 0, sheet.Width, sheet.Height) : Changed(before, sheet);
        byte[] inks = new byte[(right - left) * (bottom - top)];
        int next = 0;
        for (int y = top; y < bottom; y++)
        {
            for (int at = y * sheet.Width + left; at < y * sheet.Width + right; at++)
            {
                inks[next++] = before is not null && before.Pixels[at] == sheet.Pixels[at] ? (byte)clear : nearest.Of(sheet.Pixels[at]);
            }
        }

        // Graphic control: stays as drawn, one ink is see-through.
        file.Write([0x21, 0xF9, 4, 0x05]);
        Short(file, hundredths);
        file.Write([(byte)clear, 0, 0x2C]);
        Short(file, left);
        Short(file, top);
        Short(file, right - left);
        Short(file, bottom - top);
        file.WriteByte(0);
        GifCode.Write(file, inks);
    }

    private static (int Left, int Top, int Right, int Bottom) Changed(Canvas before, Canvas after)
    {
        int left = after.Width, right = 0, top = after.Height, bottom = 0;
        for (int y = 0; y < after.Height; y++)
        {
            ReadOnlySpan<Rgb24> was = before.Pixels.AsSpan(y * after.Width, after.Width), now = after.Pixels.AsSpan(y * after.Width, after.Width);
            int same = now.CommonPrefixLength(was);
            if (same == now.Length)
            {
                continue;
            }

            int last = now.Length - 1;
            while (now[last] == was[last])
            {
                last--;
            }

            (left, right) = (Math.Min(left, same), Math.Max(right, last + 1));
            (top, bottom) = (Math.Min(top, y), y + 1);
        }

        return right > left ? (left, top, right, bottom) : (0, 0, 1, 1);
    }

    private static void Short(MemoryStream file, int number)
    {
        Span<byte> two = stackalloc byte[2];
        BinaryPrimitives.WriteUInt16LittleEndian(two, (ushort)number);
        file.Write(two);
    }
}
