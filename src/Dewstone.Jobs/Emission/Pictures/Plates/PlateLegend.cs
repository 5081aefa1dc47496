using Dewstone.Jobs.Emission.Pictures.Drawing;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>What tones and marks mean.</summary>
internal static class PlateLegend
{
    private static readonly double[] RoundDoses = [1, 2, 5, 10, 15, 20, 30, 40, 50, 75, 100, 150, 200, 300, 500, 1000];

    /// <summary>Draws the legend.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="subject">The job's plates.</param>
    public static void Draw(Canvas canvas, PlateSubject subject)
    {
        const int Left = PlateLayout.ColumnLeft + 4, Right = Left + 196, Step = 22;
        int top = subject.Layout.LegendTop;
        Swatch(canvas, Left, top, Ink.Solid, "set, at tip height");
        Swatch(canvas, Left, top + Step, Ink.SolidElsewhere, "set elsewhere in layer");
        Swatch(canvas, Left, top + 2 * Step, Ink.Excess, "set, not wanted");
        Hatched(canvas, Left, top + 3 * Step, "wanted, not set");
        canvas.Line(Right, top + 7f, Right + 22f, top + 7f, 1.7f, Ink.Line);
        Note(canvas, Right, top, "wanted outline");
        canvas.Dashes(Right, top + Step + 7f, Right + 24f, top + Step + 7f, [7f, 5f], 1f, Ink.Quiet);
        Note(canvas, Right, top + Step, "outer box");
        canvas.Disc(Right + 11f, top + 2 * Step + 7f, 1.1f, Ink.Quiet);
        Note(canvas, Right, top + 2 * Step, "no water");
        DoseMarks.Cross(canvas, Right + 11f, top + 3 * Step + 7f);
        Note(canvas, Right, top + 3 * Step, "needle blocked");
        Doses(canvas, subject, Left, top + 4 * Step + 14);
    }

    private static void Doses(Canvas canvas, PlateSubject subject, int left, int middle)
    {
        double largest = subject.LargestMillilitres;
        double[] shown = [.. RoundDoses.Where(dose => dose <= largest).TakeLast(5).Where((_, place) => place % 2 == 0)];
        float x = left + 11f;
        Lettering.Small.Write(canvas, "dose by area", left, middle + 5f, Ink.Line);
        x += Lettering.Small.Length("dose by area") + 10f;
        foreach (double dose in shown)
        {
            float radius = subject.DiscRadius(dose);
            canvas.Disc(x + radius, middle, radius, Ink.Water, DoseMarks.Opacity);
            string text = $"{dose:0} mL";
            Lettering.Small.Write(canvas, text, x + 2f * radius + 4f, middle + 5f, Ink.Line);
            x += 2f * radius + Lettering.Small.Length(text) + 18f;
        }
    }

    private static void Swatch(Canvas canvas, int left, int top, Rgb24 ink, string text)
    {
        canvas.Fill(left, top, 22, 14, ink);
        canvas.Frame(left, top, 22, 14, 1, Ink.Quiet);
        Note(canvas, left, top, text);
    }

    private static void Hatched(Canvas canvas, int left, int top, string text)
    {
        for (int y = top; y < top + 14; y++)
        {
            for (int x = left; x < left + 22; x++)
            {
                canvas.Touch(x, y, Ink.Missing, (x + y) % 6 < 2 ? 1f : 0f);
            }
        }

        canvas.Frame(left, top, 22, 14, 1, Ink.Quiet);
        Note(canvas, left, top, text);
    }

    private static void Note(Canvas canvas, int left, int top, string text) => Lettering.Small.Write(canvas, text, left + 30f, top + 12f, Ink.Line);
}
