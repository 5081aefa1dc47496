using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.Formats.Gif;
using SixLabors.ImageSharp.PixelFormats;
using SixLabors.ImageSharp.Processing.Processors.Quantization;

namespace Dewstone.Jobs.Emission.Pictures;

/// <summary>Turns sheets into a GIF file.</summary>
internal static class GifFile
{
    private const int FrameHundredths = 35;
    private const int LastFrameHundredths = 250;

    // The file is packed by one thread; others are packed at the same time.
    private static readonly Configuration OneThread = new() { MaxDegreeOfParallelism = 1 };

    /// <summary>Sheets of one size as an animated GIF that runs for ever and rests on the last.</summary>
    /// <param name="sheets">The sheets, at least one.</param>
    /// <param name="palette">Colours to draw with, at most 256.</param>
    /// <returns>The file.</returns>
    public static byte[] Write(IReadOnlyList<Canvas> sheets, Rgb24[] palette)
    {
        using Image<Rgb24> image = Image.LoadPixelData(OneThread, sheets[0].Pixels, sheets[0].Width, sheets[0].Height);
        image.Metadata.GetGifMetadata().RepeatCount = 0;
        foreach (Canvas sheet in sheets.Skip(1))
        {
            using Image<Rgb24> next = Image.LoadPixelData(OneThread, sheet.Pixels, sheet.Width, sheet.Height);
            image.Frames.AddFrame(next.Frames.RootFrame);
        }

        for (int i = 0; i < image.Frames.Count; i++)
        {
            image.Frames[i].Metadata.GetGifMetadata().FrameDelay = i == image.Frames.Count - 1 ? LastFrameHundredths : FrameHundredths;
        }

        using MemoryStream stream = new();
        image.Save(stream, new GifEncoder
        {
            ColorTableMode = GifColorTableMode.Global,
            Quantizer = new PaletteQuantizer(palette.Select(ink => (Color)ink).ToArray(), new QuantizerOptions { Dither = null }),
        });
        return stream.ToArray();
    }
}
