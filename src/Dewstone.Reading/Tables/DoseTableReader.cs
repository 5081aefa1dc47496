using Dewstone.Model.Lattices;
using Dewstone.Model.Results;
using Dewstone.Reading.Quantities;
using nietras.SeparatedValues;

namespace Dewstone.Reading.Tables;

/// <summary>Reads the dose tables of a job folder: one row for every position that gets water. Columns are found by their names.</summary>
public static class DoseTableReader
{
    private const double PlaceMetres = 1e-4;

    /// <summary>Reads one table into a plan.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="plan">Takes steps and volumes; the positions must lie on its lattice.</param>
    /// <exception cref="InvalidDataException">A row is no row of a dose table or names a position that is not on the lattice, with the line.</exception>
    public static void Read(string text, DosePlan plan)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(plan);
        string[]? names = null;
        using SepReader reader =
            Sep.New(',').Reader(o => o with { HasHeader = false, DisableColCountCheck = true, DisableQuotesParsing = true }).FromText(text);
        foreach (SepReader.Row row in reader)
        {
            if (names is null)
            {
                names = row.Span.ToString().Trim().Split(',');
                continue;
            }

            Row cells = new(row, names);
            int index = Position(plan.Lattice, cells);
            if (plan.CentiMillilitres[index] > 0)
            {
                throw cells.Fault("waters a position for the second time");
            }

            plan.Steps[index] = cells.Whole("steps");
            plan.CentiMillilitres[index] = (int)Math.Round(cells.Number("dose_ml") * 100.0);
            if (plan.Steps[index] < 0 || plan.CentiMillilitres[index] < 0)
            {
                throw cells.Fault("takes water away");
            }
        }
    }

    private static int Position(Lattice lattice, Row row)
    {
        int k = row.Whole("layer") - 1;
        if (k < 0 || k >= lattice.Layers)
        {
            throw row.Fault("names a layer the job does not have");
        }

        double x = row.Number("x_mm") / 1000.0, y = row.Number("y_mm") / 1000.0;
        var first = lattice.Tip(0, 0, k);
        int i = (int)Math.Round((x - first.X) / lattice.PitchMetres), j = (int)Math.Round((y - first.Y) / lattice.PitchMetres);
        if (i < 0 || j < 0 || i >= lattice.Columns || j >= lattice.Rows)
        {
            throw row.Fault("lies outside the job's grid");
        }

        var tip = lattice.Tip(i, j, k);
        return Math.Abs(tip.X - x) < PlaceMetres && Math.Abs(tip.Y - y) < PlaceMetres ? lattice.Index(i, j, k) : throw row.Fault("lies between the positions of the grid");
    }

    private readonly ref struct Row(SepReader.Row row, string[] names)
    {
        private readonly SepReader.Row row = row;

        public double Number(string name)
        {
            int cell = Array.IndexOf(names, name);
            return cell >= 0 && cell < row.ColCount && NumberText.Split(row[cell].ToString(), out double value, out string rest) is null && rest.Length == 0
                ? value : throw Fault($"has no {name} that is a number");
        }

        public int Whole(string name) =>
            Number(name) is var value && value == Math.Floor(value) && Math.Abs(value) < int.MaxValue ? (int)value : throw Fault($"has a {name} that is no whole number");

        public InvalidDataException Fault(string what) => new($"line {row.LineNumberFrom} {what}");
    }
}
