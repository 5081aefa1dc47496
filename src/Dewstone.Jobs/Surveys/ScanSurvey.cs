using Dewstone.Compute.Survey;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>A scan of the unit laid on the solid predicted from the doses, as run where that is known.</summary>
internal static class ScanSurvey
{
    private const int LeastPoints = 200;
    private const double SmallestSize = 0.4;
    private const double LargestSize = 2.5;
    private const double LeastNearShare = 0.5;
    private const double LimitMetres = 0.015;
    private const double LimitShare = 0.05;
    private const int PlacesTold = 5;

    /// <summary>Runs.</summary>
    /// <param name="job">The job.</param>
    /// <param name="solid">Its solid, as run where that is known.</param>
    /// <param name="doses">Doses of that solid.</param>
    /// <param name="asRun">Times as run; null for those planned.</param>
    /// <param name="scan">The scan.</param>
    /// <param name="file">Its file.</param>
    /// <param name="findings">Takes DW3087 to DW3089 and DW8353.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The result with the surface it was laid on; null when the scan cannot be of the unit.</returns>
    public static (ScanSurveyResult Result, PredictedBody Body)? Run(
        SurveyedJob job, JudgedSolid solid, DosePlan doses, DoseSchedule? asRun, UnitScan scan, string file, DiagnosticBag findings, Parallelism parallelism,
        IProgress<Progress>? progress, CancellationToken cancellation)
    {
        SourceLocation place = new(file, 0, 0);
        if (Unfit(job, scan) is { } unfit)
        {
            findings.Add(SurveyFileFindings.ScanUnfit.At(unfit, "check that it is of this unit, in millimetres, without ground and fork lift", location: place));
            return null;
        }

        progress?.Report(new Progress("scan", 0.0));
        float[] points = ScanPoints.Of(scan, Spacing(job));
        if (PredictedBody.Of(job.Core.Placement, solid.Prediction.Moisture, job.Description.Mix.Wetting, parallelism) is not { } body)
        {
            findings.Add(SurveyFindings.ScanDoubtful.At("nothing hardens by the prediction, so there is nothing to lay the scan on", "see the findings of the run log", location: place));
            return null;
        }

        ScanRegistration registration = ScanRegistrar.Register(points, body.Surface, cancellation);
        ScanDeviation? deviation = ScanDeviation.Measure(points, registration.Motion, body.Surface, parallelism);
        bool lies = deviation is not null && registration.NearShare >= LeastNearShare && registration.RootMeanSquareMetres <= LimitMetres;
        if (!lies)
        {
            findings.Add(SurveyFindings.ScanDoubtful.At(
                FormattableString.Invariant($"{100.0 * registration.NearShare:0} % of the scan lies within 15 mm of the prediction, {1000.0 * registration.RootMeanSquareMetres:0.0} mm off at most places"),
                "check that it is of this unit and in millimetres, and cut away what is not the unit", location: place));
        }

        if (deviation is null)
        {
            return null;
        }

        IReadOnlyList<Suggestion> suggestions = lies ? SuggestionSearch.Run(job, doses, asRun, deviation, parallelism, progress, cancellation) : [];
        findings.AddRange(lies ? [.. Deviates(deviation, place), .. suggestions.Take(1).Select(s => Suggested(s, place))] : Array.Empty<Diagnostic>());
        return (new ScanSurveyResult
        {
            Registration = registration,
            Deviation = deviation,
            PredictedCubicMetres = body.Outside.CubicMetres,
            ScannedCubicMetres = ClosedVolume.Of(scan),
            Suggestions = suggestions,
            Lies = lies,
        }, body);
    }

    /// <summary>Distance to which the points of a scan are thinned: half a cell of the job.</summary>
    /// <param name="job">The job.</param>
    /// <returns>Metres.</returns>
    public static double Spacing(SurveyedJob job) => job.Core.Cells.CellMetres / 2.0;

    private static string? Unfit(SurveyedJob job, UnitScan scan)
    {
        if (scan.Count < LeastPoints)
        {
            return $"{scan.Count} points are too few, {LeastPoints} are needed";
        }

        float[] p = scan.Positions;
        Point3 low = new(p[0], p[1], p[2]), high = low;
        for (int i = 0; i < p.Length; i += 3)
        {
            low = new Point3(Math.Min(low.X, p[i]), Math.Min(low.Y, p[i + 1]), Math.Min(low.Z, p[i + 2]));
            high = new Point3(Math.Max(high.X, p[i]), Math.Max(high.Y, p[i + 1]), Math.Max(high.Z, p[i + 2]));
        }

        Size3 box = job.Core.Placement.UnitBox;
        double diagonal = new Point3(box.X, box.Y, box.Z).Norm, size = (high - low).Norm;
        return size >= SmallestSize * diagonal && size <= LargestSize * diagonal
            ? null
            : FormattableString.Invariant($"it is {1000.0 * size:0.###} mm from corner to corner, the unit {1000.0 * diagonal:0} mm");
    }

    private static IEnumerable<Diagnostic> Deviates(ScanDeviation deviation, SourceLocation file)
    {
        foreach (DeviatingPlace place in deviation.Places.Take(PlacesTold))
        {
            Point3 p = place.Where * 1000.0;
            yield return SurveyFindings.ScanDeviates.At(
                FormattableString.Invariant($"{Math.Abs(1000.0 * place.MeanMetres):0.0} mm too {(place.MeanMetres > 0.0 ? "much" : "little")} about ({p.X:0}, {p.Y:0}, {p.Z:0}) mm"),
                "look at the place; brush it and scan again where loose mix sticks", location: file) with
            { Where = place.Where };
        }

        double beyond = deviation.ShareBeyond(LimitMetres);
        if (beyond > LimitShare)
        {
            yield return SurveyFindings.ScanDeviates.At(
                FormattableString.Invariant($"{100.0 * beyond:0.#} % of the scan deviates by more than 15 mm, on the whole by {1000.0 * deviation.Mean:+0.0;-0.0} mm"), "see the picture of the deviation", location: file);
        }
    }

    private static Diagnostic Suggested(Suggestion s, SourceLocation file) => SurveyFindings.Suggestion.At(
        FormattableString.Invariant($"with {s.Figure} at {s.Value:G3}{(s.Unit == "1" ? "" : " " + s.Unit)} ({s.Factor:0.##} times) the scan would lie {1000.0 * s.AfterMetres:0.0} mm off on average instead of {1000.0 * s.BeforeMetres:0.0} mm"),
        "nothing was changed; test the mix before its file is", location: file);
}
