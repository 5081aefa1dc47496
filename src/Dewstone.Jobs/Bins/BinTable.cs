using System.Globalization;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Tables;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Bins;

/// <summary>Writes <c>units.csv</c>: the units of a bin, where each stands and how it came out.</summary>
internal static class BinTable
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "units.csv";

    /// <summary>Columns; the turn is counter-clockwise seen from above, the corner that of the turned box in the bin, column and row the first of the grid that it touches, from 1.</summary>
    public const string Header = "mark,unit,design,turn_deg,corner_x_mm,corner_y_mm,corner_z_mm,column,row,seeds,lift_kg,dig_out_days,lift_days,overlap,volume_error";

    /// <summary>The table of a bin.</summary>
    /// <param name="bin">The bin.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(BinResult bin)
    {
        CsvText csv = new(Header);
        foreach (BinVerdict unit in bin.Units)
        {
            Point3 corner = unit.Binned.Placement.Corner;
            csv.Text(unit.Binned.Mark).Text(unit.Binned.Unit.Name).Text(unit.Placed.Solved.Design.ToString()).Whole(90 * unit.Binned.Placement.QuarterTurns);
            csv.Millimetres(corner.X).Millimetres(corner.Y).Millimetres(corner.Z).Whole(unit.Placed.Column + 1).Whole(unit.Placed.Row + 1);
            csv.Text(Seeds(unit.Binned.Unit)).Figure(unit.Placed.Solved.Estimate.LiftKilograms);
            Optional(csv, DigOut.Days(bin.Question, unit.Placed.Solved));
            Optional(csv, unit.Placed.Solved.LiftDays);
            csv.Figure(unit.Overlap).Figure(unit.VolumeError).EndRow();
        }

        return new EmittedFile(Path, csv.ToBytes());
    }

    /// <summary>The seeds a unit was drawn with.</summary>
    /// <param name="unit">The unit.</param>
    /// <returns>Feature and seed, joined by semicolons; empty for a unit without any.</returns>
    public static string Seeds(ReefUnit unit)
    {
        IEnumerable<string> relief = unit.Relief is { } bumps ? [$"relief={bumps.Seed.ToString(CultureInfo.InvariantCulture)}"] : [];
        return string.Join(
            ';', relief.Concat(unit.Cavities.OfType<ScatteredCavities>().Select(scatter => $"{scatter.Name}={scatter.Seed.ToString(CultureInfo.InvariantCulture)}")));
    }

    private static void Optional(CsvText csv, double? value) => _ = value is { } figure ? csv.Figure(figure) : csv.Empty();
}
