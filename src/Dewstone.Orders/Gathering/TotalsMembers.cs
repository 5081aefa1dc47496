using System.Text.Json;
using Dewstone.Jobs.Emission.Json;

namespace Dewstone.Orders.Gathering;

/// <summary>Totals as members of the JSON object that is open.</summary>
public static class TotalsMembers
{
    /// <summary>Writes them; figures have six significant digits.</summary>
    /// <param name="json">Where to.</param>
    /// <param name="totals">The totals.</param>
    public static void Write(Utf8JsonWriter json, BinTotals totals)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(totals);
        json.WriteNumber("bins", totals.Bins);
        json.WriteNumber("units", totals.Units);
        json.Figure("mix_spread_kg", totals.SpreadKilograms);
        json.Figure("mix_hardened_kg", totals.HardenedKilograms);
        json.Figure("mix_reusable_kg", totals.ReusableKilograms);
        json.Figure("binder_kg", totals.BinderKilograms);
        json.Figure("water_l", totals.WaterLitres);
        json.Figure("flush_l", totals.FlushLitres);
        json.Figure("co2_kg", totals.CarbonKilograms);
        json.Objects("cost", totals.Cost, cost =>
        {
            json.WriteString("currency", cost.Currency);
            json.Figure("amount", cost.Amount);
        });
        json.Figure("hours", totals.PrinterSeconds / 3600.0);
    }
}
