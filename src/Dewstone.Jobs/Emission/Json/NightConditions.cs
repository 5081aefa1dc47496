using Dewstone.Model.Description;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>Lists what is different tonight from what a design is judged with.</summary>
internal static class NightConditions
{
    /// <summary>The differences, in a fixed order.</summary>
    public static IReadOnlyList<NightCondition> Of(JobDescription description)
    {
        List<NightCondition> found = [];
        JobDescription usual = description with { Tonight = null };
        Tonight tonight = description.Tonight ?? new Tonight();
        if (tonight.MixBatch.Length > 0)
        {
            found.Add(new NightCondition("mix_batch", "", tonight.MixBatch, Value: null, Usual: null));
        }

        AddNumber(found, "loose_density", "kg/m3", tonight.LooseDensity?.KilogramsPerCubicMetre, usual.LooseDensity.KilogramsPerCubicMetre);
        AddNumber(found, "bed_temperature", "degC", tonight.BedTemperature?.Celsius, usual.BedTemperature.Celsius);
        AddNumber(found, "liquid_temperature", "degC", tonight.LiquidTemperature?.Celsius, usual: null);
        AddNumber(found, "curing_temperature", "degC", tonight.CuringTemperature?.Celsius, usual.CuringTemperature.Celsius);
        int faulty = description.Needles?.Needles.Count(needle => needle.Condition != NeedleCondition.Ok) ?? 0;
        AddNumber(found, "needles_not_ok", "1", faulty, usual: 0.0);
        return found;
    }

    private static void AddNumber(List<NightCondition> found, string what, string unit, double? value, double? usual)
    {
        if (value is { } measured && (usual is null || !measured.Equals(usual.Value)))
        {
            found.Add(new NightCondition(what, unit, Text: null, measured, usual));
        }
    }
}
