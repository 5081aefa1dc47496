using System.Text;
using Dewstone.Model.Description;

namespace Dewstone.Reading;

/// <summary>Writes a mix file: what <see cref="DescriptionReader.ReadMix"/> reads.</summary>
public static class MixWriter
{
    /// <summary>Writes a mix.</summary>
    /// <param name="mix">The mix.</param>
    /// <param name="remarks">Lines put on top as comments.</param>
    /// <returns>YAML with line feeds; shortest numbers that mean the same.</returns>
    public static string Write(DryMix mix, IReadOnlyList<string> remarks)
    {
        ArgumentNullException.ThrowIfNull(mix);
        StringBuilder text = new();
        foreach (string remark in remarks)
        {
            text.Append($"# {remark}\n");
        }

        text.Append($"kind: mix\nversion: 1\nname: {Quoted(mix.Name)}\nfrom: {Quoted(Origin(mix.Origin))}\ncurrency: {mix.Currency}\nsolids:\n");
        foreach (Constituent solid in mix.Solids)
        {
            text.Append($"  - {{name: {Quoted(solid.Name)}, share: {Percent(solid.Share)}, density: {Plain(solid.GrainDensity.KilogramsPerCubicMetre)} kg/m3, ")
                .Append($"binder: {(solid.IsBinder ? "true" : "false")}, recycled: {Percent(solid.RecycledShare)}, co2: {Plain(solid.CarbonPerKilogram)} kg/kg, price: {Plain(solid.PricePerKilogram)} /kg}}\n");
        }

        text.Append($"loose_density: {Plain(mix.LooseDensity.KilogramsPerCubicMetre)} kg/m3\n");
        text.Append($"liquid: {{density: {Plain(mix.Liquid.Density.KilogramsPerCubicMetre)} kg/m3, price: {Plain(mix.Liquid.PricePerLitre)} /L");
        if (mix.Liquid.Additives.Count > 0)
        {
            text.Append(", additives: [").AppendJoin(", ", mix.Liquid.Additives.Select(one => $"{{name: {Quoted(one.Name)}, per_litre: {Plain(one.GramsPerLitre)} g}}")).Append(']');
        }

        WettingLaw law = mix.Wetting;
        text.Append($"}}\nwetting: {{law: {(law is PowerLaw ? "power" : "exponential")}, diffusivity: {Plain(law.AtSaturation.SquareMetresPerSecond)} m2/s, exponent: {law.Exponent}, residual: {Plain(law.Residual)}}}\n");
        Hardening hardening = mix.Hardening;
        text.Append($"hardening: {{water_cement: {Plain(hardening.WaterCement)}, window: {Plain(hardening.Window.Seconds)} s, at: {Plain(hardening.At.Celsius)} degC, activation: {Plain(hardening.ActivationKelvin)} K}}\n");
        if (mix.Strength is { } strength)
        {
            text.Append($"strength: {{{Strength(strength)}, class: {strength.CementClass}}}\n");
        }

        text.Append(mix.ReuseLimit is { } limit ? $"reuse_limit: {limit}\n" : "");
        return (mix.Uncertainty is { } spread ? text.Append($"uncertainty: {{{Uncertainty(spread)}}}\n") : text).ToString();
    }

    private static string Origin(MixOrigin origin) => origin.Kind switch
    {
        MixOriginKind.Calibration => $"calibration {origin.Reference}",
        MixOriginKind.Handbook => $"handbook {origin.Reference}",
        _ => "assumed",
    };

    private static string Strength(StrengthLaw strength)
    {
        string rule = strength.Rule switch
        {
            StrengthRule.GelSpaceWithAir => "law: gel_space_with_air",
            StrengthRule.Feret => "law: feret",
            StrengthRule.GelSpace => "law: gel_space",
            StrengthRule.HandbookCurve => "law: handbook_curve",
            _ => $"measured: [{string.Join(", ", strength.Measured.Select(cube => $"[{Plain(cube.Age.Seconds)} s, {Plain(cube.Curing.Celsius)} degC, {Plain(cube.Strength.Pascals)} Pa]"))}]",
        };
        return $"{rule}, compacted: {(strength.Compacted ? "true" : "false")}";
    }

    private static string Uncertainty(MixUncertainty spread)
    {
        string shares = $"diffusivity: {Percent(spread.Diffusivity)}, threshold: {Percent(spread.Threshold)}, loose_density: {Percent(spread.LooseDensity)}";
        return spread.Correlation is { } together
            ? $"{shares}, correlation: {{diffusivity_threshold: {Plain(together.DiffusivityThreshold)}, diffusivity_loose_density: {Plain(together.DiffusivityDensity)}, threshold_loose_density: {Plain(together.ThresholdDensity)}}}"
            : shares;
    }

    // In decimal, where a share such as 0.07 has no tail.
    private static string Percent(double share) => $"{Plain((double)((decimal)share * 100m))} %";

    private static string Plain(double value) => value.ToString("R").Replace('E', 'e');

    private static string Quoted(string text) => $"\"{text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal)}\"";
}
