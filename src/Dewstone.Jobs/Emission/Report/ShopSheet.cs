using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The sheet for the shop, one page of A4: what is printed tonight, with what, and what to take care of; or, of a held job, why it is not.</summary>
internal static class ShopSheet
{
    /// <summary>Writes the sheet.</summary>
    /// <param name="html">The page.</param>
    /// <param name="subject">The job.</param>
    public static void Write(HtmlWriter html, ReportSubject subject)
    {
        CompiledJob job = subject.Job;
        html.Add($"""<section id="sheet"><header><div><p class="kind">{(job.Description.Bin.Count > 0 ? job.Held ? "Held bin" : "Tonight's bin" : job.Held ? "Held job" : "Tonight's job")}</p><h1>{job.Description.Unit.Name}</h1></div>""");
        html.Add($"""<p class="state">{(job.Held ? "HELD" : "Ready to print")}</p></header>""");
        html.Add($"""<div class="beside"><div>""");
        ReportTable.Pairs(html, ("job fingerprint", subject.Data.Job.Grouped()), ("design fingerprint", subject.Data.Design.Grouped()));
        if (job.Held)
        {
            Held(html, subject);
        }
        else
        {
            Rest(html, job);
            Load(html, job);
        }

        html.Add($"</div>");
        BinPlan.Write(html, job);
        html.Add($"</div>");
        if (!job.Held)
        {
            Times(html, job.Estimate);
            LayerClock.Write(html, job);
        }

        Released(html, subject);
        Cautions(html);
        if (!job.Held)
        {
            Ticks(html, subject);
            SignLines(html);
        }

        html.Add($"</section>");
    }

    private static void Held(HtmlWriter html, ReportSubject subject)
    {
        html.Add($"<p><strong>Nothing of this job may be printed.</strong> It holds no dose tables and no sequence. What holds it:</p><ul>");
        foreach (Diagnostic finding in subject.Job.Findings.Where(finding => finding.Severity == Severity.Error && finding.AcceptedBecause is null))
        {
            html.Add($"<li><strong>{finding.Code}</strong> {finding.Message}. <em>To do:</em> {finding.Remedy}.</li>");
        }

        html.Add($"</ul>");
    }

    private static void Rest(HtmlWriter html, CompiledJob job)
    {
        if (job.Description.Stop is { } stop)
        {
            html.Add($"<p><strong>Only the rest of job {stop.JobFingerprint}: goes over the same bin, on after layer {stop.AfterLayer}{(stop.Station > 0 ? $" and station {stop.Station} of the next" : "")}.</strong> The figures are of the whole unit, pause included.</p>");
        }
    }

    private static void Load(HtmlWriter html, CompiledJob job)
    {
        Estimate estimate = job.Estimate;
        Lattice lattice = job.Lattice;
        int flushes = job.Timeline.Steps.Count(step => step.Action == MachineAction.Flush);
        ReportTable.Pairs(
            html,
            ("printer", job.Description.Printer.Name),
            ("needles", Needles(job)),
            ("mix", $"{job.Description.Mix.Name}{Batch(job.Description.Tonight)}"),
            ("mix to spread", ReportFigures.Mass(estimate.SpreadKilograms)),
            ("water", ReportFigures.Litres(estimate.WaterCubicMetres)),
            ("flush", flushes == 0 ? "none" : $"{ReportFigures.Litres(estimate.FlushCubicMetres)} in {flushes} {(flushes == 1 ? "flush" : "flushes")}"),
            ("layers", $"{lattice.Layers} of {ReportFigures.Length(lattice.LayerMetres)}, {Under(lattice.UnderLayers)} under the unit"),
            ("units", job.Description.Bin.Count == 0 ? "" : $"{job.Description.Bin.Count}: {string.Join(", ", job.Description.Bin.Select(unit => unit.Mark))}"),
            ("placement", job.Description.Bin.Count > 0 ? $"layers {Layers(job.Placement)}" : Placement(job.Placement)),
            ("mass on the hook", job.Description.Bin.Count > 0 ? "" : ReportFigures.Mass(estimate.LiftKilograms)),
            ("filling of the bin", job.Description.Bin.Count == 0 ? "" : $"{ReportFigures.Mass(estimate.SpreadKilograms + estimate.WaterCubicMetres * job.Description.Mix.Liquid.Density.KilogramsPerCubicMetre)} of mix and water, the bin itself not counted"),
            ("printing", $"{ReportFigures.Duration(estimate.PrintSeconds)}, after {ReportFigures.Duration(estimate.SetupSeconds)} of setup"));
    }

