using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>A small plan of a bin with several units: the outer box of each with its mark, and which way its north lies.</summary>
internal static class BinUnitsPlan
{
    private const double Side = 232.0, Edge = 26.0, Foot = 30.0, Right = 40.0;

    /// <summary>Draws the plan.</summary>
    /// <param name="html">The page.</param>
    /// <param name="job">The bin job.</param>
    public static void Write(HtmlWriter html, CompiledJob job)
    {
        Lattice lattice = job.Lattice;
        double scale = Side / Math.Max(lattice.BinXMetres, lattice.BinYMetres);
        double width = lattice.BinXMetres * scale, height = lattice.BinYMetres * scale, floor = Edge + height;
        html.Add($"""<figure class="plan"><svg viewBox="0 0 {Edge + width + Right} {floor + Foot}" role="img" aria-label="Plan of the bin, {ReportFigures.Millimetres(lattice.BinXMetres)} by {ReportFigures.Millimetres(lattice.BinYMetres)} mm, with {job.Description.Bin.Count} units.">""");
        html.Add($"""<rect class="bin" x="{Edge}" y="{Edge}" width="{width}" height="{height}" />""");
        html.Add($"""<text x="{Edge + width / 2.0}" y="{Edge - 8.0}" text-anchor="middle">bin {ReportFigures.Millimetres(lattice.BinXMetres)} × {ReportFigures.Length(lattice.BinYMetres)}</text>""");
        foreach (BinnedUnit unit in job.Description.Bin)
        {
            Point3 corner = unit.Placement.Corner;
            Size3 box = unit.Placement.TurnedBox;
            double x = Edge + corner.X * scale, y = floor - (corner.Y + box.Y) * scale, w = box.X * scale, h = box.Y * scale;
            html.Add($"""<rect class="body" x="{x}" y="{y}" width="{w}" height="{h}" />""");
            html.Add($"""<text x="{x + w / 2.0}" y="{y + h / 2.0 + 16.0}" text-anchor="middle" class="small">{unit.Mark}</text>""");
            Point3 north = unit.Placement.ToPrinter(new Point3(0, 1, 0)) - unit.Placement.ToPrinter(new Point3(0, 0, 0));
            BinPlan.Arrow(html, x + w / 2.0 - 8.0 * north.X, y + h / 2.0 - 4.0 + 8.0 * north.Y, north.X, -north.Y, 16.0);
        }

        BinPlan.Arrow(html, Edge + width - 40.0, floor + 14.0, 1.0, 0.0, 26.0);
        html.Add($"""<text x="{Edge + width - 8.0}" y="{floor + 18.0}">x</text>""");
        BinPlan.Arrow(html, Edge + width + 14.0, Edge + 44.0, 0.0, -1.0, 26.0);
        html.Add($"""<text x="{Edge + width + 14.0}" y="{Edge + 12.0}" text-anchor="middle">y</text>""");
        html.Add($"""</svg><figcaption>The bin from above. Arrows: each unit's north.</figcaption></figure>""");
    }
}
