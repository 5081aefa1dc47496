using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>What the job takes and what it costs, and what the unit weighs.</summary>
internal static class MaterialsSection
{
    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        Estimate estimate = subject.Job.Estimate;
        bool bin = subject.Job.Description.Bin.Count > 0;
        html.Add($"""<div class="charts">""");
        ReportTable.Write(html, "Dry mix", ["part", "#mass"],
        [
            ["spread over the whole bin", ReportFigures.Mass(estimate.SpreadKilograms)],
            ["hardens", ReportFigures.Mass(estimate.HardenedDryKilograms)],
            ["can be spread again", ReportFigures.Mass(estimate.ReusableKilograms)],
            ["lost", ReportFigures.Mass(estimate.LostKilograms)],
            [bin ? "binder in the units" : "binder in the unit", ReportFigures.Mass(estimate.BinderKilograms)],
        ]);
        ReportTable.Write(html, bin ? "All units together" : "The unit's mass", ["state", "#mass"],
        [
            ["fresh, with all its water", ReportFigures.Mass(estimate.FreshKilograms)],
            ["on the hook at dig-out", ReportFigures.Mass(estimate.LiftKilograms)],
            ["dried", ReportFigures.Mass(estimate.DryKilograms)],
            ["pores full of sea water", ReportFigures.Mass(estimate.SaturatedKilograms)],
            ["apparent, under water", ReportFigures.Mass(estimate.SubmergedKilograms)],
        ]);
        ReportTable.Write(html, "Water and additives", ["part", "#amount"],
        [
            ["injected", ReportFigures.Litres(estimate.WaterCubicMetres)],
            ["flush", ReportFigures.Litres(estimate.FlushCubicMetres)],
            .. estimate.AdditiveKilograms.Select(additive => (string[])[additive.Name, ReportFigures.Mass(additive.Amount)]),
        ]);
        ReportTable.Write(html, "Time", ["part", "#time"],
        [
            ["setup", ReportFigures.Duration(estimate.SetupSeconds)],
            .. estimate.SecondsByAction.Where(action => action.Amount > 0.0)
                .Select(action => (string[])[ActionWord(action.Name), ReportFigures.Duration(action.Amount)]),
            ["printing, all actions", ReportFigures.Duration(estimate.PrintSeconds)],
        ]);
        ReportTable.Write(html, "Carbon and cost of what is used up", ["figure", "#amount"],
        [
            ["carbon dioxide equivalent", ReportFigures.Mass(estimate.CarbonKilograms)],
            ["cost", $"{estimate.Cost:0.00} {estimate.Currency}"],
            ["recycled share of the mix", ReportFigures.Share(estimate.RecycledShare)],
            .. bin ? [] : (string[][])[["solid saved against the filled outer box", ReportFigures.Share(estimate.SavingAgainstFilledBox)]],
        ]);
        html.Add($"</div><p>Used up is the mix that hardens and the mix that is lost, with all liquid, flushing included. Carbon and cost use the mix file's own factors; labour, energy and the machine are not in them.</p>");
    }

    /// <summary>The yard's word for an action.</summary>
    /// <param name="action">Name in files.</param>
    /// <returns>The word.</returns>
    public static string ActionWord(string action) => action == "spread" ? "spreading" : action;
}
