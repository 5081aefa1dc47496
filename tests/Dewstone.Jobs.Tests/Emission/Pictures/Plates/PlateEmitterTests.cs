using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Model.Description;
using Dewstone.Model.Results;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Tests.Emission.Pictures.Plates;

/// <summary>Plates of the ball: 140 mm across, its middle at (225, 225, 125) mm of the printer frame, at the tips of layer 3 (index 2).</summary>
public sealed class PlateEmitterTests
{
    private const int Equator = 2;

    [Fact]
    public void Plan_shows_solid_where_it_set_and_paper_where_not()
    {
        (PlateSubject subject, Canvas plate) = Draw(SampleJob.Ball(8), Equator);

        Assert.Equal(Ink.Solid, At(plate, subject, 0.250, 0.250));
        Assert.Equal(Ink.Solid, At(plate, subject, 0.200, 0.250));
        Assert.Equal(Ink.Paper, At(plate, subject, 0.110, 0.140));
        Assert.Equal(Ink.Paper, At(plate, subject, 0.320, 0.340));
    }

    [Fact]
    public void Wanted_outline_runs_where_the_ball_cuts_the_tip_height()
    {
        (PlateSubject subject, Canvas plate) = Draw(SampleJob.Ball(8), Equator);

        foreach (double angle in new[] { 0.5, 1.1, 2.2, 3.6, 5.2 })
        {
            Assert.InRange(DarkestNear(plate, subject, 0.225 + 0.07 * Math.Cos(angle), 0.225 + 0.07 * Math.Sin(angle), 2), 0, 75);
        }
    }

    [Fact]
    public void Dose_is_a_disc_and_a_dry_position_a_dot()
    {
        (PlateSubject subject, Canvas plate) = Draw(SampleJob.Ball(8), Equator);

        Assert.Equal(Ink.Mix(Ink.Solid, Ink.Water, DoseMarks.Opacity), At(plate, subject, 0.231, 0.231));
        Assert.NotEqual(Ink.Paper, At(plate, subject, 0.125, 0.125));
        Assert.Equal(Ink.Paper, At(plate, subject, 0.133, 0.125));
    }

    [Fact]
    public void Area_of_a_disc_goes_with_the_dose()
    {
        PlateSubject subject = Subject(SampleJob.Block(4));

        double whole = subject.DiscRadius(34.0), half = subject.DiscRadius(17.0);

        Assert.Equal(0.5, half * half / (whole * whole), 1e-5);
        Assert.True(whole < 0.5 * 0.05 * subject.Layout.Plan.PixelsPerMetre, "the largest disc must not reach its neighbour");
    }

    [Fact]
    public void Solid_that_is_not_wanted_is_orange_and_wanted_that_did_not_set_is_hatched()
    {
        CompiledJob job = SampleJob.Ball(8);
        int nx = job.Target.Grid.Nx, plane = nx * job.Target.Grid.Ny;
        for (int i = 0; i < job.Target.Fraction.Length; i++)
        {
            // East of x = 225 mm nothing is wanted; west of it everything.
            job.Target.Fraction[i] = i % nx < nx / 2 ? 1f : 0f;
        }

        (PlateSubject subject, Canvas plate) = Draw(job, Equator);

        Assert.Equal(Ink.Excess, At(plate, subject, 0.250, 0.250));
        Assert.Equal(Ink.Solid, At(plate, subject, 0.200, 0.250));
        Rgb24[] missing = [.. Enumerable.Range(0, 12).Select(step => At(plate, subject, 0.110 + step * 0.0004, 0.150))];
        Assert.Contains(Ink.Missing, missing);
        Assert.Contains(Ink.Paper, missing);
        Assert.True(plane > 0);
    }

