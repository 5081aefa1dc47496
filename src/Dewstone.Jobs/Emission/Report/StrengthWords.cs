using Dewstone.Model.Description;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>Figures and words of strength and lifting as the report writes them.</summary>
internal static class StrengthWords
{
    /// <summary>A strength or stress.</summary>
    /// <param name="pascals">Pa.</param>
    /// <returns>Text, MPa.</returns>
    public static string Stress(double pascals) => $"{ReportFigures.Amount(pascals * 1e-6)} MPa";

    /// <summary>A force.</summary>
    /// <param name="newtons">N.</param>
    /// <returns>Text, kN.</returns>
    public static string Force(double newtons) => $"{ReportFigures.Amount(newtons * 1e-3)} kN";

    /// <summary>An age, rounded up to hours or, from three days on, to half days: what is not to be done before it stays so.</summary>
    /// <param name="days">d; null when it never comes.</param>
    /// <returns>Text.</returns>
    public static string Age(double? days) => days switch
    {
        null => "never",
        < 3.0 => $"{Math.Ceiling(Math.Round(days.Value * 24.0, 6)):0} h",
        _ => $"{Math.Ceiling(Math.Round(days.Value * 2.0, 6)) / 2.0:0.#} d",
    };

    /// <summary>A rule.</summary>
    /// <param name="rule">The rule.</param>
    /// <returns>Words.</returns>
    public static string Rule(StrengthRule rule) => rule switch
    {
        StrengthRule.Feret => "Feret's rule: share of cement in cement, water and air",
        StrengthRule.GelSpace => "gel/space ratio without air, of a bed said to be compacted",
        StrengthRule.HandbookCurve => "handbook curve of water/cement, of a bed said to be compacted",
        StrengthRule.Measured => "cubes cut from the same bed",
        _ => "gel/space ratio with the air left in the bed",
    };
}
