using Dewstone.Compute.Calibration;
using Dewstone.Model.Description;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Dewstone.Jobs.Emission.Charts;

/// <summary>A picture of a calibrated head: what each needle gives against what is asked, and how far it scatters.</summary>
public static class HeadChart
{
    /// <summary>Path of the picture.</summary>
    public const string Path = "needles.svg";

    private const double FullDeviation = 0.10;
    private const double FullScatter = 0.05;
    private const int Steps = 5;

    /// <summary>The picture: two plans of the head, columns to the right, rows upwards.</summary>
    /// <param name="head">The calibrated head.</param>
    /// <returns>SVG.</returns>
    public static EmittedFile Emit(HeadCalibration head)
    {
        ArgumentNullException.ThrowIfNull(head);
        int columns = head.Needles.Max(needle => needle.State.Column), rows = head.Needles.Max(needle => needle.State.Row);
        int blocked = head.Needles.Count(needle => needle.State.Condition == NeedleCondition.Blocked);
        int limited = head.Needles.Count(needle => needle.State.Condition == NeedleCondition.Limited);
        PlotModel sheet = ChartStyle.Sheet(
            "Needles of the head", $"{head.Needles.Count} weighed, {blocked} blocked (crossed out), {limited} limited (framed)");
        Plan(sheet, head, "deviation", 0.0, 0.46, columns, rows, "column; tone: given against asked, %",
            needle => ChartStyle.Deviation(needle.Deviation / FullDeviation));
        Plan(sheet, head, "scatter", 0.54, 1.0, columns, rows, "column; tone: scatter of a dose, %",
            needle => needle.State.Repeatability is { } share ? ChartStyle.Deviation(share / FullScatter) : OxyColors.Transparent);
        Scale(sheet, "deviation", columns, rows, step => step / (double)Steps * FullDeviation, -Steps, FullDeviation);
        Scale(sheet, "scatter", columns, rows, step => step / (double)Steps * FullScatter, 0, FullScatter);
        double cell = 400.0 / columns;
        return ChartStyle.Svg(Path, sheet, 960, (int)Math.Clamp(cell * (rows + 3) + 150.0, 300.0, 900.0));
    }

    private static void Plan(
        PlotModel sheet, HeadCalibration head, string key, double from, double to, int columns, int rows, string title, Func<NeedleFit, OxyColor> tone)
    {
        LinearAxis across = ChartStyle.Axis(AxisPosition.Bottom, title), up = ChartStyle.Axis(AxisPosition.Left, from == 0.0 ? "row" : "");
        (across.Key, across.StartPosition, across.EndPosition, across.Minimum, across.Maximum) = ($"{key}-x", from, to, 0.4, columns + 0.6);
        (up.Key, up.Minimum, up.Maximum, up.PositionTier) = ($"{key}-y", 0.4, rows + 2.6, 0);
        across.MinimumMajorStep = up.MinimumMajorStep = 1;
        up.IsAxisVisible = from == 0.0;

        // The row of tones above the plan is no row of needles.
        up.LabelFormatter = row => row >= 1.0 && row <= rows && row == Math.Floor(row) ? $"{row:0}" : "";
        sheet.Axes.Add(across);
        sheet.Axes.Add(up);
        RectangleBarSeries cells = new() { XAxisKey = across.Key, YAxisKey = up.Key, StrokeColor = ChartStyle.Faint, StrokeThickness = 0.5 };
        RectangleBarSeries framed = new() { XAxisKey = across.Key, YAxisKey = up.Key, StrokeColor = ChartStyle.Line, StrokeThickness = 1.5 };
        foreach (NeedleFit needle in head.Needles)
        {
            double x = needle.State.Column, y = needle.State.Row;
            bool isBlocked = needle.State.Condition == NeedleCondition.Blocked;
            RectangleBarItem item = new(x - 0.5, y - 0.5, x + 0.5, y + 0.5) { Color = isBlocked ? OxyColors.White : tone(needle) };
            (needle.State.Condition == NeedleCondition.Limited ? framed : cells).Items.Add(item);
            if (isBlocked)
            {
                sheet.Annotations.Add(Stroke(across.Key, up.Key, x - 0.5, y - 0.5, x + 0.5, y + 0.5));
                sheet.Annotations.Add(Stroke(across.Key, up.Key, x - 0.5, y + 0.5, x + 0.5, y - 0.5));
            }
        }

        sheet.Series.Add(cells);
        sheet.Series.Add(framed);
    }

    private static PolylineAnnotation Stroke(string across, string up, double x0, double y0, double x1, double y1)
    {
        PolylineAnnotation stroke = new() { XAxisKey = across, YAxisKey = up, Color = ChartStyle.Line, LineStyle = LineStyle.Solid, StrokeThickness = 1.5 };
        stroke.Points.AddRange([new DataPoint(x0, y0), new DataPoint(x1, y1)]);
        return stroke;
    }

    // A row of tones above the plan with a figure in each.
    private static void Scale(PlotModel sheet, string key, int columns, int rows, Func<int, double> share, int first, double full)
    {
        int count = Steps - first + 1;
        double width = (columns + 0.2) / count;
        RectangleBarSeries tones = new() { XAxisKey = $"{key}-x", YAxisKey = $"{key}-y", StrokeColor = ChartStyle.Faint, StrokeThickness = 0.5 };
        for (int step = first; step <= Steps; step++)
        {
            double left = 0.4 + (step - first) * width;
            tones.Items.Add(new RectangleBarItem(left, rows + 1.1, left + width, rows + 2.1) { Color = ChartStyle.Deviation(share(step) / full) });
            sheet.Annotations.Add(new TextAnnotation
            {
                XAxisKey = $"{key}-x",
                YAxisKey = $"{key}-y",
                Text = first < 0 ? $"{100.0 * share(step):+0;-0;0}" : $"{100.0 * share(step):0}",
                TextPosition = new DataPoint(left + 0.5 * width, rows + 1.6),
                TextVerticalAlignment = VerticalAlignment.Middle,
                StrokeThickness = 0,
                FontSize = 10,
                TextColor = Math.Abs(share(step) / full) > 0.7 && first < 0 && step < 0 ? OxyColors.White : ChartStyle.Line,
            });
        }

        sheet.Series.Add(tones);
    }
}
