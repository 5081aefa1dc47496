using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Results;

namespace Dewstone.Orders.Batches;

/// <summary>Figures of a solved unit in the store, to the last bit, so that what is made from the store is what would be made without it.</summary>
internal static class StoredFigures
{
    /// <summary>Writes the members of a solid's figures into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, SolidSummary solid)
    {
        json.Number("target_m3", solid.TargetCubicMetres);
        json.Number("hardened_m3", solid.HardenedCubicMetres);
        json.Number("shape_match", solid.ShapeMatch);
        json.Number("water_in_hardened_m3", solid.WaterInHardenedCubicMetres);
        json.Number("mean_water_cement", solid.MeanWaterCement);
        json.Number("largest_water_cement", solid.LargestWaterCement);
        json.Number("share_in_band", solid.ShareInBand);
    }

    /// <summary>Reads them back.</summary>
    public static SolidSummary ReadSolid(JsonElement item) => new()
    {
        TargetCubicMetres = item.GetProperty("target_m3").GetDouble(),
        HardenedCubicMetres = item.GetProperty("hardened_m3").GetDouble(),
        ShapeMatch = item.GetProperty("shape_match").GetDouble(),
        WaterInHardenedCubicMetres = item.GetProperty("water_in_hardened_m3").GetDouble(),
        MeanWaterCement = item.GetProperty("mean_water_cement").GetDouble(),
        LargestWaterCement = item.GetProperty("largest_water_cement").GetDouble(),
        ShareInBand = Number(item, "share_in_band"),
    };

    /// <summary>Writes the members of an estimate into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, Estimate estimate)
    {
        json.Number("spread_kg", estimate.SpreadKilograms);
        json.Number("hardened_dry_kg", estimate.HardenedDryKilograms);
        json.Number("reusable_kg", estimate.ReusableKilograms);
        json.Number("lost_kg", estimate.LostKilograms);
        json.Number("fresh_kg", estimate.FreshKilograms);
        json.Number("lift_kg", estimate.LiftKilograms);
        json.Number("dry_kg", estimate.DryKilograms);
        json.Number("saturated_kg", estimate.SaturatedKilograms);
        json.Number("submerged_kg", estimate.SubmergedKilograms);
        json.Number("water_m3", estimate.WaterCubicMetres);
        json.Number("flush_m3", estimate.FlushCubicMetres);
        json.Number("binder_kg", estimate.BinderKilograms);
        json.Number("recycled_share", estimate.RecycledShare);
        json.Number("saving_against_filled_box", estimate.SavingAgainstFilledBox);
        json.Number("carbon_kg", estimate.CarbonKilograms);
        json.Number("cost", estimate.Cost);
        json.Number("setup_s", estimate.SetupSeconds);
        json.Number("print_s", estimate.PrintSeconds);
        json.WriteString("currency", estimate.Currency);
        json.Numbers("water_by_layer_m3", [.. estimate.WaterByLayerCubicMetres]);
        Amounts(json, "additive_kg", estimate.AdditiveKilograms);
        Amounts(json, "action_s", estimate.SecondsByAction);
    }

    /// <summary>Reads them back.</summary>
    public static Estimate ReadEstimate(JsonElement item) => new()
    {
        SpreadKilograms = item.GetProperty("spread_kg").GetDouble(),
        HardenedDryKilograms = item.GetProperty("hardened_dry_kg").GetDouble(),
        ReusableKilograms = item.GetProperty("reusable_kg").GetDouble(),
        LostKilograms = item.GetProperty("lost_kg").GetDouble(),
        FreshKilograms = item.GetProperty("fresh_kg").GetDouble(),
        LiftKilograms = item.GetProperty("lift_kg").GetDouble(),
        DryKilograms = item.GetProperty("dry_kg").GetDouble(),
        SaturatedKilograms = item.GetProperty("saturated_kg").GetDouble(),
        SubmergedKilograms = item.GetProperty("submerged_kg").GetDouble(),
        WaterCubicMetres = item.GetProperty("water_m3").GetDouble(),
        FlushCubicMetres = item.GetProperty("flush_m3").GetDouble(),
        BinderKilograms = item.GetProperty("binder_kg").GetDouble(),
        RecycledShare = item.GetProperty("recycled_share").GetDouble(),
        SavingAgainstFilledBox = item.GetProperty("saving_against_filled_box").GetDouble(),
        CarbonKilograms = item.GetProperty("carbon_kg").GetDouble(),
        Cost = item.GetProperty("cost").GetDouble(),
        SetupSeconds = item.GetProperty("setup_s").GetDouble(),
        PrintSeconds = item.GetProperty("print_s").GetDouble(),
        Currency = item.Text("currency"),
        WaterByLayerCubicMetres = [.. item.GetProperty("water_by_layer_m3").EnumerateArray().Select(value => value.GetDouble())],
        AdditiveKilograms = ReadAmounts(item, "additive_kg"),
        SecondsByAction = ReadAmounts(item, "action_s"),
    };

    /// <summary>A number, or null.</summary>
    public static double? Number(JsonElement item, string name) =>
        item.TryGetProperty(name, out JsonElement value) && value.ValueKind == JsonValueKind.Number ? value.GetDouble() : null;

    private static void Amounts(Utf8JsonWriter json, string name, IReadOnlyList<NamedAmount> amounts) => json.Objects(name, amounts, amount =>
    {
        json.WriteString("name", amount.Name);
        json.Number("amount", amount.Amount);
    });

    private static IReadOnlyList<NamedAmount> ReadAmounts(JsonElement item, string name) =>
        [.. item.GetProperty(name).EnumerateArray().Select(amount => new NamedAmount(amount.Text("name"), amount.GetProperty("amount").GetDouble()))];
}
