using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>How strong a unit is and how it hangs, in words.</summary>
internal static class StrengthText
{
    /// <summary>Strength and when it may be lifted.</summary>
    /// <param name="strength">The report.</param>
    /// <returns>One line.</returns>
    public static string Strength(StrengthReport strength)
    {
        string lift = strength.LiftDays is { } days ? $"not lifted before {Days(days)}" : "never strong enough to lift";
        string dig = strength.DigOutDays is { } first ? $", not dug out before {Days(first)}" : "";
        return $"{strength.MeanPascals * 1e-6:0.0} MPa mean at 28 days of 20 degC, 5 % below {strength.Percentiles.P5 * 1e-6:0.0}; cured at {strength.CuringCelsius:0.#} degC {lift}{dig} (predicted; a licensed engineer decides)";
    }

    /// <summary>How it hangs.</summary>
    /// <param name="strength">The report.</param>
    /// <returns>One line.</returns>
    public static string Lifting(StrengthReport strength)
    {
        LiftingReport lifting = strength.Lifting;
        string cell = $"load cell {lifting.LoadCellKilograms.Least:0} to {lifting.LoadCellKilograms.Most:0} kg";
        TensionResult? worst = strength.Tension.MinBy(held => held.Factor);
        string crack = worst is null ? "" : $"; least factor against cracking {worst.Factor:0.#}";
        return lifting.Hang is { } hang
            ? $"{cell}; {hang.LegNewtons / 1e3:0.0} kN a leg, hardware {hang.HardwareNewtons / 1e3:0.0} kN, tilt {hang.TiltDegrees:0.0} deg{crack}"
            : $"{cell}; the unit does not say how{crack}";
    }

    // Rounded up: what is not to be done before it stays so.
    private static string Days(double days) => days < 3.0 ? $"{Math.Ceiling(days * 24.0):0} h" : $"{Math.Ceiling(days * 2.0) / 2.0:0.#} d";
}
