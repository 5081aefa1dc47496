using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using SixLabors.ImageSharp;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Tests.Emission.Pictures;

public sealed class PictureSetTests
{
    [Fact]
    public void Set_of_a_job_has_a_plate_a_layer_a_growing_picture_and_three_views()
    {
        IReadOnlyList<EmittedFile> files = SampleJob.BallPictures;

        Assert.Equal(
            [
                "layers.gif", "unit.png", "cutaway.png", "voids.png",
                "layers/layer-001.png", "layers/layer-002.png", "layers/layer-003.png", "layers/layer-004.png",
            ],
            files.Select(file => file.RelativePath));
    }

    [Fact]
    public void Pictures_decode_and_have_their_sizes()
    {
        foreach (EmittedFile file in SampleJob.BallPictures)
        {
            using Image<Rgb24> image = Image.Load<Rgb24>(file.Bytes.Span);
            (int width, int height) = file.RelativePath switch
            {
                "layers.gif" => (432, 378),
                "unit.png" or "cutaway.png" or "voids.png" => (1000, 800),
                _ => (1200, 900),
            };
            Assert.Equal((file.RelativePath, width, height), (file.RelativePath, image.Width, image.Height));
        }
    }

    [Fact]
    public void Growing_picture_has_a_frame_a_layer_runs_for_ever_and_rests_on_the_last()
    {
        EmittedFile file = SampleJob.BallPictures.Single(file => file.RelativePath == "layers.gif");

        using Image<Rgb24> image = Image.Load<Rgb24>(file.Bytes.Span);

        Assert.Equal(4, image.Frames.Count);
        Assert.Equal(0, image.Metadata.GetGifMetadata().RepeatCount);
        Assert.Equal([35, 35, 35, 250], Enumerable.Range(0, 4).Select(i => image.Frames[i].Metadata.GetGifMetadata().FrameDelay));
    }

    [Fact]
    public void Files_with_one_two_and_three_threads_are_the_same_bytes()
    {
        CompiledJob job = SampleJob.Ball();

        IReadOnlyList<EmittedFile> one = SampleJob.Pictures(job, 1);
        foreach (int threads in new[] { 2, 3 })
        {
            IReadOnlyList<EmittedFile> more = SampleJob.Pictures(job, threads);
            Assert.Equal(one.Count, more.Count);
            Assert.All(one.Zip(more), pair => Assert.True(pair.First.Bytes.Span.SequenceEqual(pair.Second.Bytes.Span), pair.First.RelativePath));
        }
    }

    [Fact]
    public void Job_in_which_nothing_set_still_has_its_pictures()
    {
        CompiledJob job = SampleJob.Ball();
        Array.Clear(job.Moisture.VolumetricWaterContent);
        Array.Clear(job.Doses.CentiMillilitres);

        IReadOnlyList<EmittedFile> files = SampleJob.Pictures(job);

        Assert.Equal(8, files.Count);
        using Image<Rgb24> unit = Image.Load<Rgb24>(files[1].Bytes.Span);
        Assert.Equal(new Rgb24(253, 252, 249), unit[500, 368]);
    }

    [Fact]
    public void Exponential_law_and_turned_unit_are_drawn()
    {
        CompiledJob job = SampleJob.Ball();
        DryMix mix = job.Description.Mix with { Wetting = new ExponentialLaw { AtSaturation = new Diffusivity(1.5e-5), Exponent = 8 } };
        CompiledJob other = job with { Description = job.Description with { Mix = mix }, Placement = job.Placement with { QuarterTurns = 3 } };

        using Image<Rgb24> unit = Image.Load<Rgb24>(SampleJob.Pictures(other).Single(file => file.RelativePath == "unit.png").Bytes.Span);

        Rgb24 middle = unit[500, 368];
        Assert.InRange(middle.R, 60, 245);
        Assert.True(middle.R >= middle.B, $"{middle} should be a warm grey");
    }

    [Fact]
    public void Cancelled_set_stops()
    {
        using CancellationTokenSource source = new();
        source.Cancel();

        Assert.ThrowsAny<OperationCanceledException>(() => SampleJob.Pictures(SampleJob.Ball(), 2, source.Token));
    }
}
