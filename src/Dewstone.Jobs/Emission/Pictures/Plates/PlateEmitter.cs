using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>Draws the plate of a layer: plan with doses, two sections, legend and title block, on one sheet.</summary>
internal static class PlateEmitter
{
    /// <summary>The plate of a layer.</summary>
    /// <param name="subject">The job's plates.</param>
    /// <param name="layer">Layer, from 0.</param>
    /// <returns>The sheet.</returns>
    public static Canvas Draw(PlateSubject subject, int layer)
    {
        Canvas canvas = new(PlateLayout.SheetWidth, PlateLayout.SheetHeight);
        Lattice lattice = subject.Job.Lattice;
        PlateLayout layout = subject.Layout;
        double tip = lattice.Tip(0, 0, layer).Z;
        CutFields plan = CutFields.AtHeight(subject.Surface, subject.Job.Target, tip);
        CutPainter.Tone(canvas, layout.Plan, plan, CutFields.AnywhereInLayer(subject.Surface, layer), double.PositiveInfinity, 6);
        DoseMarks.Draw(canvas, subject, layer);
        CutPainter.Outline(canvas, layout.Plan, plan, 1.7f);
        PlanEdges.Draw(canvas, subject, layer);
        SectionDrawing.Draw(canvas, subject, layer);
        PlateLegend.Draw(canvas, subject);
        TitleBlock.Draw(canvas, subject, layer);
        int border = PlateLayout.Border;
        canvas.Frame(border, border, canvas.Width - 2 * border, canvas.Height - 2 * border, 2, Ink.Line);
        return canvas;
    }
}
