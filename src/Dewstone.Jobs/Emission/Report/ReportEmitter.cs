using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>
/// Writes <c>report.html</c>: one page that needs nothing beside itself. The sheet for the shop comes first and is the first page when printed;
/// then the verdict, the unit to turn in the hand, the plates, and the figures. Loads nothing: its policy allows its own style and script only.
/// </summary>
internal static class ReportEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "report.html";

    /// <summary>Most bytes a report may have.</summary>
    public const int MostBytes = 8 * 1024 * 1024;

    /// <summary>The parts after the shop sheet, in order.</summary>
    private static readonly (string Id, string Title, Action<HtmlWriter, ReportSubject> Write)[] Parts =
    [
        ("verdict", "Asked and predicted", VerdictSection.Write),
        ("unit", "The unit in the hand", SolidSection.Write),
        ("plates", "Plates", PlatesSection.Write),
        ("inspection", "Openings, walls and loose mix", InspectionSection.Write),
        ("strength", "Strength and lifting", StrengthSection.Write),
        ("sea", "In the sea", SeaSection.Write),
        ("habitat", "Habitat", HabitatSection.Write),
        ("trials", "How sure it is", TrialsSection.Write),
        ("doses", "Doses", DosesSection.Write),
        ("materials", "Materials, time, carbon and cost", MaterialsSection.Write),
        ("conditions", "Tonight's conditions", ConditionsSection.Write),
        ("model", "The model and its limits", ModelSection.Write),
    ];

    /// <summary>The report of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="data">Its fingerprints.</param>
    /// <param name="fields">Its surfaces and fields.</param>
    /// <param name="settings">What is needed beside it.</param>
    /// <param name="pictures">The pictures of the folder, that of the unit among them.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(CompiledJob job, JobData data, ReportFields fields, EmissionSettings settings, IReadOnlyList<EmittedFile> pictures)
    {
        ReportSubject subject = new()
        {
            Job = job,
            Data = data,
            Settings = settings,
            Fields = fields,
            Plates = fields.Plates,
            UnitPicture = pictures.First(picture => picture.RelativePath == PictureSet.Unit).Bytes,
            DoubtPicture = pictures.FirstOrDefault(picture => picture.RelativePath == DoubtPicture.Path)?.Bytes ?? default,
        };
        return Page(subject, Parts, html =>
        {
            ShopSheet.Write(html, subject);
            DigOutSheet.Write(html, job);
        });
    }

    /// <summary>A page.</summary>
    /// <param name="subject">What it draws on.</param>
    /// <param name="parts">The parts after the sheets, in order.</param>
    /// <param name="sheets">Writes the sheets, which are the first pages when printed.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Page(ReportSubject subject, IReadOnlyList<(string Id, string Title, Action<HtmlWriter, ReportSubject> Write)> parts, Action<HtmlWriter> sheets)
    {
        CompiledJob job = subject.Job;
        string style = $"{ReportInks.Rules}{ReportAssets.Read("report.css")}";
        string script = string.Concat(((string[])["unpack.js", "viewer.js", "plates.js"]).Select(ReportAssets.Read));
        HtmlWriter html = new();
        html.Add($"<!DOCTYPE html>");
        html.Add($"""<html lang="en"><head><meta charset="utf-8" />""");
        html.Add($"""<meta http-equiv="Content-Security-Policy" content="default-src 'none'; img-src data:; style-src {ReportAssets.Source(style)}; script-src {ReportAssets.Source(script)}" />""");
        html.Add($"""<meta name="viewport" content="width=device-width, initial-scale=1" /><title>{job.Description.Unit.Name}: report</title>""");
        html.Raw($"<style>{style}</style></head>\n");
        html.Add($"""<body class="{(job.Held ? "held" : "ready")}"><main>""");
        sheets(html);
        Contents(html, parts);
        foreach ((string id, string title, Action<HtmlWriter, ReportSubject> write) in parts)
        {
            html.Add($"""<section id="{id}"><h2>{title}</h2>""");
            write(html, subject);
            html.Add($"</section>");
        }

        html.Add($"""<footer>{job.Description.Unit.Name} · job {subject.Data.Job.Grouped()} · design {subject.Data.Design.Grouped()} · dewstone {job.ToolVersion}</footer></main>""");
        html.Raw($"<script type=\"module\">{script}</script></body></html>\n");
        return new EmittedFile(Path, html.ToBytes());
    }

    private static void Contents(HtmlWriter html, IReadOnlyList<(string Id, string Title, Action<HtmlWriter, ReportSubject> Write)> parts)
    {
        html.Add($"""<nav aria-label="Parts of this report"><ul>""");
        foreach ((string id, string title, _) in parts)
        {
            html.Add($"""<li><a href="#{id}">{title}</a></li>""");
        }

        html.Add($"</ul></nav>");
    }
}
