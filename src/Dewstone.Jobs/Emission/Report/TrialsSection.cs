namespace Dewstone.Jobs.Emission.Report;

/// <summary>How often each requirement is met when what is uncertain is not as assumed, and where the solid is in doubt.</summary>
internal static class TrialsSection
{
    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        if (subject.Job.Trials is not { } trials)
        {
            html.Add($"<p>No trials were made. <code>--trials 35</code> or more shows how often each requirement is met when doses, mix and bed are not quite as assumed.</p>");
            return;
        }

        html.Add($"<p>{trials.Trials} trials on {trials.Grid.CellsPerPitch} cells a voxel, seed {trials.Seed}: {ReportFigures.Litres(trials.DoubtfulCubicMetres)} harden in some of them and not in others.</p>");
        ReportTable.Write(
            html, "Trials that meet each requirement", ["requirement", "#asked", "#met", "#share, 95 % sure", "#median", "#90 % of the trials", "follows most"],
            trials.Requirements.Select(requirement => (string[])
            [
                requirement.Nominal.Feature.Length > 0 ? $"{requirement.Nominal.Quantity} ({requirement.Nominal.Feature})" : requirement.Nominal.Quantity,
                $"{(requirement.Nominal.Op == "<=" ? "at most" : "at least")} {ReportFigures.Quantity(requirement.Nominal.Limit, requirement.Nominal.Unit)}",
                $"{requirement.Met} of {trials.Trials}",
                $"{100.0 * requirement.ShareLow:0} to {100.0 * requirement.ShareHigh:0} %",
                ReportFigures.Quantity(requirement.Median, requirement.Nominal.Unit),
                $"{ReportFigures.Quantity(requirement.Percentile5, requirement.Nominal.Unit)} to {ReportFigures.Quantity(requirement.Percentile95, requirement.Nominal.Unit)}",
                requirement.Driver is { } driver ? $"{driver.Input} ({ReportFigures.Ratio(driver.RankCorrelation)})" : "nothing alone",
            ]));
        ReportTable.Write(html, "What was varied", ["figure", "#one standard deviation", "from"], trials.Inputs.Select(input => (string[])
            [input.Name, input.Unit == "K" ? $"{input.Spread:0.#} K" : ReportFigures.Share(input.Spread), input.Basis]));
        html.Raw("<figure><img class=\"doubt\" alt=\"Plans of the most doubtful layers\" src=\"data:image/png;base64,");
        html.Base64(subject.DoubtPicture.Span);
        html.Raw("\" />");
        html.Add($"<figcaption>The layers in which the trials differ most. Shares by Wilson's interval (1927); in brackets Spearman's rank correlation of margin and figure; the trials are a Latin hypercube of the spreads above.</figcaption></figure>");
    }
}
