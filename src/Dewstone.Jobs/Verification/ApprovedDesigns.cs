using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;

namespace Dewstone.Jobs.Verification;

/// <summary>An approver's list: a design fingerprint a line, optionally followed by the fingerprint of the one job that is approved; # begins a remark.</summary>
public sealed class ApprovedDesigns
{
    private readonly HashSet<(Fingerprint Design, Fingerprint? Job)> entries;

    private ApprovedDesigns(HashSet<(Fingerprint Design, Fingerprint? Job)> entries) => this.entries = entries;

    /// <summary>Reads a list.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="file">Its name, for findings.</param>
    /// <param name="findings">Takes DW8214 for each line that is no entry.</param>
    /// <returns>The list; null when a line is at fault.</returns>
    public static ApprovedDesigns? Read(string text, string file, DiagnosticBag findings)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(findings);
        HashSet<(Fingerprint, Fingerprint?)> entries = [];
        int number = 0;
        bool sound = true;
        foreach (string line in text.Split('\n'))
        {
            number++;
            string entry = line.Split('#')[0].Trim();
            if (entry.Length == 0)
            {
                continue;
            }

            string[] words = entry.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            Fingerprint job = default;
            if (words.Length <= 2 && Fingerprint.TryParse(words[0], out Fingerprint design) && (words.Length < 2 || Fingerprint.TryParse(words[1], out job)))
            {
                entries.Add((design, words.Length < 2 ? null : job));
                continue;
            }

            sound = false;
            findings.Add(VerifyFindings.ListLine.At(
                $"`{(entry.Length > 60 ? entry[..60] + "..." : entry)}` is no design fingerprint with or without a job fingerprint",
                "write 12 letters and digits, such as 7Q2D-98XK-41TB, and optionally a space and 12 more",
                location: new SourceLocation(file, number, line.Length - line.TrimStart().Length + 1)));
        }

        return sound ? new ApprovedDesigns(entries) : null;
    }

    /// <summary>Whether this very job is listed, with its design.</summary>
    /// <param name="design">Fingerprint of the design.</param>
    /// <param name="job">Fingerprint of the job.</param>
    /// <returns>True when it is.</returns>
    public bool HoldsJob(Fingerprint design, Fingerprint job) => entries.Contains((design, job));

    /// <summary>Whether the design is listed for any night's doses.</summary>
    /// <param name="design">Fingerprint of the design.</param>
    /// <returns>True when it is.</returns>
    public bool HoldsDesign(Fingerprint design) => entries.Contains((design, null));

    /// <summary>Whether the design is listed at all, be it for other jobs only.</summary>
    /// <param name="design">Fingerprint of the design.</param>
    /// <returns>True when it is.</returns>
    public bool Names(Fingerprint design) => entries.Any(e => e.Design == design);
}
