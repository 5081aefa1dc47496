using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Tests.Emission.Pictures;

public sealed class PngFileTests
{
    /// <summary>Read back by the image library, which refuses a wrong check sum, length or order of chunks.</summary>
    [Theory]
    [InlineData(1, 1)]
    [InlineData(7, 3)]
    [InlineData(300, 211)]
    public void Pixels_come_back_as_drawn(int width, int height)
    {
        Canvas canvas = new(width, height);
        for (int i = 0; i < canvas.Pixels.Length; i++)
        {
            canvas.Pixels[i] = new Rgb24((byte)(i * 37), (byte)(i >> 3), (byte)(i * i));
        }

        using Image<Rgb24> image = Image.Load<Rgb24>(PngFile.Write(canvas));

        Assert.Equal((width, height), (image.Width, image.Height));
        Rgb24[] pixels = new Rgb24[width * height];
        image.CopyPixelDataTo(pixels);
        Assert.Equal(canvas.Pixels, pixels);
    }
}
