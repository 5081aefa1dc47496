using System.Globalization;
using System.Text.Json;
using Dewstone.Compute.Geometry;
using Dewstone.Jobs.Compilation;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Files;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Verification;

/// <summary>Simulates a job again from its description and tables alone, and holds what comes out against what the folder claims.</summary>
internal static class ReplayCheck
{
    /// <summary>Checks a job.</summary>
    /// <param name="job">Core and doses as read.</param>
    /// <param name="manifest">Its manifest.</param>
    /// <param name="parallelism">Threads.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>DW8205 to DW8209.</returns>
    public static IReadOnlyList<Diagnostic> Check(
        EarlierJob job, Manifest manifest, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        List<Diagnostic> found = [];
        JobCore core = job.Core;
        string coreName = Fingerprint.Of(job.CoreBytes.Span).ToString(), designName = JobCoreEmitter.DesignOf(core.Description).ToString();
        if (coreName != manifest.JobFingerprint)
        {
            Report(VerifyFindings.FingerprintDiffers, ManifestEmitter.Path, $"the manifest calls the job {manifest.JobFingerprint}; {JobCoreEmitter.Path} gives {coreName}");
        }

        if (designName != manifest.DesignFingerprint)
        {
            Report(VerifyFindings.FingerprintDiffers, ManifestEmitter.Path, $"the manifest calls the design {manifest.DesignFingerprint}; {JobCoreEmitter.Path} gives {designName}");
        }

        CompiledJob replay = Replay(job, manifest, parallelism, progress, cancellation);
        EmissionSettings settings = JobFiles.Settings(replay, file => file, rawField: false, parallelism);
        JobTables tables = JobTables.Of(core.Description, job.Doses, replay.Timeline, settings.Addressing);
        foreach (EmittedFile table in tables.Doses.Concat(tables.Delivered).Where(t => !Same(t)))
        {
            Report(VerifyFindings.TotalsDiffer, table.RelativePath, $"`{table.RelativePath}` names other needles, channels or volumes than its positions and steps give");
        }

        if (!Same(tables.Sequence))
        {
            Report(VerifyFindings.SequenceDiffers, SequenceEmitter.Path, "the machine's steps made again from the dose tables are others");
        }

        if (!JobCoreEmitter.Emit(replay, settings.Wetting, tables).Bytes.Span.SequenceEqual(job.CoreBytes.Span))
        {
            Report(VerifyFindings.CoreDiffers, JobCoreEmitter.Path, $"{JobCoreEmitter.Path} made again from its own description and the tables is another");
        }

        CheckField(replay);
        CheckTotals(replay);
        return found;

        bool Same(EmittedFile file) =>
            File.Exists(Path.Combine(job.Folder, file.RelativePath)) && WholeFile.Read(Path.Combine(job.Folder, file.RelativePath)).AsSpan().SequenceEqual(file.Bytes.Span);

        void Report(FindingKind kind, string file, string message) =>
            found.Add(kind.At(message, "fetch an untouched copy of the job, or compile it again", location: new SourceLocation(Path.Combine(job.Folder, file), 0, 0)));

        void CheckField(CompiledJob again)
        {
            byte[] bytes = WholeFile.Read(Path.Combine(job.Folder, PredictedFieldEmitter.Path));
            EmittedFile made = PredictedFieldEmitter.Emit(again.Moisture, parallelism, cancellation);
            if (bytes.AsSpan().SequenceEqual(made.Bytes.Span))
            {
                return;
            }

            string differs = VtiReader.TryRead(bytes, out FieldImage? image, out string fault) && image?.Find<byte>(PredictedFieldEmitter.Hardened) is { } hardened
                ? hardened.Length == again.Moisture.Hardened.Length
                    ? $"{hardened.Zip(again.Moisture.Hardened).Count(c => c.First != c.Second)} of {hardened.Length} cells harden otherwise"
                    : $"it has {hardened.Length} cells, the job {again.Moisture.Hardened.Length}"
                : fault;
            Report(VerifyFindings.SolidDiffers, PredictedFieldEmitter.Path, $"the solid simulated again from the dose tables is another: {differs}");
        }

        void CheckTotals(CompiledJob again)
        {
            using JsonDocument made = JsonDocument.Parse(CanonicalJson.Compact(json => TotalsJson.Write(json, again)));
            foreach ((string name, double? claimed) in manifest.Totals)
            {
                double? value = made.RootElement.TryGetProperty(name, out JsonElement figure) && figure.ValueKind == JsonValueKind.Number ? figure.GetDouble() : null;
                if (value != claimed)
                {
                    Report(
                        VerifyFindings.TotalsDiffer, ManifestEmitter.Path,
                        string.Create(CultureInfo.InvariantCulture, $"the manifest claims {name} {claimed}; simulated again from the tables it is {value}"));
                }
            }
        }
    }

    private static CompiledJob Replay(EarlierJob job, Manifest manifest, Parallelism parallelism, IProgress<Progress>? progress, CancellationToken cancellation)
    {
        JobCore core = job.Core;
        TargetField target = WantedSolid.Voxelize(core.Description, core.Placement, core.Cells, parallelism, progress, cancellation);
        Prediction predicted = Prediction.Of(core.Description, job.Doses, target, parallelism, progress, cancellation);
        return SimulatedJob.Of(core, job.Doses, target, predicted, manifest.ToolVersion);
    }
}
