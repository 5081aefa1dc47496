using Dewstone.Compute.Calibration;
using OxyPlot;
using OxyPlot.Annotations;
using OxyPlot.Axes;
using OxyPlot.Series;

namespace Dewstone.Jobs.Emission.Charts;

/// <summary>Charts of a calibrated mix: residuals, measured against fitted, and where diffusivity and threshold lie together.</summary>
public static class MixCharts
{
    private const int EllipsePoints = 120;

    // Reach of a region of two figures over that of one, 95 %, many readings: sqrt(5.991)/1.960, chi squared with 2 degrees of freedom.
    private const double RegionReach = 1.2489;

    private static readonly MarkerType[] Markers =
        [MarkerType.Diamond, MarkerType.Circle, MarkerType.Square, MarkerType.Triangle, MarkerType.Circle, MarkerType.Square, MarkerType.Diamond];

    /// <summary>The charts that these data allow.</summary>
    /// <param name="found">The calibration.</param>
    /// <returns>SVG files.</returns>
    public static IReadOnlyList<EmittedFile> Emit(MixCalibration found)
    {
        ArgumentNullException.ThrowIfNull(found);
        List<EmittedFile> charts = [Residuals(found)];
        if (found.Observations.Any(one => one.Kind == MeasuredKind.BallDiameter))
        {
            charts.Add(Curve(found, "balls.svg", "Test balls", "dose, mL", [MeasuredKind.BallDiameter]));
        }

        if (found.Observations.Any(one => one.Kind == MeasuredKind.PairLength))
        {
            charts.Add(Curve(found, "pairs.svg", "Merged pairs", "spacing, mm", [MeasuredKind.PairLength, MeasuredKind.PairWaist]));
        }

        if (found.Figures[0].Fitted && found.Figures[1].Fitted)
        {
            charts.Add(Region(found));
        }

        return charts;
    }

    private static EmittedFile Residuals(MixCalibration found)
    {
        PlotModel sheet = ChartStyle.Sheet("Residuals", "measured over fitted, in the order of the tables; without a trend when the law fits");
        sheet.Axes.Add(ChartStyle.Axis(AxisPosition.Bottom, "measurement"));
        LinearAxis left = ChartStyle.Axis(AxisPosition.Left, "residual, %", ruled: true);
        double most = Math.Max(3.0, 110.0 * found.Observations.Max(one => Math.Abs(one.Residual)));
        (left.Minimum, left.Maximum) = (-most, most);
        sheet.Axes.Add(left);
        sheet.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Horizontal, Y = 0, Color = ChartStyle.Line, LineStyle = LineStyle.Solid, StrokeThickness = 1 });
        int number = 0;
        foreach (IGrouping<MeasuredKind, MixObservation> kind in found.Observations.GroupBy(one => one.Kind).OrderBy(kind => kind.Key))
        {
            if (number > 0)
            {
                sheet.Annotations.Add(new LineAnnotation { Type = LineAnnotationType.Vertical, X = number + 0.5, Color = ChartStyle.Faint, LineStyle = LineStyle.Solid });
            }

            ScatterSeries points = Points(kind.Key);
            points.Points.AddRange(kind.Select(one => new ScatterPoint(++number, 100.0 * one.Residual)));
            sheet.Series.Add(points);
        }

        return ChartStyle.Svg("residuals.svg", sheet);
    }

    private static EmittedFile Curve(MixCalibration found, string path, string title, string across, IReadOnlyList<MeasuredKind> kinds)
    {
        PlotModel sheet = ChartStyle.Sheet(title, "points: measured; lines: fitted, straight from one to the next");
        sheet.Axes.Add(ChartStyle.Axis(AxisPosition.Bottom, across));
        sheet.Axes.Add(ChartStyle.Axis(AxisPosition.Left, "mm", ruled: true));
        foreach (MeasuredKind kind in kinds)
        {
            MixObservation[] own = [.. found.Observations.Where(one => one.Kind == kind).OrderBy(one => one.At)];
            LineSeries line = new() { Color = ChartStyle.Computed, StrokeThickness = 1.5 };
            line.Points.AddRange(own.Select(one => new DataPoint(one.At, one.Fitted)));
            ScatterSeries points = Points(kind);
            points.Points.AddRange(own.Select(one => new ScatterPoint(one.At, one.Measured)));
            sheet.Series.Add(line);
            sheet.Series.Add(points);
        }

        return ChartStyle.Svg(path, sheet);
    }

    private static EmittedFile Region(MixCalibration found)
    {
        FittedFigure across = found.Figures[0], up = found.Figures[1];
        PlotModel sheet = ChartStyle.Sheet("Diffusivity and threshold together", "line: 95 % region of both; bars: 95 % interval of each alone");
        sheet.Axes.Add(ChartStyle.Axis(AxisPosition.Bottom, "diffusivity at saturation, 1e-6 m2/s", ruled: true));
        sheet.Axes.Add(ChartStyle.Axis(AxisPosition.Left, "hardening water/cement", ruled: true));
        double reachAcross = RegionReach * Math.Log(across.High / across.Value), reachUp = RegionReach * Math.Log(up.High / up.Value);
        double correlation = found.Correlations[1];
        LineSeries line = new() { Color = ChartStyle.Computed, StrokeThickness = 2 };
        for (int i = 0; i <= EllipsePoints; i++)
        {
            double angle = 2.0 * Math.PI * i / EllipsePoints, first = Math.Cos(angle);
            double second = correlation * first + Math.Sqrt(1.0 - correlation * correlation) * Math.Sin(angle);
            line.Points.Add(new DataPoint(1e6 * across.Value * Math.Exp(reachAcross * first), up.Value * Math.Exp(reachUp * second)));
        }

        LineSeries bars = new() { Color = ChartStyle.Quiet, StrokeThickness = 1.5 };
        bars.Points.AddRange([new DataPoint(1e6 * across.Low, up.Value), new DataPoint(1e6 * across.High, up.Value), DataPoint.Undefined,
            new DataPoint(1e6 * across.Value, up.Low), new DataPoint(1e6 * across.Value, up.High)]);
        sheet.Series.Add(bars);
        sheet.Series.Add(line);
        return ChartStyle.Svg("confidence.svg", sheet);
    }

    private static ScatterSeries Points(MeasuredKind kind) => new()
    {
        Title = ChartStyle.Entry(FitWords.Of(kind)),
        MarkerType = Markers[(int)kind],
        MarkerSize = 4,
        MarkerFill = (int)kind % 2 == 0 ? ChartStyle.Measured : ChartStyle.Excess,
        MarkerStroke = ChartStyle.Line,
        MarkerStrokeThickness = 0.5,
    };
}
