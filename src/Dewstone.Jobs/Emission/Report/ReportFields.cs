using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Pictures.Views;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The heavy parts of a page, which need no judgement, pictures or fingerprints and so can be made beside them.</summary>
/// <param name="Predicted">The predicted solid, thinned out.</param>
/// <param name="Wanted">The wanted solid, thinned out.</param>
/// <param name="Voids">The voids within the predicted solid, thinned out.</param>
/// <param name="Plates">Both solids for the plates.</param>
internal sealed record ReportFields(PredictedSurface Predicted, UnitSurface Wanted, UnitSurface Voids, PlateField Plates)
{
    private const int PredictedToThin = 200_000, OthersToThin = 100_000;

    /// <summary>The parts of a job's page.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surface">Its predicted solid.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <returns>The parts.</returns>
    public static ReportFields Of(PredictedJob job, HardenedSurface surface, Parallelism parallelism)
    {
        ReefShape shape = ReefShapeBuilder.Build(job.Description.Unit).Shape;
        CellGrid grid = job.Moisture.Grid;
        UnitSurface Thin(float[] values, float level) =>
            UnitSurface.Of(ThinSurface.Of(values, grid, level, OthersToThin, parallelism), grid, job.Placement, parallelism);
        PredictedSurface predicted = PredictedSurface.Of(ThinSurface.Of(surface.Level, grid, 0f, PredictedToThin, parallelism), job, shape, parallelism);
        UnitSurface wanted = Thin(job.Target.Fraction, 0.5f), voids = Thin(VoidsLevel.Of(surface.Level, grid, job.Placement, parallelism), 0f);
        return new ReportFields(predicted, wanted, voids, PlateField.Of(job, surface, parallelism));
    }
}
