using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;

namespace Dewstone.Compute.Calibration;

/// <summary>Weighings of needles to gain, offset, repeatability and state of each.</summary>
/// <remarks>
/// Weights become volumes by <see cref="WaterVolume"/>. The errors of a needle are taken as a share of its dose, as the printer's file states them, so
/// delivered/asked = gain + offset/asked is fitted as a straight line in 1/asked; with one dose only, or fewer than four readings, the gain alone, as the mean of
/// delivered/asked. Outliers: Grubbs' test on the residuals, at most two a needle, never below three readings. Do not use it for a needle whose flow
/// itself changes with the dose, such as one that drips after, nor for doses far below those weighed, where the offset decides.
/// </remarks>
public static class NeedleCalibrator
{
    /// <summary>Calibrates.</summary>
    /// <param name="readings">Readings of any needles in any order.</param>
    /// <param name="previous">The needles as last checked; null for none.</param>
    /// <param name="file">File of the readings as shown in findings.</param>
    /// <returns>Fits, table, advice and findings.</returns>
    public static HeadCalibration Calibrate(IReadOnlyList<NeedleReading> readings, NeedleTable? previous, string file)
    {
        ArgumentNullException.ThrowIfNull(readings);
        Dictionary<(int, int), NeedleState> before = (previous?.Needles ?? []).ToDictionary(needle => (needle.Column, needle.Row));
        List<NeedleFit> fits = [];
        List<Diagnostic> findings = [];
        foreach (IGrouping<(int Row, int Column), NeedleReading> own in readings.GroupBy(r => (r.Row, r.Column)).OrderBy(own => own.Key))
        {
            NeedleFit fit = Fit([.. own], before.GetValueOrDefault((own.Key.Column, own.Key.Row)));
            fits.Add(fit);
            findings.AddRange(NeedleNotes.Findings(fit, file, own.First().Line));
        }

        HashSet<(int, int)> renewed = [.. fits.Select(fit => (fit.State.Column, fit.State.Row))];
        IEnumerable<NeedleState> kept = (previous?.Needles ?? []).Where(needle => !renewed.Contains((needle.Column, needle.Row)));
        NeedleTable table = new() { Needles = [.. fits.Select(fit => fit.State).Concat(kept).OrderBy(needle => (needle.Row, needle.Column))] };
        return new HeadCalibration(fits, table, NeedleNotes.Advice(fits), [.. findings.OrderBy(finding => finding.Location!.Line)]);
    }

    private static NeedleFit Fit(IReadOnlyList<NeedleReading> readings, NeedleState? before)
    {
        List<NeedleReading> used = [.. readings];
        List<NeedleReading> outliers = [];
        LineFit line = Line(used);
        while (used.Count > NeedleRules.FewestReadings && outliers.Count < NeedleRules.MostOutliers
            && GrubbsTest.Outlier([.. used.Select(reading => Ratio(reading) - line.At(1.0 / reading.AskedMillilitres))], NeedleRules.OutlierLevel) is { } index)
        {
            outliers.Add(used[index]);
            used.RemoveAt(index);
            line = Line(used);
        }

        double inverse = used.Average(reading => 1.0 / reading.AskedMillilitres), deviation = line.At(inverse) - 1.0;
        double? drift = before is { Condition: not NeedleCondition.Blocked } ? line.At(inverse) / (before.Gain + before.OffsetMillilitres * inverse) - 1.0 : null;
        bool free = line.DegreesOfFreedom > 0;
        double t = free ? StudentQuantile.TwoSided(line.DegreesOfFreedom) : 0.0;
        double repeatability = line.ResidualDeviation;
        bool blocked = line.At(inverse) < NeedleRules.BlockedShare;
        IReadOnlyList<string> reasons = NeedleNotes.Reasons(blocked, used.Count, deviation, free ? repeatability : null, drift);
        NeedleReading first = readings[0];
        return new NeedleFit
        {
            State = new NeedleState
            {
                Column = first.Column,
                Row = first.Row,
                Board = first.Board.Length > 0 ? first.Board : before?.Board ?? "",
                Channel = first.Channel.Length > 0 ? first.Channel : before?.Channel ?? "",
                Condition = blocked ? NeedleCondition.Blocked : reasons.Count > 0 ? NeedleCondition.Limited : NeedleCondition.Ok,
                Gain = blocked ? 1.0 : line.Intercept,
                OffsetMillilitres = blocked ? 0.0 : line.Slope,
                Flow = before?.Flow,
                Repeatability = free && !blocked ? Math.Min(repeatability, 0.5) : null,
            },
            Used = used.Count,
            Outliers = outliers,
            GainHalfWidth = free ? t * line.InterceptError : null,
            OffsetHalfWidth = free && line.SlopeError > 0.0 ? t * line.SlopeError : null,
            MiddleMillilitres = 1.0 / inverse,
            Deviation = deviation,
            DeviationHalfWidth = free ? t * line.ErrorAt(inverse) : null,
            Drift = drift,
            Reasons = reasons,
        };
    }

    private static LineFit Line(List<NeedleReading> readings)
    {
        double[] ratios = [.. readings.Select(Ratio)];
        double[] inverses = [.. readings.Select(reading => 1.0 / reading.AskedMillilitres)];
        bool spread = inverses.Max() >= NeedleRules.LeastDoseRange * inverses.Min() && readings.Count > NeedleRules.FewestReadings;
        return spread ? LineFit.Of(inverses, ratios) : LineFit.Level(ratios);
    }

    private static double Ratio(NeedleReading reading) =>
        reading.WeighedGrams * WaterVolume.MillilitresPerGram(reading.WaterCelsius, reading.AirHectopascals) / reading.AskedMillilitres;
}
