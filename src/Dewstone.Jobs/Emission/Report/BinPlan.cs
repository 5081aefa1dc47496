using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>A small plan of the bin seen from above, with the unit's outer box in it and the distances to the walls.</summary>
internal static class BinPlan
{
    private const double Side = 210.0, Left = 44.0, Top = 26.0, Foot = 48.0, Right = 44.0;

    /// <summary>Draws the plan.</summary>
    /// <param name="html">The page.</param>
    /// <param name="job">The job.</param>
    public static void Write(HtmlWriter html, CompiledJob job)
    {
        if (job.Description.Bin.Count > 0)
        {
            BinUnitsPlan.Write(html, job);
            return;
        }

        Lattice lattice = job.Lattice;
        UnitPlacement placement = job.Placement;
        Point3 corner = placement.Corner;
        Size3 box = placement.TurnedBox;
        double scale = Side / Math.Max(lattice.BinXMetres, lattice.BinYMetres);
        double binWidth = lattice.BinXMetres * scale, binHeight = lattice.BinYMetres * scale, floor = Top + binHeight;
        double x0 = Left + corner.X * scale, y1 = floor - corner.Y * scale, width = box.X * scale, height = box.Y * scale;
        double y0 = y1 - height, middleX = x0 + width / 2.0, middleY = y0 + height / 2.0;
        string label = $"Plan of the bin, {ReportFigures.Millimetres(lattice.BinXMetres)} by {ReportFigures.Millimetres(lattice.BinYMetres)} mm; the unit's box has its corner at {ReportFigures.Place(corner)}.";
        html.Add($"""<figure class="plan"><svg viewBox="0 0 {Left + binWidth + Right} {Top + binHeight + Foot}" role="img" aria-label="{label}">""");
        html.Add($"""<rect class="bin" x="{Left}" y="{Top}" width="{binWidth}" height="{binHeight}" />""");
        html.Add($"""<rect class="body" x="{x0}" y="{y0}" width="{width}" height="{height}" />""");
        html.Add($"""<text x="{Left + binWidth / 2.0}" y="{Top - 8.0}" text-anchor="middle">bin {ReportFigures.Millimetres(lattice.BinXMetres)} × {ReportFigures.Length(lattice.BinYMetres)}</text>""");
        html.Add($"""<text x="{middleX}" y="{middleY + 22.0}" text-anchor="middle">{ReportFigures.Millimetres(box.X)} × {ReportFigures.Length(box.Y)}</text>""");
        Point3 north = placement.ToPrinter(new Point3(0, 1, 0)) - placement.ToPrinter(new Point3(0, 0, 0));
        Arrow(html, middleX - 16.0 * north.X, middleY - 12.0 + 16.0 * north.Y, north.X, -north.Y, 32.0);
        html.Add($"""<text x="{middleX}" y="{middleY + 36.0}" text-anchor="middle">arrow: unit's north</text>""");
        html.Add($"""<path class="rule" d="M{Left} {y1 + 5.0}V{floor + 16.0}M{x0} {y1 + 3.0}V{floor + 16.0}M{Left} {floor + 12.0}H{x0}" />""");
        html.Add($"""<text x="{(Left + x0) / 2.0}" y="{floor + 26.0}" text-anchor="middle">{ReportFigures.Millimetres(corner.X)}</text>""");
        html.Add($"""<path class="rule" d="M{Left - 16.0} {floor}H{Left}M{Left - 16.0} {y1}H{x0 - 3.0}M{Left - 12.0} {floor}V{y1}" />""");
        html.Add($"""<text x="{Left - 16.0}" y="{(floor + y1) / 2.0 + 4.0}" text-anchor="end">{ReportFigures.Millimetres(corner.Y)}</text>""");
        Arrow(html, Left + binWidth - 40.0, floor + 14.0, 1.0, 0.0, 26.0);
        html.Add($"""<text x="{Left + binWidth - 8.0}" y="{floor + 18.0}">x</text>""");
        Arrow(html, Left + binWidth + 14.0, Top + 44.0, 0.0, -1.0, 26.0);
        html.Add($"""<text x="{Left + binWidth + 14.0}" y="{Top + 12.0}" text-anchor="middle">y</text>""");
        html.Add($"""</svg><figcaption>The bin from above, mm from its inner corner.</figcaption></figure>""");
    }

    internal static void Arrow(HtmlWriter html, double x, double y, double dx, double dy, double length)
    {
        double tipX = x + length * dx, tipY = y + length * dy, neckX = tipX - 8.0 * dx, neckY = tipY - 8.0 * dy;
        html.Add($"""<path class="arrow" d="M{x} {y}L{neckX} {neckY}" /><path class="head" d="M{tipX} {tipY}L{neckX - 3.0 * dy} {neckY + 3.0 * dx}L{neckX + 3.0 * dy} {neckY - 3.0 * dx}Z" />""");
    }
}
