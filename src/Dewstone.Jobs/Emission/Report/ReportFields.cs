using Dewstone.Compute.Geometry;
using Dewstone.Compute.Inspection;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>The heavy parts of a page, which need neither pictures nor fingerprints and so can be made beside them.</summary>
/// <param name="Predicted">The predicted solid, thinned out.</param>
/// <param name="Wanted">The wanted solid, thinned out.</param>
/// <param name="Plates">Both solids for the plates.</param>
internal sealed record ReportFields(PredictedSurface Predicted, UnitSurface Wanted, PlateField Plates)
{
    private const int PredictedToThin = 200_000, WantedToThin = 100_000;

    /// <summary>The parts of a job's page.</summary>
    /// <param name="job">The job.</param>
    /// <param name="surface">Its predicted solid.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <returns>The parts.</returns>
    public static ReportFields Of(CompiledJob job, HardenedSurface surface, Parallelism parallelism)
    {
        ReefShape shape = ReefShapeBuilder.Build(job.Description.Unit).Shape;
        CellGrid grid = job.Moisture.Grid;
        PredictedSurface predicted = PredictedSurface.Of(ThinSurface.Of(surface.Level, grid, 0f, PredictedToThin, parallelism), job, shape, parallelism);
        UnitSurface wanted = UnitSurface.Of(
            ThinSurface.Of(job.Target.Fraction, grid, 0.5f, WantedToThin, parallelism), grid, job.Placement, parallelism);
        return new ReportFields(predicted, wanted, PlateField.Of(job, surface, parallelism));
    }
}
