using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>How the doses were found, and how the water is shared out over layers and needles; of a held job only how they were found.</summary>
internal static class DosesSection
{
    private static readonly int[] BinWidths = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000];

    /// <summary>Writes the part.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        CompiledJob job = subject.Job;
        Compare(html, job.Dosing);
        RegistrationTable.Write(html, job.Registration);
        if (job.Held)
        {
            html.Add($"<p>The job is held: its doses are not given out.</p>");
            return;
        }

        int[] doses = [.. job.Doses.CentiMillilitres.Where(dose => dose > 0)];
        if (doses.Length == 0)
        {
            html.Add($"<p>No needle gives water.</p>");
            return;
        }

        html.Add($"<p>{doses.Length} doses, {ReportFigures.Litres(job.Estimate.WaterCubicMetres)} in all; the least {ReportFigures.Dose(doses.Min())}, the largest {ReportFigures.Dose(doses.Max())}, in steps of {ReportFigures.Dose(job.Description.Printer.Needle.Step.Millilitres * 100.0)} before each needle's own gain and offset.</p>");
        html.Add($"""<div class="charts">""");
        ColumnChart.Lying(
            html, "Water by layer, L; the lowest layer at the foot",
            [.. job.Estimate.WaterByLayerCubicMetres.Select((volume, k) => new NamedAmount($"{k + 1}", volume * 1000.0))], "layer");
        int width = BinWidths.First(width => doses.Max() / (100.0 * width) < 24.0 || width == BinWidths[^1]);
        int[] counts = new int[doses.Max() / (100 * width) + 1];
        foreach (int dose in doses)
        {
            counts[dose / (100 * width)]++;
        }

        ColumnChart.Standing(
            html, $"Doses by size, number in each {width} mL", [.. counts.Select((count, bin) => new NamedAmount($"{bin * width}", count))], "mL");
        html.Add($"</div>");
    }

    private static void Compare(HtmlWriter html, DosingSummary dosing)
    {
        string like = dosing.LikeFingerprint is { } job ? $" They started from the doses of job {job}." : "";
        if (dosing.Resumed)
        {
            html.Add($"<p>The doses are those of job {dosing.LikeFingerprint}{(dosing.Solves == 0 ? "" : $", judged again after the stop in {dosing.Solves} computations of the wetting")}; those given before the stop are fixed.</p>");
            Figures(html, dosing, "The job in one go beside this one", "#in one go", "#with the stop");
            return;
        }

        html.Add($"<p>{(dosing.Corrected ? $"The doses were corrected against the wetting they cause, in {dosing.Solves} computations of it.{like}" : "The doses are plain: each voxel's wanted share of one full dose.")} A full voxel of plain doses takes {ReportFigures.Dose(dosing.PlainMillilitres * 100.0)}.</p>");
        Figures(html, dosing, "Plain doses beside those of this job", "#plain", dosing.Corrected ? "#corrected" : "#this job");
    }

    private static void Figures(HtmlWriter html, DosingSummary dosing, string caption, string one, string other)
    {
        DoseFigures plain = dosing.Plain, chosen = dosing.Chosen;
        ReportTable.Write(html, caption, ["figure", one, other],
        [
            ["water", ReportFigures.Litres(plain.WaterCubicMetres), ReportFigures.Litres(chosen.WaterCubicMetres)],
            ["hardened volume", ReportFigures.Litres(plain.HardenedCubicMetres), ReportFigures.Litres(chosen.HardenedCubicMetres)],
            ["hardened above wanted volume", ReportFigures.SignedShare(plain.VolumeError), ReportFigures.SignedShare(chosen.VolumeError)],
            ["shape match (intersection over union)", ReportFigures.Ratio(plain.ShapeMatch), ReportFigures.Ratio(chosen.ShapeMatch)],
            ["mean water/cement", ReportFigures.Ratio(plain.MeanWaterCement), ReportFigures.Ratio(chosen.MeanWaterCement)],
            [
                $"misfit at {dosing.MisfitCells} cells a voxel side",
                ReportFigures.Litres(dosing.PlainMisfitLitres / 1000.0), ReportFigures.Litres(dosing.MisfitLitres / 1000.0),
            ],
        ]);
    }
}
