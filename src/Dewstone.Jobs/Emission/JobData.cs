namespace Dewstone.Jobs.Emission;

/// <summary>The data files of a job and its fingerprints; pictures, report and manifest come after.</summary>
/// <param name="Files">The files. A held job has no dose tables and no sequence.</param>
/// <param name="Job">Fingerprint of the job: of <c>job.json</c>.</param>
/// <param name="Design">Fingerprint of the design: of the unit's own description.</param>
public sealed record JobData(IReadOnlyList<EmittedFile> Files, Fingerprint Job, Fingerprint Design);
