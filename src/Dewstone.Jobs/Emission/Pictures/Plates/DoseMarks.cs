using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>Marks every needle position of a layer: a disc whose area is the dose, a dot where no water goes, a cross where the needle is blocked.</summary>
internal static class DoseMarks
{
    /// <summary>Opacity of a disc: dark enough to stand on solid, light enough for the outline to run across.</summary>
    public const float Opacity = 0.82f;

    /// <summary>Draws the marks.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="subject">The job's plates.</param>
    /// <param name="layer">Layer, from 0.</param>
    public static void Draw(Canvas canvas, PlateSubject subject, int layer)
    {
        Lattice lattice = subject.Job.Lattice;
        SheetMap plan = subject.Layout.Plan;
        for (int j = 0; j < lattice.Rows; j++)
        {
            for (int i = 0; i < lattice.Columns; i++)
            {
                if (!lattice.IsUsable(i, j, layer))
                {
                    continue;
                }

                Point3 tip = lattice.Tip(i, j, layer);
                float x = plan.X(tip.X), y = plan.Y(tip.Y);
                int index = lattice.Index(i, j, layer);
                if (subject.Job.Doses.CentiMillilitres[index] > 0)
                {
                    canvas.Disc(x, y, subject.DiscRadius(subject.Job.Doses.Millilitres(index)), Ink.Water, Opacity);
                }
                else if (!subject.IsBlocked(i, j))
                {
                    canvas.Disc(x, y, 1.1f, Ink.Quiet);
                }

                if (subject.IsBlocked(i, j))
                {
                    Cross(canvas, x, y);
                }
            }
        }
    }

    /// <summary>Draws the mark of a blocked needle.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="x">Middle across.</param>
    /// <param name="y">Middle down.</param>
    public static void Cross(Canvas canvas, float x, float y)
    {
        foreach ((float thickness, Rgb24 ink) in new[] { (5f, Ink.Paper), (2f, Ink.Line) })
        {
            canvas.Line(x - 5f, y - 5f, x + 5f, y + 5f, thickness, ink);
            canvas.Line(x - 5f, y + 5f, x + 5f, y - 5f, thickness, ink);
        }
    }
}
