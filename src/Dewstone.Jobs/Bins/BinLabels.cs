using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Bins;

/// <summary>Writes <c>labels.html</c> of a bin: a label for each of its units, to cut out and tie to it.</summary>
internal static class BinLabels
{
    /// <summary>The labels of a bin.</summary>
    /// <param name="bin">The bin.</param>
    /// <param name="data">Its fingerprints.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(BinResult bin, JobData data) => LabelsPage.Emit(bin.Job!.Description.Unit.Name, html =>
    {
        foreach (BinVerdict unit in bin.Units)
        {
            Label(html, bin, data, unit);
        }
    });

    private static void Label(HtmlWriter html, BinResult bin, JobData data, BinVerdict unit)
    {
        SolvedUnit solved = unit.Placed.Solved;
        (double least, double most) = MassBand(bin.Question.Conditions, solved);
        html.Add($"""<article><header><h1>{unit.Binned.Mark}</h1><svg viewBox="0 0 44 60" role="img" aria-label="this side up"><path d="M22 6L34 24H26V42H18V24H10Z" /><text x="22" y="56" text-anchor="middle">UP</text></svg></header>""");
        html.Add($"<p>{unit.Binned.Unit.Name}, {ReportFigures.Box(unit.Binned.Unit.OuterBox)}</p><dl>");
        Pair(html, "design", solved.Design.Grouped());
        Pair(html, "bin", $"{bin.Question.Name}, job {data.Job.Grouped()}");
        Pair(html, "on the hook", $"{least:0} to {most:0} kg");
        Pair(html, "dig out", DigOut.Days(bin.Question, solved) is { } days ? $"not before {StrengthWords.Age(days)} after the last layer" : "strength not told: ask before digging");
        Pair(html, "lift", solved.LiftDays is { } lift ? $"not before {StrengthWords.Age(lift)}" : "not before it is tested");
        Pair(html, "north", $"faces {Faces(unit.Binned)} as it stands in the bin");
        html.Add($"</dl>");
        if (!unit.Serves)
        {
            html.Add($"""<p class="bad">Not as designed: do not place without a decision.</p>""");
        }

        html.Add($"""<p class="hand">last layer, date and time <span></span></p><p class="hand">heading at site <span></span></p></article>""");
    }

    private static void Pair(HtmlWriter html, string name, string text) => html.Add($"<div><dt>{name}</dt><dd>{text}</dd></div>");

    // What a load cell may read: two standard deviations of the loose density, upward as much again for mix that clings. Common practice, no source.
    private static (double Least, double Most) MassBand(JobDescription job, SolvedUnit unit)
    {
        double spread = Math.Max(0.03, 2.0 * (job.Mix.Uncertainty?.LooseDensity ?? 0.0));
        return (unit.Estimate.LiftKilograms * (1.0 - spread), unit.Estimate.LiftKilograms * (1.0 + 2.0 * spread));
    }

    private static string Faces(BinnedUnit unit)
    {
        Point3 north = unit.Placement.ToPrinter(new Point3(0, 1, 0)) - unit.Placement.ToPrinter(new Point3(0, 0, 0));
        return north switch { { Y: > 0.5 } => "+y", { Y: < -0.5 } => "−y", { X: > 0.5 } => "+x", _ => "−x" };
    }
}
