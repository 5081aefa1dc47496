using System.Text.Json;
using Dewstone.Jobs.Verification;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>The one JSON document of <c>verify --json</c>; its schema is <c>schemas/verify.schema.json</c>.</summary>
internal static class VerificationJson
{
    /// <summary>The document.</summary>
    /// <param name="results">One a job folder, in the order asked for.</param>
    /// <param name="exitCode">What the program ends with.</param>
    /// <returns>Indented JSON with a line feed at its end.</returns>
    public static string Of(IReadOnlyList<VerificationResult> results, int exitCode) => JsonText.Of("verify", exitCode, json =>
    {
        json.WriteStartArray("jobs");
        foreach (VerificationResult result in results)
        {
            json.WriteStartObject();
            json.WriteString("folder", result.Folder);
            json.WriteString("name", result.Name);
            json.WriteString("job_fingerprint", result.JobFingerprint);
            json.WriteString("design_fingerprint", result.DesignFingerprint);
            json.WriteBoolean("verified", result.Verified);
            FindingJson.Write(json, result.Findings);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });
}
