using System.Globalization;
using Dewstone.Compute.Dosing;
using Dewstone.Compute.Sequencing;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Orders.Listing;
using Dewstone.Reading;

namespace Dewstone.Orders.Plans;

/// <summary>A bin from above, to scale: its needle positions, the outer box of each unit with its mark and the way its north (y) side looks, and the positions it takes.</summary>
internal static class BinDrawing
{
    private const double Left = 60.0, Top = 96.0, Right = 40.0, Bottom = 56.0, MostPixels = 640.0, Needle = 1.6;

    /// <summary>Draws a bin.</summary>
    /// <param name="reading">The order.</param>
    /// <param name="result">Its plan.</param>
    /// <param name="bin">The bin.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(OrderReading reading, PlanningResult result, PlannedBin bin)
    {
        Dictionary<string, int> lineOf = OrderListing.Of(reading.Order!).ToDictionary(unit => unit.Mark, unit => unit.Line, StringComparer.Ordinal);
        LineOnPrinter Line(PlannedUnit unit) => result.Lines.First(l => l.Footing.Line == lineOf[unit.Mark] && l.Footing.Printer == bin.Printer);
        Printer printer = Line(bin.Units[0]).Job.Printer;
        double scale = MostPixels / Math.Max(printer.Bin.SizeX.Metres, printer.Bin.SizeY.Metres);
        double width = scale * printer.Bin.SizeX.Metres, depth = scale * printer.Bin.SizeY.Metres;
        double sheetWidth = Left + width + Right, sheetHeight = Top + depth + Bottom;
        BinContent content = result.Contents[result.Plan!.Bins.Index().First(item => item.Item.Name == bin.Name).Index];
        HtmlWriter svg = new();
        svg.Add($"""<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {sheetWidth} {sheetHeight}" width="{sheetWidth}" height="{sheetHeight}" role="img" aria-labelledby="title"><title id="title">{bin.Name} from above</title>""");
        svg.Raw($"<style>{PlanStyle.Text}</style>\n");
        svg.Add($"""<rect class="paper" width="{sheetWidth}" height="{sheetHeight}"/><text class="name" x="{Left}" y="32">{bin.Name}</text>""");
        svg.Add($"""<text x="{Left}" y="54">{printer.Name}, {Time(bin.Start)} to {(bin.PrintEnd.Date == bin.Start.Date ? bin.PrintEnd.ToString("HH:mm", CultureInfo.InvariantCulture) : Time(bin.PrintEnd))}; dig out {Time(bin.DigStart)}</text>""");
        svg.Add($"""<text class="quiet" x="{Left}" y="74">{(bin.Units.Count == 1 ? "1 unit" : $"{bin.Units.Count} units, together")} {content.UnitKilograms.ToString("0", CultureInfo.InvariantCulture)} kg, {content.Layers} layers{(bin.ShiftedLayers ? ", every other one shifted" : "")}, {content.SpreadKilograms.ToString("0", CultureInfo.InvariantCulture)} kg of mix spread</text>""");
        svg.Add($"""<rect class="bin" x="{Left}" y="{Top}" width="{width}" height="{depth}"/>""");
        foreach (PlannedUnit unit in bin.Units)
        {
            Unit(svg, Line(unit), unit, scale, depth);
        }

        Needles(svg, printer, scale, depth);
        foreach (PlannedUnit unit in bin.Units)
        {
            Lettering(svg, Line(unit), unit, scale, depth);
        }

        double below = Top + depth;
        svg.Add($"""<text class="quiet" x="{Left}" y="{below + 20.0}">inner corner: x to the right, y upwards on this sheet; dots are needle positions of straight layers</text>""");
        svg.Add($"""<text class="quiet" x="{Left}" y="{below + 38.0}">the arrow of a unit points where its y (north) side looks; dashed: the positions it takes</text>""");
        svg.Raw("</svg>\n");
        return new EmittedFile($"layouts/{bin.Name}.svg", svg.ToBytes());
    }

    private static void Unit(HtmlWriter svg, LineOnPrinter line, PlannedUnit unit, double scale, double depth)
    {
        UnitMove move = new(line.Footprint, unit.QuarterTurns, unit.Column, unit.Row);
        UnitPlacement box = move.Placement(line.Job.Printer, line.Placement);
        double pitch = line.Job.Printer.Grid.Pitch.Metres;
        double footX = line.Job.Printer.Grid.OriginX.Metres + (unit.Column - 0.5) * pitch, footY = line.Job.Printer.Grid.OriginY.Metres + (unit.Row - 0.5) * pitch;
        svg.Add($"""<rect class="unit" x="{Left + scale * box.Corner.X}" y="{Top + depth - scale * (box.Corner.Y + box.TurnedBox.Y)}" width="{scale * box.TurnedBox.X}" height="{scale * box.TurnedBox.Y}"/>""");
        svg.Add($"""<rect class="foot" x="{Left + scale * footX}" y="{Top + depth - scale * (footY + move.To.Rows * pitch)}" width="{scale * move.To.Columns * pitch}" height="{scale * move.To.Rows * pitch}"/>""");
    }

    private static void Needles(HtmlWriter svg, Printer printer, double scale, double depth)
    {
        Raster raster = Raster.Over(printer);
        svg.Raw("<g class=\"needle\">");
        for (int row = raster.FirstRow; row < raster.Rows; row++)
        {
            for (int column = raster.FirstColumn; column < raster.Columns; column++)
            {
                double x = (raster.OriginXMicrometres + column * raster.PitchMicrometres) / 1e6, y = (raster.OriginYMicrometres + row * raster.PitchMicrometres) / 1e6;
                svg.Add($"""<circle cx="{Left + scale * x}" cy="{Top + depth - scale * y}" r="{Needle}"/>""");
            }
        }

        svg.Raw("</g>\n");
    }

    private static void Lettering(HtmlWriter svg, LineOnPrinter line, PlannedUnit unit, double scale, double depth)
    {
        UnitPlacement box = new UnitMove(line.Footprint, unit.QuarterTurns, unit.Column, unit.Row).Placement(line.Job.Printer, line.Placement);
        double x = Left + scale * (box.Corner.X + box.TurnedBox.X / 2.0), y = Top + depth - scale * (box.Corner.Y + box.TurnedBox.Y / 2.0);
        string seat = $"column {unit.Column + 1}, row {unit.Row + 1}";
        double half = 0.5 * Math.Max(9.5 * unit.Mark.Length, 5.6 * seat.Length) + 6.0;
        svg.Add($"""<rect class="paper" x="{x - half}" y="{y - 14.0}" width="{2.0 * half}" height="36"/><text class="mark" text-anchor="middle" x="{x}" y="{y + 2.0}">{unit.Mark}</text>""");
        svg.Add($"""<text class="quiet small" text-anchor="middle" x="{x}" y="{y + 16.0}">{seat}</text>""");
        // Counter-clockwise on the sheet is a negative rotation in its own frame.
        double reach = scale * ((box.QuarterTurns & 1) == 0 ? box.TurnedBox.Y : box.TurnedBox.X) / 2.0;
        svg.Add($"""<g transform="translate({x} {y}) rotate({-90 * box.QuarterTurns})"><path class="arrow" d="M0 {-Math.Max(30.0, 0.55 * reach)}V{-reach + 9.0}"/><path class="head" d="M0 {-reach + 3.0}L-5 {-reach + 14.0}L5 {-reach + 14.0}Z"/></g>""");
    }

    private static string Time(DateTime time) => time.ToString("ddd yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
}
