using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>Finds the ink of a palette that comes nearest to a colour, and remembers colours it was asked before.</summary>
/// <param name="palette">The inks, at least one.</param>
internal sealed class NearestInk(Rgb24[] palette)
{
    private const int Slots = 1 << 12;

    // Colour, and 1 above it so that an empty slot is no colour.
    private readonly int[] asked = new int[Slots];
    private readonly byte[] found = new byte[Slots];

    /// <summary>The nearest ink: least sum of squared differences of red, green and blue; of equals the first.</summary>
    /// <param name="colour">The colour.</param>
    /// <returns>Its number in the palette.</returns>
    public byte Of(Rgb24 colour)
    {
        int key = (1 << 24) | colour.R << 16 | colour.G << 8 | colour.B;
        int slot = (int)((uint)key * 0x9E3779B1u >> 20);
        if (asked[slot] != key)
        {
            asked[slot] = key;
            found[slot] = Search(colour);
        }

        return found[slot];
    }

    private byte Search(Rgb24 colour)
    {
        int best = 0, least = int.MaxValue;
        for (int i = 0; i < palette.Length; i++)
        {
            int r = palette[i].R - colour.R, g = palette[i].G - colour.G, b = palette[i].B - colour.B;
            int square = r * r + g * g + b * b;
            (best, least) = square < least ? (i, square) : (best, least);
        }

        return (byte)best;
    }
}
