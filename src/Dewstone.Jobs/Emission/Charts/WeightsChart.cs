using Dewstone.Compute.Survey;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Dewstone.Jobs.Emission.Charts;

/// <summary>Control charts of scale weights: individuals and moving range.</summary>
internal static class WeightsChart
{
    /// <summary>File of the individuals.</summary>
    public const string IndividualsPath = "weights.svg";

    /// <summary>File of the moving ranges.</summary>
    public const string RangesPath = "weights-moving-range.svg";

    private const int MostMarks = 12;

    // Room for labels to the right of the last unit, share of the units: what lies beyond the axes is cut off.
    private const double RoomForLabels = 0.24;

    // Least distance between two labels, share of the chart's height.
    private const double LabelShare = 0.045;

    /// <summary>Draws both.</summary>
    /// <param name="name">Name of the unit.</param>
    /// <param name="weights">What the weights say.</param>
    /// <returns>The files.</returns>
    public static IReadOnlyList<EmittedFile> Emit(string name, WeightsReport weights) =>
        [ChartStyle.Svg(IndividualsPath, Individuals(name, weights)), ChartStyle.Svg(RangesPath, Ranges(name, weights), height: 420)];

    private static PlotModel Individuals(string name, WeightsReport weights)
    {
        ControlChart chart = weights.Chart;
        PlotModel sheet = ChartStyle.Sheet($"{name}: weights one by one");
        HashSet<int> signals = [.. chart.Signals.Where(s => s.Rule != ControlRule.RangeBeyond).Select(s => s.Index)];
        Axes(sheet, "weight, kg", chart.Values.Count, [.. chart.Values, chart.Upper, chart.Lower, weights.PredictedKilograms]);
        Levels(
            sheet, chart.Values.Count,
            (chart.Mean, FormattableString.Invariant($"mean {chart.Mean:0.##}"), ChartStyle.Quiet, LineStyle.Solid),
            (chart.Upper, FormattableString.Invariant($"upper limit {chart.Upper:0.##}"), ChartStyle.Quiet, LineStyle.Dash),
            (chart.Lower, FormattableString.Invariant($"lower limit {chart.Lower:0.##}"), ChartStyle.Quiet, LineStyle.Dash),
            (weights.PredictedKilograms, FormattableString.Invariant($"predicted {weights.PredictedKilograms:0.##}"), ChartStyle.Computed, LineStyle.Dot));
        Points(sheet, chart.Values, 1, signals, i => weights.Units[i].Mark);
        return sheet;
    }

    private static PlotModel Ranges(string name, WeightsReport weights)
    {
        ControlChart chart = weights.Chart;
        PlotModel sheet = ChartStyle.Sheet($"{name}: difference from the unit before");
        HashSet<int> signals = [.. chart.Signals.Where(s => s.Rule == ControlRule.RangeBeyond).Select(s => s.First)];
        Axes(sheet, "moving range, kg", chart.Values.Count, [.. chart.MovingRanges, 0.0, chart.RangeUpper]);
        Levels(
            sheet, chart.Values.Count,
            (chart.MeanMovingRange, FormattableString.Invariant($"mean {chart.MeanMovingRange:0.###}"), ChartStyle.Quiet, LineStyle.Solid),
            (chart.RangeUpper, FormattableString.Invariant($"upper limit {chart.RangeUpper:0.##}"), ChartStyle.Quiet, LineStyle.Dash));
        Points(sheet, chart.MovingRanges, 2, signals, i => weights.Units[i + 1].Mark);
        return sheet;
    }

    private static void Axes(PlotModel sheet, string title, int count, IReadOnlyList<double> values)
    {
        double low = values.Min(), high = values.Max(), room = 0.08 * Math.Max(high - low, 1e-3);
        LinearAxis across = ChartStyle.Axis(AxisPosition.Bottom, "unit, in the order printed (orange where a rule is broken)"), up = ChartStyle.Axis(AxisPosition.Left, title, ruled: true);
        (across.Minimum, across.Maximum, across.MinimumMajorStep) = (0.5, count * (1.0 + RoomForLabels) + 0.5, 1.0);
        across.LabelFormatter = unit => unit <= count ? FormattableString.Invariant($"{unit:0}") : "";
        (up.Minimum, up.Maximum) = (low - room, high + room);
        sheet.Axes.Add(across);
        sheet.Axes.Add(up);
        sheet.Legends.Clear();
    }

    // Lines across the chart with their labels to the right of it, pushed apart where they would lie on each other.
    private static void Levels(PlotModel sheet, int count, params (double At, string Text, OxyColor Ink, LineStyle Style)[] levels)
    {
        double apart = LabelShare * (sheet.Axes[1].Maximum - sheet.Axes[1].Minimum), below = double.NegativeInfinity;
        foreach ((double at, string text, OxyColor ink, LineStyle style) in levels.OrderBy(l => l.At))
        {
            below = Math.Max(at, below + apart);
            sheet.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Horizontal, Y = at, Color = ink, LineStyle = style });
            sheet.Annotations.Add(new TextAnnotation
            {
                Text = text,
                TextPosition = new DataPoint(count + 0.5, below),
                Offset = new ScreenVector(10.0, -6.0),
                TextHorizontalAlignment = HorizontalAlignment.Left,
                TextVerticalAlignment = VerticalAlignment.Bottom,
                TextColor = ink,
                StrokeThickness = 0,
            });
        }
    }

    private static void Points(PlotModel sheet, IReadOnlyList<double> values, int first, HashSet<int> signals, Func<int, string> markOf)
    {
        LineSeries all = new() { Color = ChartStyle.Measured, StrokeThickness = 1, MarkerType = MarkerType.Circle, MarkerSize = 3.5, MarkerFill = ChartStyle.Measured };
        ScatterSeries broken = new() { MarkerType = MarkerType.Circle, MarkerSize = 6, MarkerFill = ChartStyle.Excess, MarkerStroke = ChartStyle.Line, MarkerStrokeThickness = 1 };
        for (int i = 0; i < values.Count; i++)
        {
            all.Points.Add(new DataPoint(i + first, values[i]));
            if (signals.Contains(i))
            {
                broken.Points.Add(new ScatterPoint(i + first, values[i]));
            }
        }

        sheet.Series.Add(all);
        sheet.Series.Add(broken);
        foreach (int i in signals.Order().Take(MostMarks))
        {
            sheet.Annotations.Add(new TextAnnotation
            {
                Text = markOf(i).Split(" (")[0],
                TextPosition = new DataPoint(i + first, values[i]),
                Offset = new ScreenVector(0.0, -9.0),
                TextColor = ChartStyle.Line,
                StrokeThickness = 0,
            });
        }
    }
}
