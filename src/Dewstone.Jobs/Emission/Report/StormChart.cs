using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The wave that just moves the unit, by period, below the highest unbroken one, as a drawing in the page.</summary>
internal static class StormChart
{
    /// <summary>Draws it.</summary>
    /// <param name="html">The page.</param>
    /// <param name="report">How the unit stands.</param>
    /// <param name="site">The design wave.</param>
    public static void Write(HtmlWriter html, StabilityReport report, Site site)
    {
        IReadOnlyList<StormPoint> storm = report.Storm;
        double most = Math.Max(0.1, storm.Max(point => Math.Max(point.LowLimitMetres, point.HighLimitMetres)) * 1.05);
        double first = storm[0].PeriodSeconds, last = storm[^1].PeriodSeconds;
        ChartFrame frame = new(period => (period - first) / (last - first), most);
        frame.Open(html, "The wave that just moves it, by period", [.. storm.Select(point => point.PeriodSeconds).Where(period => period % 2 == 0)], "period, s", "m");
        frame.Curve(html, "curve bound", storm.Select(point => (point.PeriodSeconds, point.LowLimitMetres)));
        frame.Curve(html, "curve bound", storm.Select(point => (point.PeriodSeconds, point.HighLimitMetres)));
        frame.Curve(html, "curve first", storm.Where(point => point.LowMetres is not null).Select(point => (point.PeriodSeconds, point.LowMetres!.Value)));
        frame.Curve(html, "curve second", storm.Where(point => point.HighMetres is not null).Select(point => (point.PeriodSeconds, point.HighMetres!.Value)));
        foreach (SeaLevel level in report.Levels)
        {
            double period = site.Wave.PeakPeriod.Seconds;
            if (period >= first && period <= last)
            {
                html.Add($"""<circle class="mark" cx="{frame.X(period)}" cy="{frame.Y(level.HeightMetres)}" r="4" />""");
            }
        }

        html.Add($"</svg>");
        html.Add($"""<svg viewBox="0 0 460 42" aria-hidden="true"><path class="curve first" d="M20 10h34" /><text x="60" y="14">moves it at low water</text><path class="curve second" d="M240 10h34" /><text x="280" y="14">at high water</text><path class="curve bound" d="M20 30h34" /><text x="60" y="34">highest unbroken wave</text><circle class="mark" cx="257" cy="30" r="4" /><text x="280" y="34">design wave</text></svg>""");
        html.Add($"<p class=\"quiet\">{Sentence(storm)}</p></figure>");
    }

    private static string Sentence(IReadOnlyList<StormPoint> storm) =>
        (storm.Any(point => point.LowMetres is not null), storm.Any(point => point.HighMetres is not null)) switch
        {
            (false, false) => "No unbroken wave of these periods moves it, together with the current.",
            (true, false) => "At high water no unbroken wave of these periods moves it.",
            (false, true) => "At low water no unbroken wave of these periods moves it.",
            _ => "Together with the current, at the worst heading; a factor of 1, without reserve.",
        };
}
