using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Tables;

namespace Dewstone.Orders.Gathering;

/// <summary>Writes <c>nights.csv</c>: what each night takes, from the jobs as compiled.</summary>
public static class NightsTable
{
    /// <summary>Path in the order's folder.</summary>
    public const string Path = "nights.csv";

    /// <summary>The table.</summary>
    /// <param name="nights">The nights.</param>
    /// <returns>The file; the last row is the order's.</returns>
    public static EmittedFile Emit(IReadOnlyList<PrintNight> nights)
    {
        ArgumentNullException.ThrowIfNull(nights);
        CsvText table = new("night,bins,units,mix_spread_kg,mix_hardened_kg,mix_reusable_kg,binder_kg,water_l,flush_l,co2_kg,cost,currency,hours");
        foreach (PrintNight night in nights)
        {
            Row(table, night.Day.ToString("yyyy-MM-dd"), night.Totals);
        }

        Row(table, "order", BinTotals.Sum([.. nights.Select(night => night.Totals)]));
        return new EmittedFile(Path, table.ToBytes());
    }

    private static void Row(CsvText table, string night, BinTotals totals) => table
        .Text(night).Whole(totals.Bins).Whole(totals.Units)
        .Figure(totals.SpreadKilograms).Figure(totals.HardenedKilograms).Figure(totals.ReusableKilograms).Figure(totals.BinderKilograms)
        .Figure(totals.WaterLitres).Figure(totals.FlushLitres).Figure(totals.CarbonKilograms)
        .Text(string.Join(" + ", totals.Cost.Select(cost => cost.Amount.ToString("0.00")))).Text(string.Join(" + ", totals.Cost.Select(cost => cost.Currency)))
        .Figure(totals.PrinterSeconds / 3600.0)
        .EndRow();
}
