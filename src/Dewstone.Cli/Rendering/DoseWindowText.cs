using System.Text;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Rendering;

/// <summary>The dose window of a limits card as text, with what it means for the needles.</summary>
internal static class DoseWindowText
{
    /// <summary>Adds the window.</summary>
    /// <param name="text">Where to.</param>
    /// <param name="window">The window.</param>
    public static void Add(StringBuilder text, DoseWindow window)
    {
        text.Append("\nDose of a full voxel, mL (straight layers)\n");
        Line("least", window.ClosingMillilitres, $"water/cement {window.ClosingMillilitres * window.WaterCementPerMillilitre:0.00}, closes the pockets between needles");
        Line("most", window.GreatestMillilitres, $"water/cement {window.GreatestMillilitres * window.WaterCementPerMillilitre:0.00}, {Ceiling(window)}");
        if (window.HalfMillilitres <= 0.0)
        {
            text.Append("  No window: no dose closes the pockets and keeps to the limit. Allow a higher\n  water/cement, use a mix whose water spreads further, or a finer grid.\n");
            return;
        }

        Line("middle", window.MiddleMillilitres, $"the window is {window.HalfMillilitres:0.0} mL either way");
        if (!window.SpreadIsKnown)
        {
            text.Append("  Unknown whether the needles hold it: the printer file gives no\n  needle.repeatability and no needle.drift.\n");
            return;
        }

        Line("needles", window.TwoDeviationsMillilitres(window.Repeatability), $"either way, two deviations: repeat {Percent(window.Repeatability)}, drift {Percent(window.Drift)}");
        if (window.WorstRepeatability != window.Repeatability)
        {
            Line("worst needle", window.TwoDeviationsMillilitres(window.WorstRepeatability), $"either way: repeat {Percent(window.WorstRepeatability)}");
        }

        text.Append(window.IsWideEnough
            ? $"  OK: {(window.Needles == 1 ? "the needle holds" : $"all {window.Needles} needles hold")} the window.\n"
            : $"  TOO NARROW for {window.NeedlesTooLoose} of {window.Needles} needles. {WithoutDrift(window)}\n");

        void Line(string word, double millilitres, string what) => text.Append($"  {word,-12}{millilitres,6:0.0}  {what}\n");
    }

    private static string Ceiling(DoseWindow window) => window.Ceiling switch
    {
        DoseCeiling.Needle => "the most a needle gives",
        DoseCeiling.Pores => "the pores of a dense voxel are full",
        _ => "the limit",
    };

    private static string WithoutDrift(DoseWindow window)
    {
        double alone = (window with { Drift = 0.0 }).TwoDeviationsMillilitres(window.WorstRepeatability);
        return window.Drift > 0.0 && alone <= window.HalfMillilitres
            ? $"Without drift the worst holds {alone:0.0} mL,\n  which fits: check and recalibrate the needles before each job."
            : "Allow a higher water/cement, use\n  a mix whose water spreads further, or better needles.";
    }

    private static string Percent(double share) => $"{100.0 * share:0.#} %";
}
