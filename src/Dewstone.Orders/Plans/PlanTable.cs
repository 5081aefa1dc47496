using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Tables;
using Dewstone.Orders.Listing;
using Dewstone.Reading;

namespace Dewstone.Orders.Plans;

/// <summary>The plan as a table, a row a unit: in which bin it stands, and when that is printed and dug out.</summary>
internal static class PlanTable
{
    private const string Header = "bin,printer,start,print_end,dig_not_before,dig_start,dig_end,mark,unit,turn_deg,column,row,columns,rows";

    /// <summary>Makes the table.</summary>
    /// <param name="reading">The order.</param>
    /// <param name="result">Its plan.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(OrderReading reading, PlanningResult result)
    {
        Dictionary<string, OrderedUnit> units = OrderListing.Of(reading.Order!).ToDictionary(unit => unit.Mark, StringComparer.Ordinal);
        CsvText table = new(Header);
        foreach (PlannedBin bin in result.Plan!.Bins)
        {
            foreach (PlannedUnit unit in bin.Units)
            {
                LineOnPrinter line = result.Lines.First(l => l.Footing.Line == units[unit.Mark].Line && l.Footing.Printer == bin.Printer);
                bool turned = (unit.QuarterTurns & 1) != 0;
                table.Text(bin.Name).Text(line.Job.Printer.Name).Text(PlanJson.Text(bin.Start)).Text(PlanJson.Text(bin.PrintEnd)).Text(PlanJson.Text(bin.DigNotBefore))
                    .Text(PlanJson.Text(bin.DigStart)).Text(PlanJson.Text(bin.DigEnd)).Text(unit.Mark).Text(line.Job.Unit.Name).Whole(90 * unit.QuarterTurns)
                    .Whole(unit.Column + 1).Whole(unit.Row + 1)
                    .Whole(turned ? line.Footing.Rows : line.Footing.Columns).Whole(turned ? line.Footing.Columns : line.Footing.Rows).EndRow();
            }
        }

        return new EmittedFile("plan.csv", table.ToBytes());
    }
}
