using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Drawing;

/// <summary>
/// The colours of all pictures. Each pair that must be told apart differs in lightness as well as in hue, so that a sheet printed in grey
/// and a colour-blind eye lose nothing; missing solid is hatched besides.
/// </summary>
internal static class Ink
{
    /// <summary>Paper.</summary>
    public static readonly Rgb24 Paper = new(253, 252, 249);

    /// <summary>Lines and lettering.</summary>
    public static readonly Rgb24 Line = new(38, 43, 48);

    /// <summary>Secondary lines and lettering.</summary>
    public static readonly Rgb24 Quiet = new(112, 117, 121);

    /// <summary>Rulings and the raster.</summary>
    public static readonly Rgb24 Faint = new(205, 205, 201);

    /// <summary>Hardened solid, cut.</summary>
    public static readonly Rgb24 Solid = new(190, 184, 174);

    /// <summary>Solid that lies elsewhere in the layer, or that is not built yet.</summary>
    public static readonly Rgb24 SolidElsewhere = new(231, 228, 221);

    /// <summary>Hardened but not wanted.</summary>
    public static readonly Rgb24 Excess = new(226, 137, 54);

    /// <summary>Wanted but not hardened.</summary>
    public static readonly Rgb24 Missing = new(52, 110, 170);

    /// <summary>Doses.</summary>
    public static readonly Rgb24 Water = new(44, 66, 88);

    /// <summary>A mixture of two inks.</summary>
    /// <param name="from">Ink at 0.</param>
    /// <param name="to">Ink at 1.</param>
    /// <param name="share">Share of the second, 0 to 1.</param>
    /// <returns>The mixture, rounded to whole steps.</returns>
    public static Rgb24 Mix(Rgb24 from, Rgb24 to, float share)
    {
        int weight = (int)(share * 256f + 0.5f);
        return new Rgb24(
            (byte)(from.R + ((to.R - from.R) * weight >> 8)),
            (byte)(from.G + ((to.G - from.G) * weight >> 8)),
            (byte)(from.B + ((to.B - from.B) * weight >> 8)));
    }
}
