using Dewstone.Jobs.Emission.Pictures.Drawing;

namespace Dewstone.Jobs.Tests.Emission.Pictures.Drawing;

public sealed class CanvasTests
{
    // Ink laid down, in whole pixels, is the area: pi r^2 of a disc, length x thickness and two half discs of a line, half base x height of a triangle.
    [Fact]
    public void Ink_laid_down_is_the_area_of_the_stroke()
    {
        Assert.Equal(Math.PI * 400.0, Laid(canvas => canvas.Disc(50.3f, 49.6f, 20f, Ink.Line)), 12.0);
        Assert.Equal(Math.PI * (400.0 - 225.0), Laid(canvas => canvas.Ring(50.3f, 49.6f, 15f, 20f, Ink.Line)), 12.0);
        Assert.Equal(60.0 * 4.0 + Math.PI * 4.0, Laid(canvas => canvas.Line(20f, 50f, 80f, 50f, 4f, Ink.Line)), 12.0);
        Assert.Equal(1000.0, Laid(canvas => canvas.Triangle((20f, 20f), (70f, 20f), (45f, 60f), Ink.Line)), 12.0);
        Assert.Equal(1000.0, Laid(canvas => canvas.Triangle((45f, 60f), (70f, 20f), (20f, 20f), Ink.Line)), 12.0);
        Assert.Equal(30.0 * 20.0, Laid(canvas => canvas.Fill(10, 10, 30, 20, Ink.Line)), 0.5);
    }

    [Fact]
    public void Strokes_beyond_the_sheet_are_cut_off()
    {
        Canvas canvas = new(20, 10);

        canvas.Disc(0f, 0f, 50f, Ink.Line);
        canvas.Line(-100f, -100f, 100f, 100f, 3f, Ink.Line);
        canvas.Fill(-5, -5, 100, 100, Ink.Solid);

        Assert.All(canvas.Pixels, pixel => Assert.Equal(Ink.Solid, pixel));
    }

    [Fact]
    public void Dashes_leave_gaps_of_their_pattern()
    {
        Canvas canvas = new(100, 9);

        canvas.Dashes(0f, 4.5f, 100f, 4.5f, [10f, 10f], 1f, Ink.Line);

        Assert.Equal(Ink.Line, canvas.Pixels[4 * 100 + 5]);
        Assert.Equal(Ink.Paper, canvas.Pixels[4 * 100 + 15]);
        Assert.Equal(Ink.Line, canvas.Pixels[4 * 100 + 25]);
    }

    private static double Laid(Action<Canvas> draw)
    {
        Canvas canvas = new(100, 100);
        draw(canvas);
        double whole = Ink.Paper.R - Ink.Line.R;
        return canvas.Pixels.Sum(pixel => (Ink.Paper.R - pixel.R) / whole);
    }
}
