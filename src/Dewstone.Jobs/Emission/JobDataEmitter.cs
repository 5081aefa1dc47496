using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>Writes all data files of a job, one emitter after the other.</summary>
public static class JobDataEmitter
{
    /// <summary>The data files of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="settings">What is needed beside it.</param>
    /// <param name="cancellationToken">Looked at between files.</param>
    /// <returns>Files and fingerprints.</returns>
    public static JobData Emit(CompiledJob job, EmissionSettings settings, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(settings);
        return Emit(job, settings, PredictedFieldEmitter.Emit(job.Moisture, settings.Parallelism, cancellationToken), cancellationToken);
    }

    /// <summary>The same around a predicted field that was written before.</summary>
    internal static JobData Emit(CompiledJob job, EmissionSettings settings, EmittedFile predictedField, CancellationToken cancellationToken)
    {
        JobTables tables = JobTables.Of(job.Description, job.Doses, job.Timeline, settings.Addressing);
        EmittedFile core = JobCoreEmitter.Emit(job, settings.Wetting, tables);
        cancellationToken.ThrowIfCancellationRequested();

        List<EmittedFile> files = [core];
        if (!job.Held)
        {
            files.AddRange(tables.Doses);
            files.AddRange(tables.Delivered);
            files.Add(tables.Sequence);
        }

        files.Add(EstimateEmitter.Emit(job.Estimate, job.Description.Bin.Count == 0 ? job.Dosing : null));
        files.Add(FindingsEmitter.Emit(job.Findings, job.ToolVersion, settings.NameOfFile));
        files.Add(predictedField);
        if (settings.RawField)
        {
            files.Add(RawFieldEmitter.Emit(job.Moisture, settings.Parallelism, cancellationToken));
        }

        if (job.Sea is { } sea)
        {
            files.Add(StabilityEmitter.Emit(sea));
        }

        if (job.Trials is { } trials)
        {
            files.AddRange(TrialsEmitter.Emit(trials, settings.Parallelism, cancellationToken));
        }

        return new JobData(files, Fingerprint.Of(core.Bytes.Span), JobCoreEmitter.DesignOf(job.Description));
    }
}
