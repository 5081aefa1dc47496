using Dewstone.Compute.Numerics;
using Dewstone.Compute.Survey;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Charts;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Pictures.Plates;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>Pictures, charts and surfaces of a survey.</summary>
internal static class SurveyFiles
{
    private const int WorstLayers = 3;
    private const double LeastLitres = 0.005;

    // Points strewn at random leave gaps of about this many mean distances.
    private const double SpacingPerMean = 1.5;

    /// <summary>Plates of the layers that differ most as run.</summary>
    /// <param name="job">The job.</param>
    /// <param name="run">What differs.</param>
    /// <param name="asRun">The solid as run.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <returns>The files, from the lowest layer.</returns>
    public static IReadOnlyList<EmittedFile> Plates(SurveyedJob job, RunSurveyResult run, JudgedSolid asRun, Parallelism parallelism)
    {
        int[] worst = [.. run.Layers.Where(l => l.Litres >= LeastLitres).OrderByDescending(l => l.Litres).Take(WorstLayers).Select(l => l.Layer).Order()];
        if (worst.Length == 0)
        {
            return [];
        }

        CompiledJob printed = SimulatedJob.Of(job.Core, run.Log.Delivered!, job.Target, asRun.Prediction, job.Manifest.ToolVersion);
        PlateSubject subject = new(printed, HardenedSurface.Of(printed.Moisture, printed.Description.Mix.Wetting, parallelism));
        return [.. worst.Select(layer => new EmittedFile($"as-run/layer-{layer:000}.png", PngFile.Write(PlateEmitter.Draw(subject, layer - 1))))];
    }

    /// <summary>Charts of the weights.</summary>
    /// <param name="job">The job.</param>
    /// <param name="weights">What they say.</param>
    /// <returns>The files.</returns>
    public static IReadOnlyList<EmittedFile> Charts(SurveyedJob job, WeightsReport weights) => WeightsChart.Emit(job.Manifest.Name, weights);

    /// <summary>Picture and surface of a scan.</summary>
    /// <param name="job">The job.</param>
    /// <param name="scan">The scan where it lies.</param>
    /// <param name="body">The surface it lies on.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <returns>The files.</returns>
    public static IReadOnlyList<EmittedFile> Deviation(SurveyedJob job, ScanSurveyResult scan, PredictedBody body, Parallelism parallelism)
    {
        // A scan coarser than it is thinned to has its points as far apart as the surface's area leaves them.
        double spacing = Math.Max(ScanSurvey.Spacing(job), SpacingPerMean * Math.Sqrt(body.Outside.SquareMetres / scan.Deviation.Points.Count));
        return
        [
            DeviationPicture.Emit(job.Manifest.Name, job.Core.Placement.UnitBox, scan, spacing),
            DeviationSurface.Emit(body, scan.Deviation, spacing, job.Manifest.ToolVersion, parallelism),
        ];
    }
}
