using Dewstone.Jobs.Emission.Fields;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission;

/// <summary>
/// Writes <c>trials.json</c>, how often each requirement is met, and <c>trials.vti</c>, the share of trials in which each cell of the trials' own, coarser
/// grid hardened. Index order x fastest, then y, then z; printer frame, metres.
/// </summary>
public static class TrialsEmitter
{
    /// <summary>Path of the figures in the job folder.</summary>
    public const string FiguresPath = "trials.json";

    /// <summary>Path of the field in the job folder.</summary>
    public const string FieldPath = "trials.vti";

    /// <summary>Name of the array of shares, whole percent; 0 and 100 stand for none and all.</summary>
    public const string HardenedShare = "hardened_share";

    /// <summary>Name of the format.</summary>
    public const string Format = "dewstone-trials";

    /// <summary>Version of the format; rises when a field goes or changes its meaning.</summary>
    public const int Version = 1;

    /// <summary>The files of a job's trials.</summary>
    /// <param name="report">The trials.</param>
    /// <param name="parallelism">Threads; no byte depends on it.</param>
    /// <param name="cancellationToken">Looked at between blocks of cells.</param>
    /// <returns>Figures, then field.</returns>
    public static IReadOnlyList<EmittedFile> Emit(TrialsReport report, Parallelism parallelism, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(report);
        byte[] figures = CanonicalJson.Indented(json =>
        {
            json.WriteString("format", Format);
            json.WriteNumber("version", Version);
            TrialsJson.Write(json, report);
        });
        CellArray share = new(HardenedShare, "UInt8", 1, (first, into) =>
        {
            for (int i = 0; i < into.Length; i++)
            {
                into[i] = report.HardenedPercent(first + i);
            }
        });
        byte[] field = FieldFile.Write(report.Grid, [share], [new NamedAmount("trials", report.Trials)], parallelism, cancellationToken);
        return [new EmittedFile(FiguresPath, figures), new EmittedFile(FieldPath, field)];
    }
}
