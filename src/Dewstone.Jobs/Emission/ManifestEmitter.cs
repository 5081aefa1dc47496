using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// Writes <c>manifest.json</c>: what is in the folder, from what it was made and how it came out. Holds the hash of every other file, and no
/// clock, machine or user.
/// </summary>
public static class ManifestEmitter
{
    /// <summary>Path in the job folder.</summary>
    public const string Path = "manifest.json";

    /// <summary>Name of the format; a folder whose manifest says so is one of our job folders.</summary>
    public const string Format = "dewstone-manifest";

    /// <summary>Version of the format; rises when a field goes or changes its meaning.</summary>
    public const int Version = 1;

    /// <summary>The manifest of a job.</summary>
    /// <param name="job">The compiled job.</param>
    /// <param name="data">Its data files with both fingerprints.</param>
    /// <param name="files">Every other file of the folder: data, pictures, report.</param>
    /// <param name="nameOfFile">Name of a description file as the manifest holds it.</param>
    /// <returns>The file.</returns>
    public static EmittedFile Emit(CompiledJob job, JobData data, IReadOnlyList<EmittedFile> files, Func<string, string> nameOfFile)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(data);
        ArgumentNullException.ThrowIfNull(files);
        FilePlaces places = new(nameOfFile);
        return new EmittedFile(Path, CanonicalJson.Indented(json =>
        {
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            json.WriteString("name", job.Description.Unit.Name);
            json.WriteString("state", job.Held ? "held" : "ready");
            json.WriteString("job_fingerprint", data.Job.ToString());
            json.WriteString("design_fingerprint", data.Design.ToString());
            if (job.Description.Stop is { } stop)
            {
                json.Object(StopJson.Name, () => StopJson.Write(json, stop));
            }

            json.Object("tool", () =>
            {
                json.WriteString("name", "dewstone");
                json.WriteString("version", job.ToolVersion);
            });
            json.Objects("inputs", job.Inputs, input =>
            {
                json.WriteString("role", input.Role);
                json.WriteString("file", input.FileName);
                json.WriteString("sha256", input.Sha256);
            });
            json.Objects("files", files.OrderBy(file => file.RelativePath, StringComparer.Ordinal), file =>
            {
                json.WriteString("path", file.RelativePath);
                json.WriteNumber("bytes", file.Bytes.Length);
                json.WriteString("sha256", file.Sha256);
            });
            json.Object("placement", () => PlacementJson.Write(json, job.Placement));
            json.Object("registration", () => RegistrationJson.Write(json, job.Registration));
            json.Objects("requirements", job.Requirements, requirement => RequirementJson.Write(json, requirement, places));
            json.Object("totals", () => TotalsJson.Write(json, job));
            if (job.Strength is { } strength)
            {
                StrengthJson.Write(json, strength);
            }

            ReportedFigures.Write(json, job);
            json.Objects("accepted", job.Findings.Where(finding => finding.AcceptedBecause is not null), finding => Accepted(json, finding, places));
            json.Objects("conditions", NightConditions.Of(job.Description), condition => condition.Write(json));
        }));
    }

    private static void Accepted(Utf8JsonWriter json, Diagnostic finding, FilePlaces places)
    {
        json.WriteString("code", finding.Code);
        json.WriteString("reason", finding.AcceptedBecause);
        json.WriteString("message", finding.Message);
        json.ObjectOrNull("place", finding.Location, place =>
        {
            json.WriteString("file", places.NameOf(place.File));
            json.WriteNumber("line", place.Line);
            json.WriteNumber("column", place.Column);
        });
    }
}