    [Fact]
    public void Blocked_needle_is_crossed_out_and_no_other()
    {
        CompiledJob job = SampleJob.Ball(8);
        (PlateSubject sound, Canvas before) = Draw(job with { Description = job.Description with { Needles = null } }, Equator);
        NeedleTable table = new() { Needles = [new NeedleState { Column = 4, Row = 6, Condition = NeedleCondition.Blocked }] };
        (PlateSubject subject, Canvas after) = Draw(job with { Description = job.Description with { Needles = table } }, Equator);

        // Column 4 and row 6 of the head are the second and fourth position of the window: (175, 275) mm.
        Assert.True(subject.IsBlocked(1, 3));
        Assert.False(sound.IsBlocked(1, 3));
        (int x, int y) = Pixel(subject, 0.175, 0.275);
        Assert.Equal(Ink.Line, after.Pixels[y * after.Width + x]);
        Assert.All(
            Enumerable.Range(0, after.Pixels.Length).Where(i => before.Pixels[i] != after.Pixels[i]),
            i => Assert.True(Math.Abs(i % after.Width - x) < 12 && Math.Abs(i / after.Width - y) < 12));
    }

    [Fact]
    public void Sections_show_what_is_built_in_full_tone_and_what_is_to_come_in_light_tone()
    {
        (PlateSubject subject, Canvas plate) = Draw(SampleJob.Ball(8), Equator - 1);
        SheetMap section = subject.Layout.AlongX;

        Assert.Equal(Ink.Solid, plate.Pixels[(int)section.Y(0.090) * plate.Width + (int)section.X(0.235)]);
        Assert.Equal(Ink.SolidElsewhere, plate.Pixels[(int)section.Y(0.125) * plate.Width + (int)section.X(0.235)]);
        Assert.Equal(Ink.Paper, plate.Pixels[(int)section.Y(0.125) * plate.Width + (int)section.X(0.115)]);
    }

    [Theory]
    [InlineData(4.0, 0.3)]
    [InlineData(0.3, 4.0)]
    public void Long_units_fit_the_sheet(double x, double y)
    {
        PlateLayout layout = new(new Model.Lattices.CellGrid
        {
            Nx = (int)(x / 0.00625),
            Ny = (int)(y / 0.00625),
            Nz = 40,
            CellsPerPitch = 8,
            CellsPerLayer = 8,
            Origin = default,
            CellMetres = 0.00625,
            CellHeightMetres = 0.00625,
        });

        foreach (SheetMap map in new[] { layout.Plan, layout.AlongX, layout.AlongY })
        {
            Assert.InRange(map.Left, PlateLayout.Border, PlateLayout.SheetWidth);
            Assert.InRange(map.Right, map.Left + 1, PlateLayout.SheetWidth - PlateLayout.Border);
            Assert.InRange(map.Top, PlateLayout.Border, PlateLayout.TitleTop);
            Assert.InRange(map.Bottom, map.Top + 1, PlateLayout.TitleTop);
        }
    }

    private static PlateSubject Subject(CompiledJob job) => new(job, HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, new Parallelism(2)));

    private static (PlateSubject Subject, Canvas Plate) Draw(CompiledJob job, int layer)
    {
        PlateSubject subject = Subject(job);
        return (subject, PlateEmitter.Draw(subject, layer));
    }

    private static (int X, int Y) Pixel(PlateSubject subject, double x, double y) => ((int)subject.Layout.Plan.X(x), (int)subject.Layout.Plan.Y(y));

    private static Rgb24 At(Canvas plate, PlateSubject subject, double x, double y)
    {
        (int px, int py) = Pixel(subject, x, y);
        return plate.Pixels[py * plate.Width + px];
    }

    private static int DarkestNear(Canvas plate, PlateSubject subject, double x, double y, int reach)
    {
        (int px, int py) = Pixel(subject, x, y);
        return Enumerable.Range(-reach, 2 * reach + 1).SelectMany(dy => Enumerable.Range(-reach, 2 * reach + 1).Select(dx => (int)plate.Pixels[(py + dy) * plate.Width + px + dx].R)).Min();
    }
}
