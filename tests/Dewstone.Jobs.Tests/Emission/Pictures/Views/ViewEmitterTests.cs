using System.Numerics;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Pictures.Views;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Tests.Emission.Pictures.Views;

public sealed class ViewEmitterTests
{
    [Fact]
    public void Outside_shows_a_warm_grey_unit_on_paper()
    {
        Canvas view = Views(SampleJob.Ball(8)).Outside();

        Assert.Equal(Ink.Paper, view.Pixels[5 * view.Width + 5]);
        Rgb24 middle = Middle(view);
        Assert.InRange(middle.R, 120, 245);
        Assert.True(middle.R >= middle.G && middle.G >= middle.B, $"{middle}");
    }

    [Fact]
    public void Turned_unit_is_seen_from_its_own_south_east()
    {
        CompiledJob job = SampleJob.Ball();
        for (int turns = 0; turns < 4; turns++)
        {
            CompiledJob turned = job with { Placement = job.Placement with { QuarterTurns = turns } };
            ViewCamera camera = new(turned, 33.0, 27.0, 1000, 800, 46, 64);
            Vector3 southEastTop = Cells(turned, new Point3(0.15, 0.0, 0.15)), northWestTop = Cells(turned, new Point3(0.0, 0.15, 0.15));

            Assert.True(camera.Seen(southEastTop).Y > camera.Seen(northWestTop).Y);
            Assert.True(camera.Seen(southEastTop).X > camera.Seen(northWestTop).X);
            Assert.True(Vector3.Dot(southEastTop - northWestTop, camera.Forward) < 0f);
        }
    }

    // The ball's middle lies on the fold of the two cut faces; 25 mm to the south of it and 10 mm up is on the face that looks east.
    [Fact]
    public void Cut_face_has_the_legend_tone_of_its_water_cement()
    {
        CompiledJob job = SampleJob.Ball(8);
        ViewCamera camera = new(job, 40.0, 30.0, 1000, 800, 46, 64);
        WaterCementTones tones = new(job, Surface(job));
        Vector3 point = (camera.BoxLow + camera.BoxHigh) / 2f + new Vector3(0f, -4f, 1.6f);
        (float x, float y) = camera.Seen(point);

        Canvas view = Views(job).CutOpen();

        Assert.Equal(ViewPainter.ToPixel(tones.At(point)), view.Pixels[(int)y * view.Width + (int)x]);
    }

    [Fact]
    public void Place_that_did_not_set_has_the_tone_of_loose_mix()
    {
        CompiledJob job = SampleJob.Ball(8);
        WaterCementTones tones = new(job, Surface(job));

        Assert.Equal(WaterCementTones.Loose, tones.At(new Vector3(2f, 2f, 2f)));
        Assert.Contains(tones.At(new Vector3(20f, 20f, 20f)), tones.Bands);
    }

    [Fact]
    public void Tones_get_darker_with_every_band()
    {
        WaterCementTones tones = new(SampleJob.Ball(), Surface(SampleJob.Ball()));

        Assert.True(tones.Bands.Count >= 4);
        Assert.True(tones.First <= 0.22);
        Assert.All(tones.Bands.Zip(tones.Bands.Skip(1)), pair => Assert.True(Vector3.Dot(pair.First - pair.Second, new Vector3(0.3f, 0.6f, 0.1f)) > 0.03f));
    }

    // The tunnels cross at 270 mm; their mouths are 340 x 300 mm and cut off 25 mm behind the outer box.
    [Fact]
    public void Voids_show_the_tunnel_as_a_blue_body_and_the_solid_as_glass()
    {
        CompiledJob job = SampleJob.Block(4);
        ViewCamera camera = new(job, 33.0, 27.0, 1000, 800, 46, 64);
        float perMetre = (float)(1.0 / job.Moisture.Grid.CellMetres);
        (float x, float y) = camera.Seen(camera.BoxLow + perMetre * new Vector3(0.45f, 0.025f, 0.27f));

        Canvas view = Views(job).Voids();

        Rgb24 mouth = view.Pixels[(int)y * view.Width + (int)x];
        Assert.True(mouth.B > mouth.R + 15, $"{mouth} at the tunnel's mouth");
        (x, y) = camera.Seen(camera.BoxLow + perMetre * new Vector3(0.2f, 0f, 0.04f));
        Rgb24 glass = view.Pixels[(int)y * view.Width + (int)x];
        Assert.InRange(glass.R, 190, 245);
    }

    [Fact]
    public void Growing_picture_shows_the_damp_top_of_each_layer_and_nothing_above_it()
    {
        CompiledJob job = SampleJob.Block(4);
        HardenedSurface surface = Surface(job);
        Body solid = new(SmoothedLevel.Of(surface, new Parallelism(2)), surface.Grid, new Parallelism(2));
        ViewCamera camera = new(job, 33.0, 32.0, GrowingPicture.Width, GrowingPicture.Height, 22, 44);

        Canvas[] pictures = new GrowingPicture(job, solid).Draw(new Parallelism(2), CancellationToken.None);

        Assert.Equal(19, pictures.Length);
        foreach (int layer in new[] { 1, 9, 12 })
        {
            // A place of solid rock well away from openings: 120 mm into the box from its south-western corner.
            Vector3 top = camera.BoxLow + new Vector3(9.6f, 9.6f, 0f);
            top.Z = (layer + 1) * 4;
            Rgb24 here = Pixel(pictures[layer], camera, top), later = Pixel(pictures[layer + 1], camera, top with { Z = top.Z + 4 });
            Assert.True(here.B > here.R + 30, $"layer {layer + 1}: {here}");
            Assert.Equal(here, later);
            Assert.Equal(Ink.Paper, Pixel(pictures[layer], camera, camera.BoxHigh with { Z = camera.BoxHigh.Z + 2f }));
        }
    }

    private static Vector3 Cells(CompiledJob job, Point3 unit)
    {
        Point3 from = job.Placement.ToPrinter(unit) - job.Moisture.Grid.Origin;
        return new Vector3((float)from.X, (float)from.Y, (float)from.Z) / (float)job.Moisture.Grid.CellMetres;
    }

    private static Rgb24 Pixel(Canvas canvas, ViewCamera camera, Vector3 point)
    {
        (float x, float y) = camera.Seen(point);
        return canvas.Pixels[(int)y * canvas.Width + (int)x];
    }

    private static Rgb24 Middle(Canvas canvas) => canvas.Pixels[368 * canvas.Width + canvas.Width / 2];

    private static HardenedSurface Surface(CompiledJob job) => HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, new Parallelism(2));

    private static ViewEmitter Views(CompiledJob job)
    {
        HardenedSurface surface = Surface(job);
        Body solid = new(SmoothedLevel.Of(surface, new Parallelism(2)), surface.Grid, new Parallelism(2));
        return new ViewEmitter(job, surface, solid, new Parallelism(2), CancellationToken.None);
    }
}
