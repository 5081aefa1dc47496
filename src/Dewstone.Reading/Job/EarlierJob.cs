using Dewstone.Model.Results;

namespace Dewstone.Reading.Job;

/// <summary>A job folder as read: its core and the doses of its tables, whose hashes hold.</summary>
/// <param name="Folder">The folder, as named.</param>
/// <param name="Core">What the job was simulated with.</param>
/// <param name="CoreBytes">Bytes of <c>job.json</c>, of which the fingerprint is made.</param>
/// <param name="Doses">The doses of the tables.</param>
public sealed record EarlierJob(string Folder, JobCore Core, ReadOnlyMemory<byte> CoreBytes, DosePlan Doses);
