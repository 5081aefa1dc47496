using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Tests.Emission.Pictures;

public sealed class GifFileTests
{
    private static readonly Rgb24[] Inks = [.. Enumerable.Range(0, 255).Select(i => new Rgb24((byte)i, (byte)(255 - i), (byte)(i * 7)))];

    /// <summary>
    /// Read back by the image library. Pixels at random need a new word every few of them, so that the code's table fills up and is begun anew many times; one ink
    /// all over makes the longest words.
    /// </summary>
    [Theory]
    [InlineData(1, 1, false)]
    [InlineData(7, 3, false)]
    [InlineData(300, 211, false)]
    [InlineData(300, 211, true)]
    public void Sheets_come_back_as_drawn(int width, int height, bool plain)
    {
        Random random = new(7);
        Canvas[] sheets = [new(width, height), new(width, height), new(width, height), new(width, height)];
        foreach (ref Rgb24 pixel in sheets[0].Pixels.AsSpan())
        {
            pixel = Inks[plain ? 3 : random.Next(Inks.Length)];
        }

        // The second changes in a corner, the third not at all, the last in many places.
        sheets[0].Pixels.CopyTo(sheets[1].Pixels, 0);
        sheets[1].Pixels[^1] = Inks[200];
        sheets[1].Pixels.CopyTo(sheets[2].Pixels, 0);
        for (int i = 0; i < sheets[3].Pixels.Length; i++)
        {
            sheets[3].Pixels[i] = i % 5 == 0 ? Inks[i % Inks.Length] : sheets[2].Pixels[i];
        }

        using Image<Rgb24> image = Image.Load<Rgb24>(GifFile.Write(sheets, Inks));

        Assert.Equal((width, height, sheets.Length), (image.Width, image.Height, image.Frames.Count));
        Rgb24[] pixels = new Rgb24[width * height];
        for (int i = 0; i < sheets.Length; i++)
        {
            image.Frames[i].CopyPixelDataTo(pixels);
            Assert.Equal(sheets[i].Pixels, pixels);
        }
    }

    [Fact]
    public void Ink_nearest_to_a_colour_is_taken()
    {
        NearestInk nearest = new([new(0, 0, 0), new(100, 100, 100), new(255, 0, 0)]);

        Assert.Equal([0, 1, 2, 1, 0], new[] { nearest.Of(new(40, 40, 40)), nearest.Of(new(60, 60, 60)), nearest.Of(new(200, 30, 30)), nearest.Of(new(60, 60, 60)), nearest.Of(new(0, 0, 0)) }.Select(ink => (int)ink));
    }
}
