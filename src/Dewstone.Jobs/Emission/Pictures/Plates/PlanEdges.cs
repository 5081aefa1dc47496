using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>Everything around the plan: window, bin walls, outer box, section lines, needle numbers below and left, millimetres above and right.</summary>
internal static class PlanEdges
{
    private static readonly float[] Box = [7f, 5f];
    private static readonly float[] Station = [2f, 4f];
    private static readonly float[] Chain = [16f, 4f, 3f, 4f];
    private static readonly int[] TickSteps = [10, 20, 50, 100, 200, 500, 1000];

    /// <summary>Draws the edges.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="subject">The job's plates.</param>
    /// <param name="layer">Layer, from 0.</param>
    public static void Draw(Canvas canvas, PlateSubject subject, int layer)
    {
        SheetMap plan = subject.Layout.Plan;
        canvas.Frame((int)plan.Left, (int)plan.Top, plan.Width, plan.Height, 1, Ink.Quiet);
        StationLines(canvas, subject, layer, plan);
        foreach ((string mark, UnitPlacement placement) in subject.Boxes)
        {
            OuterBox(canvas, mark, placement, plan);
        }

        SectionLines(canvas, subject, plan);
        NeedleNumbers(canvas, subject, layer, plan);
        Millimetres(canvas, plan);
    }

    private static void OuterBox(Canvas canvas, string mark, UnitPlacement placement, SheetMap plan)
    {
        Point3 corner = placement.Corner;
        Size3 box = placement.TurnedBox;
        float left = plan.X(corner.X), right = plan.X(corner.X + box.X), bottom = plan.Y(corner.Y), top = plan.Y(corner.Y + box.Y);
        canvas.Dashes(left, bottom, right, bottom, Box, 1f, Ink.Quiet);
        canvas.Dashes(left, top, right, top, Box, 1f, Ink.Quiet);
        canvas.Dashes(left, bottom, left, top, Box, 1f, Ink.Quiet);
        canvas.Dashes(right, bottom, right, top, Box, 1f, Ink.Quiet);
        Lettering.Plain.Write(canvas, mark, left + 2f, top - 5f, Ink.Line);
    }

    // Between the positions that different stations of the head water; needle numbers begin anew there.
    private static void StationLines(Canvas canvas, PlateSubject subject, int layer, SheetMap plan)
    {
        Lattice lattice = subject.Job.Lattice;
        double half = lattice.PitchMetres / 2.0;
        for (int i = 1; i < lattice.Columns; i++)
        {
            if (subject.Seat(i, 0).Station != subject.Seat(i - 1, 0).Station)
            {
                float x = plan.X(lattice.Tip(i, 0, layer).X - half);
                canvas.Dashes(x, plan.Bottom, x, plan.Top, Station, 1.2f, Ink.Water);
            }
        }

        for (int j = 1; j < lattice.Rows; j++)
        {
            if (subject.Seat(0, j).Station != subject.Seat(0, j - 1).Station)
            {
                float y = plan.Y(lattice.Tip(0, j, layer).Y - half);
                canvas.Dashes(plan.Left, y, plan.Right, y, Station, 1.2f, Ink.Water);
            }
        }

        for (int j = 0; subject.StationCount > 1 && j < lattice.Rows; j++)
        {
            for (int i = 0; i < lattice.Columns; i++)
            {
                int station = subject.Seat(i, j).Station;
                if ((i == 0 || subject.Seat(i - 1, j).Station != station) && (j == 0 || subject.Seat(i, j - 1).Station != station))
                {
                    Point3 tip = lattice.Tip(i, j, layer);
                    string text = $"station {station}";
                    float x = Math.Max(plan.X(tip.X - half), plan.Left) + 24f, y = Math.Min(plan.Y(tip.Y - half), plan.Bottom) - 5f;
                    canvas.Fill((int)x - 4, (int)y - 12, (int)Lettering.Small.Length(text) + 9, 15, Ink.Paper);
                    Lettering.Small.Write(canvas, text, x, y, Ink.Line);
                }
            }
        }
    }

