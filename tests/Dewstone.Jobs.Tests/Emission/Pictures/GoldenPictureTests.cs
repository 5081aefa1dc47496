using System.Text;
using Dewstone.Jobs.Emission;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;
using Snapshooter.Xunit3;

namespace Dewstone.Jobs.Tests.Emission.Pictures;

/// <summary>
/// Pictures of a small job against stored ones: the mean lightness of each field of 20 x 20 pixels in sixteen steps, f for white, so that a
/// difference can be read and a last bit of another machine's arithmetic does not show.
/// </summary>
public sealed class GoldenPictureTests
{
    private const int Side = 20;

    [Theory]
    [InlineData("layers/layer-003.png", "plate")]
    [InlineData("unit.png", "unit")]
    [InlineData("cutaway.png", "cutaway")]
    [InlineData("voids.png", "voids")]
    public void Picture_of_the_ball_is_as_stored(string path, string name)
    {
        EmittedFile file = SampleJob.BallPictures.Single(file => file.RelativePath == path);

        using Image<Rgb24> image = Image.Load<Rgb24>(file.Bytes.Span);

        Snapshot.Match(Lightness(image), $"Ball_{name}");
    }

    private static string Lightness(Image<Rgb24> image)
    {
        StringBuilder text = new();
        for (int top = 0; top + Side <= image.Height; top += Side)
        {
            for (int left = 0; left + Side <= image.Width; left += Side)
            {
                int sum = 0;
                for (int y = top; y < top + Side; y++)
                {
                    for (int x = left; x < left + Side; x++)
                    {
                        Rgb24 pixel = image[x, y];
                        sum += pixel.R + pixel.G + pixel.B;
                    }
                }

                text.Append("0123456789abcdef"[sum / (3 * Side * Side * 16)]);
            }

            text.Append('\n');
        }

        return text.ToString();
    }
}
