using System.Text;
using Dewstone.Jobs.Emission.Pictures.Drawing;
using OxyPlot;
using OxyPlot.Axes;
using OxyPlot.Legends;
using SixLabors.ImageSharp.PixelFormats;

namespace Dewstone.Jobs.Emission.Charts;

/// <summary>How every chart looks: the inks of the pictures on paper white, one typeface, rulings only where a figure is read off.</summary>
internal static class ChartStyle
{
    private const string Typeface = "Helvetica, Arial, sans-serif";

    /// <summary>Lines and lettering.</summary>
    public static OxyColor Line { get; } = Of(Ink.Line);

    /// <summary>Secondary lines and lettering.</summary>
    public static OxyColor Quiet { get; } = Of(Ink.Quiet);

    /// <summary>Rulings.</summary>
    public static OxyColor Faint { get; } = Of(Ink.Faint);

    /// <summary>What is computed.</summary>
    public static OxyColor Computed { get; } = Of(Ink.Missing);

    /// <summary>What stands out, or is too much.</summary>
    public static OxyColor Excess { get; } = Of(Ink.Excess);

    /// <summary>What was measured.</summary>
    public static OxyColor Measured { get; } = Of(Ink.Water);

    /// <summary>An empty chart.</summary>
    /// <param name="title">What is shown.</param>
    /// <param name="remark">Second line; empty for none.</param>
    /// <returns>The chart, without axes.</returns>
    public static PlotModel Sheet(string title, string remark = "")
    {
        PlotModel sheet = new()
        {
            // Without a measurer of text the second line would sit on the first.
            Title = remark.Length > 0 ? title + "\n" : title,
            Subtitle = remark,
            TitleHorizontalAlignment = TitleHorizontalAlignment.CenteredWithinView,
            TitleFontSize = 16,
            TitleFontWeight = FontWeights.Bold,
            SubtitleFontSize = 12,
            SubtitleColor = Quiet,
            DefaultFont = Typeface,
            DefaultFontSize = 12,
            TextColor = Line,
            Background = Of(Ink.Paper),
            PlotAreaBorderColor = Quiet,
            PlotAreaBorderThickness = new OxyThickness(1, 0, 0, 1),
            Padding = new OxyThickness(16, 12, 24, 12),
        };
        sheet.Legends.Add(new Legend
        {
            LegendPlacement = LegendPlacement.Outside,
            LegendPosition = LegendPosition.BottomCenter,
            LegendOrientation = LegendOrientation.Horizontal,
            LegendLineSpacing = 7,
            LegendTextColor = Line,
        });
        return sheet;
    }

    /// <summary>An axis.</summary>
    /// <param name="position">Side.</param>
    /// <param name="title">Quantity with its unit.</param>
    /// <param name="ruled">Whether rulings run across the chart.</param>
    /// <returns>The axis.</returns>
    public static LinearAxis Axis(AxisPosition position, string title, bool ruled = false) => new()
    {
        Position = position,
        Title = title,
        // Without a measurer of text the title would sit on the figures.
        AxisTitleDistance = position is AxisPosition.Left or AxisPosition.Right ? 16 : 8,
        AxislineColor = Quiet,
        TicklineColor = Quiet,
        MajorGridlineColor = Faint,
        MajorGridlineStyle = ruled ? LineStyle.Solid : LineStyle.None,
        MinorTickSize = 0,
        MinimumPadding = 0.04,
        MaximumPadding = 0.04,
    };

    /// <summary>A word for the legend.</summary>
    /// <param name="text">The word.</param>
    /// <returns>The word with room behind it: without a measurer of text its end would be cut off.</returns>
    public static string Entry(string text) => text + new string('\u00A0', 4 + text.Length / 4);

    /// <summary>Tone of a deviation: blue below, white at nought, orange above.</summary>
    /// <param name="share">Deviation over the one of full tone; beyond -1 and 1 the tone stays.</param>
    /// <returns>The tone.</returns>
    public static OxyColor Deviation(double share) =>
        Of(Ink.Mix(new Rgb24(255, 255, 255), share < 0.0 ? Ink.Missing : Ink.Excess, (float)Math.Min(1.0, Math.Abs(share))));

    /// <summary>The chart as a file.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="sheet">The chart.</param>
    /// <param name="width">Width, points.</param>
    /// <param name="height">Height, points.</param>
    /// <returns>SVG with line feeds, the same bytes on every run.</returns>
    public static EmittedFile Svg(string path, PlotModel sheet, int width = 900, int height = 560)
    {
        SvgExporter exporter = new() { Width = width, Height = height };
        return new EmittedFile(path, Encoding.UTF8.GetBytes(exporter.ExportToString(sheet).ReplaceLineEndings("\n")));
    }

    private static OxyColor Of(Rgb24 ink) => OxyColor.FromRgb(ink.R, ink.G, ink.B);
}
