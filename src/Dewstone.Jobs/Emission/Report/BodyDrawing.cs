using Dewstone.Compute.Strength;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>Three cuts through a place of the hardened solid: its strength, and its tension over the cracking stress.</summary>
internal static class BodyDrawing
{
    private const double Side = 200.0, Gap = 34.0, Top = 18.0;
    private const int Bands = 8;

    /// <summary>Draws.</summary>
    /// <param name="html">The page.</param>
    /// <param name="map">The solid.</param>
    /// <param name="worst">The place to cut through.</param>
    public static void Write(HtmlWriter html, BodyMap map, TensionResult worst)
    {
        double strongest = map.Pascals.Max(), tensest = map.Use.Length == 0 ? 0.0 : map.Use.Max();
        Row(html, map, worst, "strong", $"Strength at 28 days, cut through the place nearest to cracking when {LoadCaseWords.Of(worst.Case)} (ring): from pale, {StrengthWords.Stress(0.5 * strongest)} or less, to full tone, {StrengthWords.Stress(strongest)}", i => Math.Max(0.0, 2.0 * map.Pascals[i] / strongest - 1.0));
        if (tensest > 0.0)
        {
            Row(html, map, worst, "tense", $"Tension over cracking stress at 28 days, {LoadCaseWords.Of(worst.Case)}, on the same cuts: full tone {ReportFigures.Share(tensest)}", i => map.Use[i] / tensest);
        }
    }

    private static void Row(HtmlWriter html, BodyMap map, TensionResult worst, string tone, string title, Func<int, double> share)
    {
        double scale = Side / Math.Max(Math.Max(map.Nx * map.Edges.X, map.Ny * map.Edges.Y), map.Nz * map.Edges.Z);
        (int x, int y, int z) = (
            At(worst.Where.X, map.Corner.X, map.Edges.X, map.Nx), At(worst.Where.Y, map.Corner.Y, map.Edges.Y, map.Ny), At(worst.Where.Z, map.Corner.Z, map.Edges.Z, map.Nz));
        double ex = map.Edges.X * scale, ey = map.Edges.Y * scale, ez = map.Edges.Z * scale;
        double tall = Math.Max(map.Nz * ez, map.Ny * ey), second = map.Nx * ex + Gap, third = second + map.Ny * ey + Gap;
        html.Add($"""<figure><figcaption>{title}</figcaption><svg viewBox="0 0 {third + map.Nx * ex} {Top + tall + 4.0}" role="img" aria-label="{title}">""");
        Cut(html, $"seen from the south, y {ReportFigures.Millimetres(worst.Where.Y)} mm", tone, 0.0, map.Nx, map.Nz, ex, ez, (i, j) => Index(map, i, y, j), map, share, (worst.Where.X - map.Corner.X) * scale, (worst.Where.Z - map.Corner.Z) * scale);
        Cut(html, $"from the west, x {ReportFigures.Millimetres(worst.Where.X)} mm", tone, second, map.Ny, map.Nz, ey, ez, (i, j) => Index(map, x, map.Ny - 1 - i, j), map, share, map.Ny * ey - (worst.Where.Y - map.Corner.Y) * scale, (worst.Where.Z - map.Corner.Z) * scale);
        Cut(html, $"from above, z {ReportFigures.Millimetres(worst.Where.Z)} mm", tone, third, map.Nx, map.Ny, ex, ey, (i, j) => Index(map, i, j, z), map, share, (worst.Where.X - map.Corner.X) * scale, (worst.Where.Y - map.Corner.Y) * scale);
        html.Add($"</svg></figure>");
    }

    private static int At(double place, double corner, double edge, int count) => Math.Clamp((int)Math.Floor((place - corner) / edge - 1e-6), 0, count - 1);

    private static int Index(BodyMap map, int x, int y, int z) => (z * map.Ny + y) * map.Nx + x;

    // One path a band: the bricks of it, row by row from the foot.
    private static void Cut(
        HtmlWriter html, string name, string tone, double left, int across, int up, double width, double height, Func<int, int, int> index, BodyMap map, Func<int, double> share, double markAcross, double markUp)
    {
        double foot = Top + up * height;
        html.Add($"""<text x="{left}" y="12">{name}</text>""");
        for (int band = 0; band < Bands; band++)
        {
            System.Text.StringBuilder path = new();
            for (int j = 0; j < up; j++)
            {
                for (int i = 0; i < across; i++)
                {
                    int brick = index(i, j);
                    if (map.Filled[brick] >= 0.5f && Math.Min(Bands - 1, (int)(share(brick) * Bands)) == band)
                    {
                        path.Append(System.Globalization.CultureInfo.InvariantCulture, $"M{Math.Round(left + i * width, 2)} {Math.Round(foot - (j + 1) * height, 2)}h{Math.Round(width, 2)}v{Math.Round(height, 2)}h-{Math.Round(width, 2)}z");
                    }
                }
            }

            if (path.Length > 0)
            {
                html.Add($"""<path class="{tone}" fill-opacity="{(band + 1.0) / Bands}" d="{path.ToString()}" />""");
            }
        }

        html.Add($"""<rect class="rule" x="{left}" y="{Top}" width="{across * width}" height="{up * height}" /><circle class="mark" cx="{left + markAcross}" cy="{foot - markUp}" r="6" />""");
    }
}
