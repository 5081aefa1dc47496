using Dewstone.Jobs.Emission.Tables;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// Writes <c>doses/layer-NNN.csv</c>: one table for every layer that gets water, one row for every position that gets water, in the order
/// station, row, column. What stands there is what was simulated.
/// </summary>
public static class DoseTableEmitter
{
    /// <summary>Column names, in order.</summary>
    public const string Header = "layer,station,column,row,board,channel,x_mm,y_mm,z_mm,dose_ml,steps";

    /// <summary>Folder of the doses to print.</summary>
    public const string ToPrint = "doses";

    /// <summary>Folder of the doses given before a stop.</summary>
    public const string Delivered = "delivered";

    /// <summary>Path of the table of a layer.</summary>
    /// <param name="layer">Layer, from 1.</param>
    /// <param name="folder">Its folder.</param>
    /// <returns>For instance <c>doses/layer-007.csv</c>.</returns>
    public static string PathOf(int layer, string folder = ToPrint) => $"{folder}/layer-{layer:D3}.csv";

    /// <summary>The tables of a job.</summary>
    /// <param name="doses">What each position gets.</param>
    /// <param name="needles">The needles, for board and channel; null when there is no table of them.</param>
    /// <param name="addressing">Which needle waters which position.</param>
    /// <param name="folder">Folder of the tables.</param>
    /// <param name="isIn">Whether the doses of a layer and a station, both from 1, belong into the tables; null for all.</param>
    /// <returns>The files, lowest layer first.</returns>
    public static IReadOnlyList<EmittedFile> Emit(
        DosePlan doses, NeedleTable? needles, NeedleAddressing addressing, string folder = ToPrint, Func<int, int, bool>? isIn = null)
    {
        ArgumentNullException.ThrowIfNull(doses);
        ArgumentNullException.ThrowIfNull(addressing);
        Dictionary<(int Column, int Row), NeedleState> wiring = [];
        foreach (NeedleState needle in needles?.Needles ?? [])
        {
            wiring[(needle.Column, needle.Row)] = needle;
        }

        List<EmittedFile> files = [];
        for (int k = 0; k < doses.Lattice.Layers; k++)
        {
            int layer = k + 1;
            List<Row> rows = RowsOf(doses, addressing, k);
            rows.RemoveAll(row => isIn?.Invoke(layer, row.Needle.Station) == false);
            if (rows.Count > 0)
            {
                files.Add(new EmittedFile(PathOf(layer, folder), Table(rows, doses, wiring, k)));
            }
        }

        return files;
    }

    private static List<Row> RowsOf(DosePlan doses, NeedleAddressing addressing, int k)
    {
        Lattice lattice = doses.Lattice;
        List<Row> rows = [];
        for (int j = 0; j < lattice.Rows; j++)
        {
            for (int i = 0; i < lattice.Columns; i++)
            {
                int index = lattice.Index(i, j, k);
                if (doses.CentiMillilitres[index] > 0)
                {
                    rows.Add(new Row(addressing(i, j, k), index, lattice.Tip(i, j, k)));
                }
            }
        }

        rows.Sort((a, b) => (a.Needle.Station, a.Needle.Row, a.Needle.Column).CompareTo((b.Needle.Station, b.Needle.Row, b.Needle.Column)));
        return rows;
    }

    private static byte[] Table(List<Row> rows, DosePlan doses, Dictionary<(int Column, int Row), NeedleState> wiring, int k)
    {
        CsvText csv = new(Header);
        foreach (Row row in rows)
        {
            NeedleState? needle = wiring.GetValueOrDefault((row.Needle.Column, row.Needle.Row));
            csv.Whole(k + 1).Whole(row.Needle.Station).Whole(row.Needle.Column).Whole(row.Needle.Row);
            csv.Text(needle?.Board ?? "").Text(needle?.Channel ?? "");
            csv.Millimetres(row.Tip.X).Millimetres(row.Tip.Y).Millimetres(row.Tip.Z);
            csv.Fixed(doses.CentiMillilitres[row.Index], 2).Whole(doses.Steps[row.Index]).EndRow();
        }

        return csv.ToBytes();
    }

    private sealed record Row(NeedleAddress Needle, int Index, Point3 Tip);
}