    private static string Needles(CompiledJob job)
    {
        if (job.Description.Needles is null)
        {
            return "no needles file: all taken as sound";
        }

        HeadNeedles head = HeadNeedles.Of(job.Description.Printer, job.Description.Needles);
        int blocked = 0, limited = 0;
        for (int row = 1; row <= head.Rows; row++)
        {
            for (int column = 1; column <= head.Columns; column++)
            {
                NeedleCondition condition = head.State(column, row)?.Condition ?? NeedleCondition.Ok;
                blocked += condition == NeedleCondition.Blocked ? 1 : 0;
                limited += condition == NeedleCondition.Limited ? 1 : 0;
            }
        }

        string file = job.Inputs.FirstOrDefault(input => input.Role == "needles")?.FileName ?? "table of needles";
        return $"{file}: {blocked} blocked, {limited} limited of {head.Columns * head.Rows}";
    }

    private static string Batch(Tonight? tonight) => string.IsNullOrEmpty(tonight?.MixBatch) ? "" : $", batch {tonight.MixBatch}";

    private static string Under(int layers) => layers switch { 0 => "none", 1 => "the lowest loose", _ => $"the lowest {layers} loose" };

    private static string Placement(UnitPlacement placement) =>
        $"turned {90 * placement.QuarterTurns}°, corner at {ReportFigures.Place(placement.Corner)} in the bin, layers {Layers(placement)}";

    private static string Layers(UnitPlacement placement) => placement.ShiftedLayers ? "shifted by half a pitch in turn" : "straight";

    private static void Times(HtmlWriter html, Estimate estimate)
    {
        NamedAmount[] actions = [.. estimate.SecondsByAction.Where(action => action.Amount > 0.0)];
        html.Add($"""<table class="across"><caption>Printing time by action</caption><thead><tr>""");
        foreach (NamedAmount action in actions)
        {
            html.Add($"""<th scope="col">{MaterialsSection.ActionWord(action.Name)}</th>""");
        }

        html.Add($"</tr></thead><tbody><tr>");
        foreach (NamedAmount action in actions)
        {
            html.Add($"""<td data-head="{MaterialsSection.ActionWord(action.Name)}">{ReportFigures.Duration(action.Amount)}</td>""");
        }

        html.Add($"</tr></tbody></table>");
    }

    private static void Released(HtmlWriter html, ReportSubject subject)
    {
        Diagnostic[] released = [.. subject.Job.Findings.Where(finding => finding.AcceptedBecause is not null)];
        if (released.Length == 0)
        {
            html.Add($"<p>Released findings: none.</p>");
            return;
        }

        ReportTable.Write(html, "Released findings", ["code", "finding", "released because", "where"], released.Select(finding =>
            (string[])[finding.Code, finding.Message, finding.AcceptedBecause!, subject.NameOf(finding.Location)]));
    }

    private static void Cautions(HtmlWriter html)
    {
        html.Add($"""<div class="cautions"><h2>Take care</h2><ul>""");
        html.Add($"<li><strong>Dust.</strong> Dry mix holds crystalline silica, which scars the lungs: wear a respirator when spreading and digging out; clean wet or with a filtered vacuum, never sweep dry or blow.</li>");
        html.Add($"<li><strong>Wet cement burns.</strong> Gloves, covered skin, eye protection; eye wash within reach. Rinse at once and long.</li>");
        html.Add($"<li><strong>Lifting.</strong> Nobody under or beside the load; gear and points rated and checked for the mass on the hook.</li>");
        html.Add($"<li>Masses and strengths here are predictions. Local codes, the yard's rules and licensed engineers come before this sheet.</li></ul></div>");
    }

    private static void Ticks(HtmlWriter html, ReportSubject subject)
    {
        CompiledJob job = subject.Job;
        double liquid = job.Estimate.WaterCubicMetres + job.Estimate.FlushCubicMetres;
        string[] checks =
        [
            $"The printer shows job {subject.Data.Job.Grouped()}",
            $"Mix: {ReportFigures.Mass(job.Estimate.SpreadKilograms)} stand ready, batch noted below",
            $"Tank: {ReportFigures.Litres(liquid)} or more, flush included",
            "Needles: the last check still holds, none blocked since",
            job.Description.Stop is null ? "Bin: empty, swept, home against its stops" : "Bin: as it was left, home against its stops",
            "Flush tray empty; every needle ran clear",
            "Respirator, gloves and eye wash at hand",
            "After the last layer: fingerprint and time written on the bin",
        ];
        html.Add($"""<p class="sheethead">To tick</p><ul class="ticks">""");
        foreach (string check in checks)
        {
            html.Add($"""<li><label><input type="checkbox" /><span>{check}</span></label></li>""");
        }

        html.Add($"</ul>");
    }

    private static void SignLines(HtmlWriter html)
    {
        html.Add($"""<table class="sign"><caption>By hand</caption><thead><tr>""");
        html.Add($"""<th scope="col">mix batch</th><th scope="col">bed temperature, °C</th><th scope="col">start, time and name</th><th scope="col">stop, time and name</th></tr></thead>""");
        html.Add($"<tbody><tr><td></td><td></td><td></td><td></td></tr></tbody></table>");
    }
}
