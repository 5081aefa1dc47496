using System.Text;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Verification;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>verify</c> says of a job folder.</summary>
internal static class VerificationText
{
    /// <summary>The text of one job.</summary>
    /// <param name="result">What was found.</param>
    /// <param name="colour">Whether to colour levels.</param>
    /// <param name="quiet">Leave out notes.</param>
    /// <param name="withList">Whether an approver's list was given.</param>
    /// <returns>Plain text.</returns>
    public static string Of(VerificationResult result, bool colour, bool quiet, bool withList)
    {
        StringBuilder text = new(FindingText.Of(result.Findings, colour, quiet));

        string names = result.JobFingerprint.Length == 0 ? "" : $", job {Grouped(result.JobFingerprint)}, design {Grouped(result.DesignFingerprint)}";
        string approved = !withList ? "" : result.Findings.Any(f => f.Code == VerifyFindings.ApprovedDesign.Code) ? ", approved design, tonight's doses" : ", approved";
        string verdict = result.Verified ? $"verified{approved}" : "DOES NOT VERIFY, do not print";
        return text.Append($"{PlainText.Of(result.Folder)}: {verdict}{names}\n").ToString();
    }

    /// <summary>A fingerprint as sheets print it, in groups of four.</summary>
    internal static string Grouped(string fingerprint) => Fingerprint.TryParse(fingerprint, out Fingerprint parsed) ? parsed.Grouped() : fingerprint;
}
