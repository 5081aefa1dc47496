using Dewstone.Compute.Geometry;
using Dewstone.Compute.Survey;
using Dewstone.Jobs.Compilation;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Surveys;

/// <summary>Which change of the hardening threshold or of the diffusivity would explain a scan best, one at a time.</summary>
/// <remarks>
/// The doses are predicted at 4 cells a voxel with the figures as they are and with each changed one; what the change does to the distance of a point of the
/// scan is added to its deviation at the job's own cells, so that coarse cells favour no figure. Compared are mean distances, a point counting 30 mm at most.
/// A change is told when it takes off a tenth at least and the distance is above 2 mm before it.
/// </remarks>
internal static class SuggestionSearch
{
    private const int Cells = 4;
    private const int MostPoints = 8000;
    private const double MostMetres = 0.03;
    private const double LeastMetres = 0.002;
    private const double Gain = 0.9;

    private static readonly double[] Thresholds = [0.85, 0.9, 0.95, 1.05, 1.1, 1.15];
    private static readonly double[] Diffusivities = [0.6, 0.75, 0.87, 1.15, 1.33, 1.67];

    /// <summary>Searches.</summary>
    /// <param name="job">The job.</param>
    /// <param name="doses">Doses, as run where that is known.</param>
    /// <param name="asRun">Times as run; null for those planned.</param>
    /// <param name="deviation">The scan where it lies.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The best of each figure that helps, the better first.</returns>
    public static IReadOnlyList<Suggestion> Run(
        SurveyedJob job, DosePlan doses, DoseSchedule? asRun, ScanDeviation deviation, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        CellGrid grid = CellGrid.Over(job.Core.Lattice, Cells);
        TargetField target = Voxelizer.Voxelize(job.Shape, job.Core.Placement, grid, parallelism, null, cancellation);
        int taken = Math.Min(deviation.Points.Count, MostPoints);
        int[] sample = [.. Enumerable.Range(0, taken).Select(i => (int)((long)i * deviation.Points.Count / taken))];
        double before = sample.Sum(i => Math.Min(MostMetres, Math.Abs(deviation.Metres[i]))) / taken;
        DryMix mix = job.Description.Mix;
        int done = 0;
        if (before < LeastMetres || Distances(mix) is not { } asIs)
        {
            return [];
        }

        Suggestion threshold = Best(Thresholds, f => new Suggestion(
            "hardening.water_cement", f, mix.Hardening.WaterCement * f, "1", before, Misfit(mix with { Hardening = mix.Hardening with { WaterCement = mix.Hardening.WaterCement * f } })));
        Suggestion diffusivity = Best(Diffusivities, f =>
        {
            Diffusivity changed = new(mix.Wetting.AtSaturation.SquareMetresPerSecond * f);
            return new Suggestion("wetting.diffusivity", f, changed.SquareMetresPerSecond, "m2/s", before, Misfit(mix with { Wetting = mix.Wetting with { AtSaturation = changed } }));
        });
        return [.. new[] { threshold, diffusivity }.Where(s => s.AfterMetres <= Gain * before).OrderBy(s => s.AfterMetres)];

        double Misfit(DryMix changed) => Distances(changed) is not { } distances
            ? MostMetres
            : sample.Select((point, i) => Math.Min(MostMetres, Math.Abs(deviation.Metres[point] + distances[i] - asIs[i]))).Sum() / taken;

        double[]? Distances(DryMix changed)
        {
            progress?.Report(new Progress("other figures", done++ / (double)(Thresholds.Length + Diffusivities.Length + 1)));
            MoistureResult moisture = Prediction.Of(job.Description with { Mix = changed }, doses, target, parallelism, null, cancellation, asRun).Moisture;
            if (PredictedBody.Of(job.Core.Placement, moisture, changed.Wetting, parallelism) is not { } body)
            {
                return null;
            }

            double[] metres = new double[taken];
            Parallel.For(
                0, taken, new ParallelOptions { MaxDegreeOfParallelism = parallelism.Threads, CancellationToken = cancellation },
                i => metres[i] = body.Surface.Deviation(deviation.Points[sample[i]]));
            return metres;
        }
    }

    private static Suggestion Best(double[] factors, Func<double, Suggestion> tryOut) => factors.Select(tryOut).ToArray().MinBy(s => s.AfterMetres);
}
