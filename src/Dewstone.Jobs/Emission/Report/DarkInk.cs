using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The page's colours on a dark screen; lightness runs the other way round, so that pairs stay apart as in <see cref="Ink"/>.</summary>
internal static class DarkInk
{
    /// <summary>Paper.</summary>
    public static readonly Rgb24 Paper = new(22, 25, 28);

    /// <summary>Lines and lettering.</summary>
    public static readonly Rgb24 Line = new(230, 231, 228);

    /// <summary>Secondary lines and lettering.</summary>
    public static readonly Rgb24 Quiet = new(155, 162, 167);

    /// <summary>Rulings and the raster.</summary>
    public static readonly Rgb24 Faint = new(62, 68, 73);

    /// <summary>Hardened solid, cut.</summary>
    public static readonly Rgb24 Solid = new(100, 96, 89);

    /// <summary>Solid that lies elsewhere in the layer, or that is not built yet.</summary>
    public static readonly Rgb24 SolidElsewhere = new(47, 51, 54);

    /// <summary>Hardened but not wanted.</summary>
    public static readonly Rgb24 Excess = new(150, 84, 24);

    /// <summary>Wanted but not hardened.</summary>
    public static readonly Rgb24 Missing = new(97, 158, 220);

    /// <summary>Doses and bars.</summary>
    public static readonly Rgb24 Water = new(205, 222, 237);
}
