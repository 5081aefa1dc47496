using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>Two plain charts of amounts, as drawings in the page: bars that lie (the first at the foot) and bars that stand.</summary>
internal static class ColumnChart
{
    private const double Width = 460.0;

    /// <summary>Draws lying bars, each with its amount.</summary>
    /// <param name="html">The page.</param>
    /// <param name="title">What is shown, with its unit.</param>
    /// <param name="bars">Amounts, the first at the foot.</param>
    /// <param name="axis">What the bars' names count.</param>
    public static void Lying(HtmlWriter html, string title, IReadOnlyList<NamedAmount> bars, string axis)
    {
        double step = Math.Clamp(480.0 / bars.Count, 4.0, 16.0), height = bars.Count * step;
        double most = Math.Max(bars.Max(bar => bar.Amount), 1e-9);
        int every = (int)Math.Ceiling(11.0 / step);
        Open(html, title, height + 26.0);
        html.Add($"""<text x="36" y="10" text-anchor="end" class="quiet">{axis}</text>""");
        for (int i = 0; i < bars.Count; i++)
        {
            double top = 16.0 + (bars.Count - 1 - i) * step;
            double length = (Width - 100.0) * bars[i].Amount / most;
            html.Add($"""<rect class="bar" x="42" y="{top + 0.12 * step}" width="{length}" height="{0.76 * step}" />""");
            if (i % every == 0)
            {
                html.Add($"""<text x="36" y="{top + 0.5 * step + 4.0}" text-anchor="end">{bars[i].Name}</text><text x="{46.0 + length}" y="{top + 0.5 * step + 4.0}">{ReportFigures.Amount(bars[i].Amount)}</text>""");
            }
        }

        html.Add($"""<path class="axis" d="M42 16V{16.0 + height}" /></svg></figure>""");
    }

    /// <summary>Draws standing bars, each with its number above; a bar's name stands at its left edge.</summary>
    /// <param name="html">The page.</param>
    /// <param name="title">What is shown.</param>
    /// <param name="bars">Amounts, the first at the left.</param>
    /// <param name="axis">Unit of the bars' names.</param>
    public static void Standing(HtmlWriter html, string title, IReadOnlyList<NamedAmount> bars, string axis)
    {
        const double Height = 220.0, Left = 12.0, Top = 18.0;
        double step = Math.Min((Width - 54.0) / bars.Count, 40.0);
        double most = Math.Max(bars.Max(bar => bar.Amount), 1e-9);
        Open(html, title, Top + Height + 26.0);
        for (int i = 0; i < bars.Count; i++)
        {
            double x = Left + i * step, tall = (Height - 14.0) * bars[i].Amount / most;
            html.Add($"""<rect class="bar" x="{x + 0.6}" y="{Top + Height - tall}" width="{step - 1.2}" height="{tall}" />""");
            html.Add($"""<text x="{x}" y="{Top + Height + 16.0}" text-anchor="middle">{(i % 2 == 0 ? bars[i].Name : "")}</text>""");
            html.Add($"""<text x="{x + step / 2.0}" y="{Top + Height - tall - 4.0}" text-anchor="middle" class="small">{(bars[i].Amount > 0.0 ? $"{bars[i].Amount:0.#}" : "")}</text>""");
        }

        double end = Left + bars.Count * step;
        html.Add($"""<path class="axis" d="M{Left} {Top + Height}H{end}" /><text x="{end + 4.0}" y="{Top + Height + 16.0}" class="quiet">{axis}</text></svg></figure>""");
    }

    private static void Open(HtmlWriter html, string title, double height) =>
        html.Add($"""<figure><figcaption>{title}</figcaption><svg viewBox="0 0 {Width} {height}" role="img" aria-label="{title}">""");
}
