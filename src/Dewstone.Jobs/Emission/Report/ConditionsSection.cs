using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>What was measured on the night, what was taken instead, and what differs from what the design is judged with.</summary>
internal static class ConditionsSection
{
    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        JobDescription job = subject.Job.Description;
        Tonight tonight = job.Tonight ?? new Tonight();
        IReadOnlyList<NightCondition> differences = NightConditions.Of(job);
        string batch = tonight.MixBatch.Length > 0 ? $" Mix batch {tonight.MixBatch}." : "";
        html.Add($"<p>{(job.Tonight is null ? "Nothing was measured tonight: the usual values are taken." : "As measured tonight.")}{batch} {(differences.Count == 0 ? "Nothing differs from what the design is judged with." : "")}</p>");
        ReportTable.Write(html, "Conditions in force", ["condition", "#in force", "from"],
        [
            ["loose density of the bed", ReportFigures.Density(job.LooseDensity.KilogramsPerCubicMetre), From(tonight.LooseDensity is not null, "mix file")],
            ["bed temperature", ReportFigures.Degrees(job.BedTemperature), From(tonight.BedTemperature is not null, "taken, not measured")],
            ["curing temperature", ReportFigures.Degrees(job.CuringTemperature), From(tonight.CuringTemperature is not null, "taken, not measured")],
            ["liquid temperature", tonight.LiquidTemperature is { } liquid ? ReportFigures.Degrees(liquid) : "not measured", tonight.LiquidTemperature is null ? "not in the model" : "measured tonight; not in the model"],
            ["window in which water moves", ReportFigures.Duration(subject.Settings.Wetting.WindowSeconds), $"mix file's {ReportFigures.Duration(job.Mix.Hardening.Window.Seconds)} at {ReportFigures.Degrees(job.Mix.Hardening.At)}, at the bed's temperature"],
        ]);
        if (differences.Count > 0)
        {
            ReportTable.Write(html, "What differs tonight", ["condition", "#tonight", "#usual"], differences.Select(difference => (string[])
            [
                difference.What.Replace('_', ' '),
                difference.Text ?? ReportFigures.Quantity(difference.Value ?? 0.0, Unit(difference)),
                difference.Usual is { } usual ? ReportFigures.Quantity(usual, Unit(difference)) : "–",
            ]));
        }

        NeedleMap.Write(html, subject.Job);
    }

    private static string From(bool measured, string otherwise) => measured ? "measured tonight" : otherwise;

    private static string Unit(NightCondition condition) => condition.Unit switch { "degC" => "°C", "kg/m3" => "kg/m³", string unit => unit };
}
