using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Png;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>Turns sheets into PNG files. Truecolour only: the library's palette PNG does not keep colours exactly.</summary>
internal static class PictureEncoder
{
    private static readonly PngEncoder Png = new()
    {
        ColorType = PngColorType.Rgb,
        BitDepth = PngBitDepth.Bit8,
        // Flat areas and straight lines pack best and fastest unfiltered.
        FilterMethod = PngFilterMethod.None,
        CompressionLevel = PngCompressionLevel.Level3,
        IgnoreMetadata = true,
    };

    /// <summary>A sheet as PNG.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <returns>The file.</returns>
    public static byte[] ToPng(Canvas canvas)
    {
        using Image<Rgb24> image = Image.LoadPixelData(canvas.Pixels, canvas.Width, canvas.Height);
        using MemoryStream stream = new();
        image.Save(stream, Png);
        return stream.ToArray();
    }
}
