using Dewstone.Jobs.Emission.Pictures.Drawing;
using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Emission.Pictures.Plates;

/// <summary>The two upright sections beside the plan: what stands once the layer is done in full tone, what is still to come in light tone, the layer itself bracketed.</summary>
internal static class SectionDrawing
{
    /// <summary>Draws both sections.</summary>
    /// <param name="canvas">The sheet.</param>
    /// <param name="subject">The job's plates.</param>
    /// <param name="layer">Layer, from 0.</param>
    public static void Draw(Canvas canvas, PlateSubject subject, int layer)
    {
        One(canvas, subject, layer, subject.Layout.AlongX, subject.TonesAlongX, "A-A", $"along x at y = {subject.SectionY * 1000.0:0} mm");
        One(canvas, subject, layer, subject.Layout.AlongY, subject.TonesAlongY, "B-B", $"along y at x = {subject.SectionX * 1000.0:0} mm");
    }

    private static void One(Canvas canvas, PlateSubject subject, int layer, SheetMap map, SectionTones tones, string name, string where)
    {
        Lattice lattice = subject.Job.Lattice;
        Lettering.Plain.Write(canvas, name, map.Left, map.Top - 8f, Ink.Line);
        Lettering.Small.Write(canvas, where, map.Left + Lettering.Plain.Length(name) + 12f, map.Top - 8f, Ink.Quiet);
        double top = (layer + 1) * lattice.LayerMetres, foot = layer * lattice.LayerMetres;
        tones.Lay(canvas, map.Y(top));
        for (int k = 1; k < lattice.Layers; k++)
        {
            float y = map.Y(k * lattice.LayerMetres);
            canvas.Line(map.Left - 4f, y, map.Left, y, 1f, Ink.Quiet);
        }

        canvas.Frame((int)map.Left, (int)map.Top, map.Width, map.Height, 1, Ink.Quiet);
        canvas.Line(map.Left, map.Y(top), map.Right, map.Y(top), 1.4f, Ink.Line);
        canvas.Line(map.Left, map.Y(foot), map.Right, map.Y(foot), 1.4f, Ink.Line);
        float middle = map.Y((top + foot) / 2.0);
        canvas.Triangle((map.Left - 14f, middle - 6f), (map.Left - 14f, middle + 6f), (map.Left - 4f, middle), Ink.Line);
        canvas.Triangle((map.Right + 14f, middle - 6f), (map.Right + 14f, middle + 6f), (map.Right + 4f, middle), Ink.Line);
        Lettering.Small.Write(canvas, $"{layer + 1}", map.Right + 18f, middle + 4.5f, Ink.Line);
    }
}
