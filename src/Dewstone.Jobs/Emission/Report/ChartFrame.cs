using System.Text;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>Rectangle of a chart with a curve or more: where its figures lie on the paper.</summary>
/// <param name="Across">Figure along the foot to a share of the width, 0 to 1.</param>
/// <param name="MostUp">Figure at the upper edge; the foot is 0.</param>
internal sealed record ChartFrame(Func<double, double> Across, double MostUp)
{
    /// <summary>Width of a chart's drawing.</summary>
    public const double Width = 460.0;

    /// <summary>Height of the rectangle.</summary>
    public const double Height = 240.0;

    /// <summary>Left edge of the rectangle.</summary>
    public const double Left = 46.0;

    /// <summary>Upper edge of the rectangle.</summary>
    public const double Top = 22.0;

    private const double Right = 14.0;

    /// <summary>Place along the foot.</summary>
    /// <param name="figure">The figure.</param>
    /// <returns>x.</returns>
    public double X(double figure) => Left + (Width - Left - Right) * Across(figure);

    /// <summary>Place up.</summary>
    /// <param name="figure">The figure; more than the most is drawn at the upper edge.</param>
    /// <returns>y.</returns>
    public double Y(double figure) => Top + Height * (1.0 - Math.Min(figure, MostUp) / MostUp);

    /// <summary>Opens the drawing with its rulings and names.</summary>
    /// <param name="html">The page.</param>
    /// <param name="title">What is shown.</param>
    /// <param name="foot">Figures named along the foot.</param>
    /// <param name="footUnit">Their unit.</param>
    /// <param name="upUnit">Unit of the figures up.</param>
    public void Open(HtmlWriter html, string title, IReadOnlyList<double> foot, string footUnit, string upUnit)
    {
        html.Add($"""<figure><figcaption>{title}</figcaption><svg viewBox="0 0 {Width} {Top + Height + 40.0}" role="img" aria-label="{title}">""");
        double step = Step(MostUp);
        for (double up = 0.0; up <= MostUp * 1.0001; up += step)
        {
            html.Add($"""<path class="ruling" d="M{Left} {Y(up)}H{Width - Right}" /><text x="{Left - 6.0}" y="{Y(up) + 4.0}" text-anchor="end">{ReportFigures.Plain(up)}</text>""");
        }

        foreach (double figure in foot)
        {
            html.Add($"""<path class="axis" d="M{X(figure)} {Top + Height}v4" /><text x="{X(figure)}" y="{Top + Height + 17.0}" text-anchor="middle">{ReportFigures.Plain(figure)}</text>""");
        }

        html.Add($"""<path class="axis" d="M{Left} {Top + Height}H{Width - Right}" /><text x="{Width - Right}" y="{Top + Height + 33.0}" text-anchor="end" class="quiet">{footUnit}</text><text x="{Left - 6.0}" y="{Top - 9.0}" text-anchor="end" class="quiet">{upUnit}</text>""");
    }

    /// <summary>Draws a curve.</summary>
    /// <param name="html">The page.</param>
    /// <param name="look">Its class.</param>
    /// <param name="points">Points of it, along the foot and up.</param>
    public void Curve(HtmlWriter html, string look, IEnumerable<(double Across, double Up)> points)
    {
        StringBuilder path = new();
        foreach ((double across, double up) in points)
        {
            path.Append($"{(path.Length == 0 ? 'M' : 'L')}{Math.Round(X(across), 2)} {Math.Round(Y(up), 2)}");
        }

        if (path.Length > 0)
        {
            html.Add($"""<path class="{look}" d="{path.ToString()}" />""");
        }
    }

    /// <summary>A round step that divides a range into four to ten.</summary>
    /// <param name="most">The range.</param>
    /// <returns>The step.</returns>
    public static double Step(double most)
    {
        double decade = Math.Pow(10.0, Math.Floor(Math.Log10(most)));
        return (most / decade) switch { < 2.0 => 0.25, < 4.0 => 0.5, _ => 1.0 } * decade;
    }
}
