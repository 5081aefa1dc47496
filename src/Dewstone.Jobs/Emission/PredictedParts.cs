using Dewstone.Compute.Numerics;
using Dewstone.Jobs.Emission.Pictures;
using Dewstone.Jobs.Emission.Report;
using Dewstone.Jobs.Emission.Surfaces;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>Files and parts of files that need no judgement of the predicted solid. Each is made once, by whoever asks for it first; others wait for it.</summary>
internal sealed class PredictedParts
{
    private readonly Lazy<IReadOnlyList<EmittedFile>> surfaces, pictures, plates;
    private readonly Lazy<ReportFields> fields;
    private readonly Lazy<EmittedFile> moisture;

    /// <summary>The parts of a job; none is made yet.</summary>
    /// <param name="job">The job.</param>
    /// <param name="parallelism">Threads; no byte depends on them.</param>
    /// <param name="ready">Told surfaces and pictures as soon as each is made, from any thread.</param>
    /// <param name="cancellation">Looked at between files.</param>
    public PredictedParts(PredictedJob job, Parallelism parallelism, Action<EmittedFile> ready, CancellationToken cancellation)
    {
        Lazy<HardenedSurface> surface = new(() => HardenedSurface.Of(job.Moisture, job.Description.Mix.Wetting, parallelism));
        surfaces = new(() => SurfaceSet.Emit(job, surface.Value, parallelism, cancellation, ready));
        pictures = new(() => PictureSet.OfUnit(job, surface.Value, parallelism, cancellation, ready));
        plates = new(() => PictureSet.Plates(job, surface.Value, parallelism, cancellation, ready));
        fields = new(() => ReportFields.Of(job, surface.Value, parallelism));
        moisture = new(() => PredictedFieldEmitter.Emit(job.Moisture, parallelism, cancellation));
    }

    /// <summary>Surfaces of the wanted and the predicted solid.</summary>
    public IReadOnlyList<EmittedFile> Surfaces => surfaces.Value;

    /// <summary>Pictures of the whole unit.</summary>
    public IReadOnlyList<EmittedFile> Pictures => pictures.Value;

    /// <summary>A picture of each layer.</summary>
    public IReadOnlyList<EmittedFile> Plates => plates.Value;

    /// <summary>The heavy parts of the report.</summary>
    public ReportFields Fields => fields.Value;

    /// <summary>The predicted moisture.</summary>
    public EmittedFile Moisture => moisture.Value;

    /// <summary>Makes them one after the other.</summary>
    /// <exception cref="OperationCanceledException">Cancelled.</exception>
    public void MakeAll() => _ = (Surfaces, Pictures, Fields, Plates, Moisture);
}
