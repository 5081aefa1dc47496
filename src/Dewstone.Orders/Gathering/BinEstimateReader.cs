using System.Text.Json;

namespace Dewstone.Orders.Gathering;

/// <summary>Reads <c>estimate.json</c> of a bin's job.</summary>
internal static class BinEstimateReader
{
    /// <summary>Reads it.</summary>
    /// <param name="bytes">The file.</param>
    /// <param name="units">Units in the bin.</param>
    /// <returns>Its figures; null when it cannot be read.</returns>
    public static BinTotals? Read(ReadOnlyMemory<byte> bytes, int units)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(bytes);
            JsonElement root = document.RootElement, mix = root.GetProperty("mix_kg"), water = root.GetProperty("water_l"), cost = root.GetProperty("cost"), time = root.GetProperty("time_s");
            return new BinTotals
            {
                Bins = 1,
                Units = units,
                SpreadKilograms = mix.GetProperty("spread").GetDouble(),
                HardenedKilograms = mix.GetProperty("hardened").GetDouble(),
                ReusableKilograms = mix.GetProperty("reusable").GetDouble(),
                BinderKilograms = mix.GetProperty("binder").GetDouble(),
                WaterLitres = water.GetProperty("injected").GetDouble(),
                FlushLitres = water.GetProperty("flush").GetDouble(),
                CarbonKilograms = root.GetProperty("co2_kg").GetDouble(),
                Cost = [(cost.GetProperty("currency").GetString() ?? "", cost.GetProperty("amount").GetDouble())],
                PrinterSeconds = time.GetProperty("setup").GetDouble() + time.GetProperty("printing").GetDouble(),
            };
        }
        catch (Exception damage) when (damage is JsonException or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            return null;
        }
    }
}
