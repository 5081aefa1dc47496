using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;

namespace Dewstone.Cli.Rendering;

/// <summary>Says under which conditions of the night a job was computed, and how they differ from the mix's own.</summary>
internal static class NightText
{
    /// <summary>One line's text.</summary>
    /// <param name="job">The description in force.</param>
    /// <returns>Conditions, separated by commas.</returns>
    public static string Of(JobDescription job)
    {
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        string window = $"water moves for {bed.WindowSeconds:0} s";
        if (job.Tonight is not { } tonight)
        {
            return $"not measured: bed taken at {job.BedTemperature.Celsius:0.#} degC, curing at {job.CuringTemperature.Celsius:0.#} degC; {window}";
        }

        List<string> said = [];
        if (tonight.MixBatch.Length > 0)
        {
            said.Add($"mix batch {tonight.MixBatch}");
        }

        said.Add($"bed {job.BedTemperature.Celsius:0.#} degC{Taken(tonight.BedTemperature is null)}");
        if (tonight.LooseDensity is { } loose)
        {
            said.Add($"loose density {loose.KilogramsPerCubicMetre:0} kg/m3 (mix file {job.Mix.LooseDensity.KilogramsPerCubicMetre:0})");
        }

        said.Add($"curing {job.CuringTemperature.Celsius:0.#} degC{Taken(tonight.CuringTemperature is null)}");
        return $"{string.Join(", ", said)}; {window} (mix file {job.Mix.Hardening.Window.Seconds:0} s at {job.Mix.Hardening.At.Celsius:0.#} degC)";
    }

    private static string Taken(bool unmeasured) => unmeasured ? " (taken)" : "";
}
