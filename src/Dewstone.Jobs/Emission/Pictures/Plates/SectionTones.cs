using Dewstone.Jobs.Emission.Pictures.Drawing;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>A section with its outline, once as built and once as still to come: every plate shows the lower part of the one and the upper part of the other.</summary>
internal sealed class SectionTones
{
    // What an outline may reach beyond the section, pixels.
    private const int Rim = 3;

    private readonly SheetMap map;
    private readonly Canvas built;
    private readonly Canvas toCome;

    /// <summary>Draws both.</summary>
    /// <param name="cut">The section.</param>
    /// <param name="map">Where it lies on the sheet.</param>
    public SectionTones(CutFields cut, SheetMap map)
    {
        this.map = map;
        built = Draw(cut, double.PositiveInfinity);
        toCome = Draw(cut, double.NegativeInfinity);
    }

    /// <summary>Lays the section on a sheet.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="builtRow">Pixels down above which all is still to come.</param>
    public void Lay(Canvas canvas, float builtRow)
    {
        int left = (int)map.Left - Rim, right = (int)map.Left + map.Width + Rim;
        for (int y = (int)map.Top - Rim; y < (int)map.Top + map.Height + Rim; y++)
        {
            Canvas from = y + 0.5f > builtRow ? built : toCome;
            from.Pixels.AsSpan(y * from.Width + left, right - left).CopyTo(canvas.Pixels.AsSpan(y * canvas.Width + left));
        }
    }

    private Canvas Draw(CutFields cut, double builtTo)
    {
        Canvas canvas = new(PlateLayout.SheetWidth, PlateLayout.SheetHeight);
        CutPainter.Tone(canvas, map, cut, null, builtTo, 5);
        CutPainter.Outline(canvas, map, cut, 1.1f);
        return canvas;
    }
}
