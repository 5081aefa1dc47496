using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>The ruled block along the foot of a plate: which unit, which layer, how high, how much water, to what scale, which way it lies.</summary>
internal static class TitleBlock
{
    private static readonly int[] BarLengths = [500, 200, 100, 50, 20, 10];
    private const int Top = PlateLayout.TitleTop;
    private const int Bottom = PlateLayout.SheetHeight - PlateLayout.Border;

    /// <summary>Draws the block.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="subject">The job's plates.</param>
    /// <param name="layer">Layer, from 0.</param>
    public static void Draw(Canvas canvas, PlateSubject subject, int layer)
    {
        Lattice lattice = subject.Job.Lattice;
        (int doses, long centi, int least, int most) = Water(subject, layer);
        canvas.Fill(PlateLayout.Border, Top, canvas.Width - 2 * PlateLayout.Border, 1, Ink.Line);
        int x = PlateLayout.Border;
        string name = subject.Job.Description.Unit.Name;
        x = Cell(canvas, x, 240, subject.Job.Description.Bin.Count == 0 ? "reef unit" : "bin", name, Lettering.Large.Length(name) > 216f ? Lettering.Plain : Lettering.Large);
        x = Cell(canvas, x, 214, layer < lattice.UnderLayers ? "plate, loose layer" : "plate", $"layer {layer + 1} of {lattice.Layers}", Lettering.Large);
        x = Cell(canvas, x, 146, "z in the bin", $"{layer * lattice.LayerMetres * 1000.0:0.#} to {(layer + 1) * lattice.LayerMetres * 1000.0:0.#} mm", Lettering.Plain);
        x = Cell(canvas, x, 122, "water", $"{centi / 100.0:0.00} mL", Lettering.Plain);
        x = Cell(canvas, x, 124, "doses", doses == 0 ? "none" : $"{doses}", Lettering.Plain);
        if (doses > 0)
        {
            Lettering.Small.Write(canvas, $"{least / 100.0:0.0} to {most / 100.0:0.0} mL", x - 112f, Bottom - 9f, Ink.Quiet);
        }

        x = ScaleBar(canvas, subject, x);
        Directions(canvas, subject, x);
    }

    private static (int Doses, long Centi, int Least, int Most) Water(PlateSubject subject, int layer)
    {
        Lattice lattice = subject.Job.Lattice;
        int doses = 0, least = int.MaxValue, most = 0;
        long centi = 0;
        foreach (int dose in subject.Job.Doses.CentiMillilitres.AsSpan(lattice.Index(0, 0, layer), lattice.Columns * lattice.Rows))
        {
            if (dose > 0)
            {
                doses++;
                centi += dose;
                least = Math.Min(least, dose);
                most = Math.Max(most, dose);
            }
        }

        return (doses, centi, least, most);
    }

    private static int Cell(Canvas canvas, int left, int width, string label, string text, Lettering lettering)
    {
        Lettering.Small.Write(canvas, label, left + 12f, Top + 18f, Ink.Quiet);
        lettering.Write(canvas, lettering.Fit(text, width - 20f), left + 12f, Top + 28f + lettering.CapitalPixels, Ink.Line);
        canvas.Fill(left + width, Top, 1, Bottom - Top, Ink.Line);
        return left + width;
    }

    private static int ScaleBar(Canvas canvas, PlateSubject subject, int left)
    {
        const int Width = 172;
        SheetMap plan = subject.Layout.Plan;
        int length = BarLengths.First(mm => mm * plan.PixelsPerMetre / 1000.0 <= Width - 30 || mm == 10);
        int pixels = (int)Math.Round(length * plan.PixelsPerMetre / 1000.0), half = pixels / 2;
        int x = left + 12, y = Top + 34;
        Lettering.Small.Write(canvas, "scale of the plan, mm", left + 12f, Top + 18f, Ink.Quiet);
        canvas.Frame(x, y, pixels, 7, 1, Ink.Line);
        canvas.Fill(x, y, half, 7, Ink.Line);
        Lettering.Small.Write(canvas, "0", x, Bottom - 9f, Ink.Quiet);
        Lettering.Small.Write(canvas, $"{length}", x + pixels, Bottom - 9f, Ink.Quiet, 1f);
        canvas.Fill(left + Width, Top, 1, Bottom - Top, Ink.Line);
        return left + Width;
    }

    private static void Directions(Canvas canvas, PlateSubject subject, int left)
    {
        float x = left + 16f, y = Bottom - 14f;
        Arrow(canvas, x, y, 30f, 0f);
        Arrow(canvas, x, y, 0f, -30f);
        Lettering.Small.Write(canvas, "x", x + 36f, y + 4f, Ink.Line);
        Lettering.Small.Write(canvas, "y", x + 7f, y - 26f, Ink.Line);
        if (subject.Job.Description.Bin.Count > 0)
        {
            return;
        }

        Point3 north = subject.Job.Placement.ToPrinter(new Point3(0, 1, 0)) - subject.Job.Placement.ToPrinter(new Point3(0, 0, 0));
        float middleX = left + 106f, middleY = Top + 25f;
        Arrow(canvas, middleX - (float)north.X * 13f, middleY + (float)north.Y * 13f, (float)north.X * 26f, -(float)north.Y * 26f);
        Lettering.Small.Write(canvas, "unit's north", middleX, Bottom - 9f, Ink.Quiet, 0.5f);
    }

    private static void Arrow(Canvas canvas, float x, float y, float dx, float dy)
    {
        float length = MathF.Sqrt(dx * dx + dy * dy), ux = dx / length, uy = dy / length;
        float tipX = x + dx, tipY = y + dy;
        canvas.Line(x, y, tipX - 7f * ux, tipY - 7f * uy, 1.4f, Ink.Line);
        canvas.Triangle((tipX, tipY), (tipX - 9f * ux - 3.5f * uy, tipY - 9f * uy + 3.5f * ux), (tipX - 9f * ux + 3.5f * uy, tipY - 9f * uy - 3.5f * ux), Ink.Line);
    }
}
