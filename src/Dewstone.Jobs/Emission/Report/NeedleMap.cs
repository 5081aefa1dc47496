using System.Text;
using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The head seen from above: which needles give water, which give less than they should, which give none.</summary>
internal static class NeedleMap
{
    private const double Step = 16.0, Edge = 30.0, Mark = 4.0;

    /// <summary>Draws the map.</summary>
    /// <param name="html">The page.</param>
    /// <param name="job">The job.</param>
    public static void Write(HtmlWriter html, CompiledJob job)
    {
        if (job.Description.Needles is null)
        {
            html.Add($"<p>No needles file was given: every needle is taken to give what it is asked for.</p>");
            return;
        }

        HeadNeedles head = HeadNeedles.Of(job.Description.Printer, job.Description.Needles);
        StringBuilder ok = new(), limited = new(), dead = new();
        double least = double.PositiveInfinity, most = double.NegativeInfinity;
        for (int row = 1; row <= head.Rows; row++)
        {
            for (int column = 1; column <= head.Columns; column++)
            {
                NeedleState? state = head.State(column, row);
                double x = Edge + (column - 0.5) * Step, y = Edge + (head.Rows - row + 0.5) * Step;
                _ = (state?.Condition ?? NeedleCondition.Ok) switch
                {
                    NeedleCondition.Blocked => dead.Append($"M{x - Mark} {y - Mark}l{2 * Mark} {2 * Mark}m0 {-2 * Mark}l{-2 * Mark} {2 * Mark}"),
                    NeedleCondition.Limited => limited.Append($"M{x - Mark} {y}a{Mark} {Mark} 0 1 0 {2 * Mark} 0a{Mark} {Mark} 0 1 0 {-2 * Mark} 0"),
                    _ => ok.Append($"M{x} {y}h0"),
                };
                double gain = state?.Gain ?? 1.0;
                (least, most) = state?.Condition == NeedleCondition.Blocked ? (least, most) : (Math.Min(least, gain), Math.Max(most, gain));
            }
        }

        double width = head.Columns * Step, height = head.Rows * Step;
        html.Add($"""<figure class="needlemap"><svg viewBox="0 0 {width + 2.0 * Edge} {height + 2.0 * Edge}" role="img" aria-label="The head's needles, {head.Columns} by {head.Rows}, seen from above"><rect class="bin" x="{Edge}" y="{Edge}" width="{width}" height="{height}" />""");
        html.Add($"""<path class="ok" d="{ok.ToString()}" /><path class="limited" d="{limited.ToString()}" /><path class="dead" d="{dead.ToString()}" />""");
        foreach (int column in (int[])[1, head.Columns])
        {
            html.Add($"""<text x="{Edge + (column - 0.5) * Step}" y="{Edge + height + 16.0}" text-anchor="middle">{column}</text>""");
        }

        foreach (int row in (int[])[1, head.Rows])
        {
            html.Add($"""<text x="{Edge - 8.0}" y="{Edge + (head.Rows - row + 0.5) * Step + 4.0}" text-anchor="end">{row}</text>""");
        }

        html.Add($"""<text x="{Edge + width / 2.0}" y="{Edge + height + 16.0}" text-anchor="middle">column, along x</text><text x="{Edge}" y="{Edge - 10.0}">row, along y</text></svg>""");
        string gains = least <= most ? $" Those that give water give {least:0.000} to {most:0.000} of what they are asked for; the doses allow for it." : "";
        html.Add($"<figcaption>The head's needles seen from above: a dot gives water, a ring is limited, a cross is blocked.{gains}</figcaption></figure>");
    }
}
