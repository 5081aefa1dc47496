using System.Text.Json;
using Dewstone.Compute.Geometry;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Jobs.Folders;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Files;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Comparison;

/// <summary>Makes sides of a comparison.</summary>
public static class ComparedJobs
{
    /// <summary>A job compiled just now.</summary>
    /// <param name="job">The job.</param>
    /// <param name="label">What it is called.</param>
    /// <param name="parallelism">Threads.</param>
    /// <returns>The side.</returns>
    public static ComparedJob Of(CompiledJob job, string label, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(job);
        EmissionSettings settings = JobFiles.Settings(job, file => file, rawField: false, parallelism);
        EmittedFile core = JobCoreEmitter.Emit(job, settings.Wetting, JobTables.Of(job.Description, job.Doses, job.Timeline, settings.Addressing));
        return new ComparedJob
        {
            Label = label,
            JobFingerprint = Fingerprint.Of(core.Bytes.Span).ToString(),
            DesignFingerprint = JobCoreEmitter.DesignOf(job.Description.Unit).ToString(),
            Held = job.Held,
            Description = job.Description,
            Placement = job.Placement,
            Lattice = job.Lattice,
            Cells = job.Moisture.Grid,
            Target = job.Target.Fraction,
            Hardened = job.Moisture.Hardened,
            Doses = job.Doses,
            Findings = [.. job.Findings.Select(f => new ComparedFinding(f.Code, LevelOf(f.Severity), f.Message, f.AcceptedBecause is not null))],
            Requirements =
            [
                .. job.Requirements.Select(r => new ClaimedRequirement(
                    r.Id, r.Feature, r.Quantity, r.Op, Six(r.Limit), Six(r.Value), Six(r.Margin), r.Unit, r.Met)),
            ],
            Figures =
            [
                .. Figures(CanonicalJson.Compact(json => TotalsJson.Write(json, job)), EstimateEmitter.Emit(job.Estimate, job.Dosing).Bytes),
                .. ReportedFigures.Of(CanonicalJson.Compact(json => ReportedFigures.Write(json, job))),
            ],
        };
    }

    /// <summary>Whether two descriptions are the same to the last figure and name, so that one side can stand for both.</summary>
    /// <param name="one">A description.</param>
    /// <param name="other">Another.</param>
    /// <returns>True when they are.</returns>
    public static bool AreSame(JobDescription one, JobDescription other) =>
        CanonicalJson.Compact(json => JobCoreEmitter.Write(json, one)).AsSpan().SequenceEqual(CanonicalJson.Compact(json => JobCoreEmitter.Write(json, other)));

    /// <summary>A job folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="parallelism">Threads.</param>
    /// <param name="findings">Takes DW8109 or DW8110 when it cannot be read.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The side; null with a finding.</returns>
    public static ComparedJob? Read(string folder, Parallelism parallelism, DiagnosticBag findings, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(findings);
        findings.AddRange(JobFolderRecovery.PutBack(folder));
        try
        {
            string fault = "";
            if (!JobFolder.IsJobFolder(folder))
            {
                findings.Add(JobFolderFindings.NoSuchJob.At($"`{folder}` is no job folder", "name a folder that `dewstone compile` wrote, or a unit's file", location: At()));
                return null;
            }

            byte[] coreBytes = WholeFile.Read(Path.Combine(folder, JobCoreEmitter.Path)), manifestBytes = WholeFile.Read(Path.Combine(folder, ManifestEmitter.Path));
            if (!ManifestReader.TryRead(manifestBytes, out Manifest? manifest, out fault) ||
                !JobCoreReader.TryRead(coreBytes, out JobCore? core, out fault) ||
                !VtiReader.TryRead(WholeFile.Read(Path.Combine(folder, PredictedFieldEmitter.Path)), out FieldImage? field, out fault))
            {
                return Damaged(fault);
            }

            DosePlan? doses = null;
            if (!manifest!.Held && (doses = EarlierJobReader.Read(folder, findings, bins: true)?.Doses) is null)
            {
                return null;
            }

            byte[] hardened = field!.Find<byte>(PredictedFieldEmitter.Hardened) ?? [];
            if (hardened.Length != core!.Cells.Count)
            {
                return Damaged($"{PredictedFieldEmitter.Path} has {hardened.Length} cells, {JobCoreEmitter.Path} {core.Cells.Count}");
            }

            return new ComparedJob
            {
                Label = folder,
                JobFingerprint = Fingerprint.Of(coreBytes).ToString(),
                DesignFingerprint = JobCoreEmitter.DesignOf(core.Description).ToString(),
                Held = manifest.Held,
                Description = core.Description,
                Placement = core.Placement,
                Lattice = core.Lattice,
                Cells = core.Cells,
                Target = WantedSolid.Voxelize(core.Description, core.Placement, core.Cells, parallelism, null, cancellation).Fraction,
                Hardened = hardened,
                Doses = doses,
                Findings = Findings(WholeFile.Read(Path.Combine(folder, FindingsEmitter.Path))),
                Requirements = manifest.Requirements,
                Figures =
                [
                    .. Figures(
                        CanonicalJson.Compact(json =>
                        {
                            foreach ((string name, double? value) in manifest.Totals)
                            {
                                json.Number(name, value);
                            }
                        }),
                        WholeFile.Read(Path.Combine(folder, EstimateEmitter.Path))),
                    .. ReportedFigures.Of(manifestBytes),
                ],
            };
        }
        catch (Exception broken) when (DiskFaults.IsDiskFault(broken) || broken is JsonException or InvalidOperationException or KeyNotFoundException)
        {
            return Damaged(broken.Message.ReplaceLineEndings(" ").TrimEnd('.'));
        }

        SourceLocation At() => new(folder, 0, 0);

        ComparedJob? Damaged(string fault)
        {
            findings.Add(JobFolderFindings.Damaged.At($"the job `{folder}` cannot be read: {fault}", "compile it again, or name another job", location: At()));
            return null;
        }
    }

    private static List<(string Name, double? Value)> Figures(ReadOnlyMemory<byte> totals, ReadOnlyMemory<byte> estimate)
    {
        using JsonDocument all = JsonDocument.Parse(totals), costs = SoundJson.Parse(estimate);
        List<(string Name, double? Value)> figures =
        [
            .. all.RootElement.EnumerateObject().Select(f => (f.Name, f.Value.ValueKind == JsonValueKind.Number ? f.Value.GetDouble() : (double?)null)),
        ];
        figures.Add(("co2_kg", costs.RootElement.GetProperty("co2_kg").GetDouble()));
        figures.Add(("cost", costs.RootElement.GetProperty("cost").GetProperty("amount").GetDouble()));
        return figures;
    }

    private static IReadOnlyList<ComparedFinding> Findings(ReadOnlyMemory<byte> sarif)
    {
        using JsonDocument log = SoundJson.Parse(sarif);
        return
        [
            .. log.RootElement.GetProperty("runs")[0].GetProperty("results").EnumerateArray().Select(r => new ComparedFinding(
                r.GetProperty("ruleId").GetString() ?? "", r.GetProperty("level").GetString() ?? "", r.GetProperty("message").GetProperty("text").GetString() ?? "",
                r.TryGetProperty("suppressions", out _))),
        ];
    }

    private static string LevelOf(Severity severity) => severity switch { Severity.Error => "error", Severity.Warning => "warning", _ => "note" };

    private static double Six(double value) => Model.Quantities.SignificantFigures.Six(value);
}
