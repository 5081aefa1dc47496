using System.Text;
using Dewstone.Compute.Calibration;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>A calibrated mix as text of 80 columns.</summary>
internal static class MixFitText
{
    /// <summary>The text.</summary>
    /// <param name="found">The calibration; null when the data could not be used.</param>
    /// <param name="findings">All findings.</param>
    /// <param name="written">The file written; null for none.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <returns>Plain text.</returns>
    public static string Of(MixCalibration? found, IReadOnlyList<Diagnostic> findings, string? written, bool colour, bool quiet)
    {
        StringBuilder text = new(FindingText.Of(findings, colour, quiet));

        if (found?.Mix is null)
        {
            return text.Append("nothing calibrated: mend what stands above\n").ToString();
        }

        text.Append(text.Length > 0 ? "\n" : "").Append("figure               value              95 % interval              spread\n");
        foreach (FittedFigure figure in found.Figures)
        {
            string unit = figure.Unit == "1" ? "" : $" {figure.Unit}";
            string interval = figure.Fitted ? $"{Four(figure.Low)} to {Four(figure.High)}" : "kept, not told by these data";
            text.Append($"{figure.Name,-20} {Four(figure.Value) + unit,-18} {interval,-26} {figure.Spread,6:0.0 %}\n");
        }

        text.Append($"correlations: diffusivity and threshold {found.Correlations[1]:0.00}, diffusivity and density {found.Correlations[2]:0.00},\n");
        text.Append($"  threshold and density {found.Correlations[5]:0.00}\n");
        WettingLaw law = found.Mix.Wetting;
        text.Append($"law: {(law is PowerLaw ? "power" : "exponential")}, exponent {law.Exponent}");
        text.Append(found.Exponents.Count > 1 ? $"; squares by exponent {string.Join(", ", found.Exponents.Select(trial => $"{trial.Exponent}: {trial.Squares:0}"))}\n" : "\n");
        text.Append("\nmeasured                 n   scatter   left out   chance of the misfit\n");
        foreach (KindReport kind in found.Kinds)
        {
            string scatter = $"{kind.Scatter:0.0 %}{(kind.IsUsual ? " usual" : "")}", chance = kind.LackOfFit is { } value ? $"{value:0.000}" : "-";
            text.Append($"{FitWords.Of(kind.Kind),-22} {kind.Count,3}   {scatter,-10}{kind.LeftOutScatter,8:0.0 %}   {chance}\n");
        }

        return (written is null ? text : text.Append($"\nWrote {written}\n")).ToString();
    }

    /// <summary>What stands on top of the new mix file.</summary>
    /// <param name="found">The calibration.</param>
    /// <returns>Lines of comment.</returns>
    public static IReadOnlyList<string> Remarks(MixCalibration found)
    {
        string[] kept = [.. found.Figures.Where(figure => !figure.Fitted).Select(figure => figure.Name)];
        string first = "Fitted by dewstone calibrate mix; spreads are one standard deviation.";
        return kept.Length == 0 ? [first] : [first, $"Not told by the data and kept from the given mix: {string.Join(", ", kept)}."];
    }

    private static string Four(double value) => value is >= 0.01 and < 1e5 ? $"{value:G4}" : $"{value:0.00e+0}";
}