    private static void SectionLines(Canvas canvas, PlateSubject subject, SheetMap plan)
    {
        float y = plan.Y(subject.SectionY), x = plan.X(subject.SectionX);
        canvas.Dashes(plan.Left, y, plan.Right, y, Chain, 1f, Ink.Line);
        canvas.Dashes(x, plan.Top, x, plan.Bottom, Chain, 1f, Ink.Line);
        // The heads point the way the section is looked at: A towards +y, B towards -x.
        foreach (float end in new[] { plan.Left + 9f, plan.Right - 9f })
        {
            canvas.Line(end, y, end, y - 10f, 1.5f, Ink.Line);
            canvas.Triangle((end - 4f, y - 9f), (end + 4f, y - 9f), (end, y - 17f), Ink.Line);
            Lettering.Plain.Write(canvas, "A", end, y + 15f, Ink.Line, 0.5f);
        }

        foreach (float end in new[] { plan.Top + 9f, plan.Bottom - 9f })
        {
            canvas.Line(x, end, x - 10f, end, 1.5f, Ink.Line);
            canvas.Triangle((x - 9f, end - 4f), (x - 9f, end + 4f), (x - 17f, end), Ink.Line);
            Lettering.Plain.Write(canvas, "B", x + 10f, end + 5f, Ink.Line, 0.5f);
        }
    }

    private static void NeedleNumbers(Canvas canvas, PlateSubject subject, int layer, SheetMap plan)
    {
        Lattice lattice = subject.Job.Lattice;
        double pitchPixels = lattice.PitchMetres * plan.PixelsPerMetre;
        int every = pitchPixels >= 24.0 ? 1 : pitchPixels >= 12.0 ? 2 : 5;
        for (int i = 0; i < lattice.Columns; i++)
        {
            float x = plan.X(lattice.Tip(i, 0, layer).X);
            int column = subject.Seat(i, 0).Column;
            bool named = every == 1 || column % every == 0 || column == 1;
            canvas.Line(x, plan.Bottom, x, plan.Bottom + (named ? 5f : 3f), 1f, Ink.Quiet);
            if (named && x < plan.Right + 1f)
            {
                Lettering.Small.Write(canvas, $"{column}", x, plan.Bottom + 17f, Ink.Line, 0.5f);
            }
        }

        for (int j = 0; j < lattice.Rows; j++)
        {
            float y = plan.Y(lattice.Tip(0, j, layer).Y);
            int row = subject.Seat(0, j).Row;
            bool named = every == 1 || row % every == 0 || row == 1;
            canvas.Line(plan.Left - (named ? 5f : 3f), y, plan.Left, y, 1f, Ink.Quiet);
            if (named && y > plan.Top - 1f)
            {
                Lettering.Small.Write(canvas, $"{row}", plan.Left - 8f, y + 4.5f, Ink.Line, 1f);
            }
        }

        Lettering.Small.Write(canvas, "needle column", plan.Left, plan.Bottom + 33f, Ink.Quiet);
        Lettering.Small.Write(canvas, "row", plan.Left - 8f, plan.Top - 8f, Ink.Quiet, 1f);
    }

    private static void Millimetres(Canvas canvas, SheetMap plan)
    {
        int step = TickSteps.FirstOrDefault(s => s * plan.PixelsPerMetre / 1000.0 >= 34.0, TickSteps[^1]);
        for (int mm = (int)Math.Ceiling(plan.FirstMetres * 1000.0 / step - 1e-9) * step; mm <= (plan.FirstMetres + plan.SpanFirst) * 1000.0 + 1e-6; mm += step)
        {
            float x = plan.X(mm / 1000.0);
            canvas.Line(x, plan.Top, x, plan.Top - 4f, 1f, Ink.Quiet);
            if (x > plan.Left + 12f)
            {
                Lettering.Small.Write(canvas, $"{mm}", x, plan.Top - 8f, Ink.Quiet, 0.5f);
            }
        }

        for (int mm = (int)Math.Ceiling(plan.SecondMetres * 1000.0 / step - 1e-9) * step; mm <= (plan.SecondMetres + plan.SpanSecond) * 1000.0 + 1e-6; mm += step)
        {
            float y = plan.Y(mm / 1000.0);
            canvas.Line(plan.Right, y, plan.Right + 4f, y, 1f, Ink.Quiet);
            if (y > plan.Top + 12f)
            {
                Lettering.Small.Write(canvas, $"{mm}", plan.Right + 7f, y + 4.5f, Ink.Quiet);
            }
        }

        Lettering.Small.Write(canvas, "x, y in mm, printer frame", plan.Right, plan.Bottom + 33f, Ink.Quiet, 1f);
    }
}
