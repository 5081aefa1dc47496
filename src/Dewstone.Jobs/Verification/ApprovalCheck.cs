using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Verification;

/// <summary>Looks a job up on an approver's list.</summary>
internal static class ApprovalCheck
{
    /// <summary>Checks a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="manifest">Its manifest.</param>
    /// <param name="approved">The list.</param>
    /// <returns>DW8211, DW8212 or DW8213; nothing when this very job is listed.</returns>
    public static IReadOnlyList<Diagnostic> Check(EarlierJob job, Manifest manifest, ApprovedDesigns approved)
    {
        Fingerprint core = Fingerprint.Of(job.CoreBytes.Span), design = JobCoreEmitter.DesignOf(job.Core.Description);
        SourceLocation place = new(Path.Combine(job.Folder, JobCoreEmitter.Path), 0, 0);
        if (approved.HoldsJob(design, core))
        {
            return [];
        }

        BinnedUnit[] others = [.. job.Core.Description.Bin.Where(unit => !approved.HoldsDesign(JobCoreEmitter.DesignOf(unit.Unit)))];
        if (others.Length > 0)
        {
            return
            [
                .. others.Select(unit => VerifyFindings.NotApproved.At(
                    $"design {JobCoreEmitter.DesignOf(unit.Unit).Grouped()} (`{unit.Unit.Name}`, {unit.Mark}) is not on the approver's list", "have it approved, or print the approved design", location: place)),
            ];
        }

        if (job.Core.Description.Bin.Count > 0 || approved.HoldsDesign(design))
        {
            string differences = manifest.Conditions.Count == 0 ? "nothing differs from what the design was judged with" : "different tonight: " + string.Join("; ", manifest.Conditions);
            return [VerifyFindings.ApprovedDesign.At($"approved {(job.Core.Description.Bin.Count > 0 ? $"designs of all {job.Core.Description.Bin.Count} units" : $"design {design.Grouped()}")}, tonight's doses; {differences}", "nothing to do if that was measured", location: place)];
        }

        return
        [
            approved.Names(design)
                ? VerifyFindings.OtherJobApproved.At($"design {design.Grouped()} is approved with other doses than those of job {core.Grouped()}", "print the approved job, or have this one approved", location: place)
                : VerifyFindings.NotApproved.At($"design {design.Grouped()} (`{manifest.Name}`) is not on the approver's list", "have it approved, or print the approved design", location: place),
        ];
    }
}
