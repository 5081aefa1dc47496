using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Diagnostics;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Folders;

/// <summary>Writes the folder of a survey complete or not at all: built under a hidden name beside its place, then renamed. Only an older survey is replaced.</summary>
public static class SurveyFolder
{
    /// <summary>Ending of its name.</summary>
    public const string Ending = ".survey";

    /// <summary>The file by which a survey's folder is known.</summary>
    public const string Document = "survey.json";

    /// <summary>Format that the document names.</summary>
    public const string Format = "dewstone-survey";

    private const int Attempts = 8;

    /// <summary>Looks, before anything is computed, whether it could be placed.</summary>
    /// <param name="outputFolder">Folder it is to be written into.</param>
    /// <param name="name">Name of the job.</param>
    /// <returns>What stands in the way; null when nothing is seen to.</returns>
    public static Diagnostic? Examine(string outputFolder, string name)
    {
        Disk disk = new();
        string place = Path.Combine(outputFolder, name + Ending);
        try
        {
            return FolderObstacles.OfOutput(disk, outputFolder) ?? Taken(disk, place);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            return DiskFaults.FindingOf(fault, place);
        }
    }

    /// <summary>Writes it.</summary>
    /// <param name="outputFolder">Folder it is written into; made when missing.</param>
    /// <param name="name">Name of the job.</param>
    /// <param name="files">Every file, the document among them.</param>
    /// <param name="cancellation">Looked at before each file.</param>
    /// <returns>How it went and what there is to say.</returns>
    /// <exception cref="OperationCanceledException">Stopped; nothing was left.</exception>
    public static JobFolderOutcome Write(string outputFolder, string name, IReadOnlyList<EmittedFile> files, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(files);
        Disk disk = new();
        string folderName = name + Ending, place = Path.Combine(outputFolder, folderName);
        string built = Path.Combine(outputFolder, HiddenNames.NewTemporary(folderName));
        List<Diagnostic> said = [];
        try
        {
            disk.CreateFolder(outputFolder);
            if (Taken(disk, place) is { } taken)
            {
                return new JobFolderOutcome(JobFolderStatus.CannotCreate, "", [taken]);
            }

            Build(disk, built, files, cancellation);
            FolderChange change = new(disk, outputFolder);
            try
            {
                change.Replace(built, folderName, Attempts);
            }
            catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
            {
                change.Undo();
                throw;
            }

            change.RemoveOlder(said);
            return new JobFolderOutcome(JobFolderStatus.Written, place, said);
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault) || fault is OperationCanceledException)
        {
            Discard(disk, built);
            if (fault is OperationCanceledException)
            {
                throw;
            }

            return new JobFolderOutcome(DiskFaults.StatusOf(fault), "", [.. said, DiskFaults.FindingOf(fault, place)]);
        }
    }

    private static void Build(Disk disk, string built, IReadOnlyList<EmittedFile> files, CancellationToken cancellation)
    {
        disk.CreateFolder(built);
        foreach (EmittedFile file in files.OrderBy(f => f.RelativePath == Document))
        {
            cancellation.ThrowIfCancellationRequested();
            string path = Path.Combine(built, file.RelativePath);
            disk.CreateFolder(Path.GetDirectoryName(path)!);
            disk.WriteFile(path, file.Bytes);
            disk.Settle(path);
        }
    }

    private static Diagnostic? Taken(Disk disk, string place) => disk.OtherExists(place) || (disk.FolderExists(place) && !IsSurvey(disk, place))
        ? JobFolderFindings.CannotCreate.At($"{place} exists and is no survey's folder, so it is not replaced", "move it away, or name another folder with -o")
        : null;

    private static bool IsSurvey(Disk disk, string place)
    {
        if (disk.IsLink(place) || disk.TryRead(Path.Combine(place, Document)) is not { } document)
        {
            return false;
        }

        try
        {
            using JsonDocument json = SoundJson.Parse(document);
            return json.RootElement.ValueKind == JsonValueKind.Object && json.RootElement.TryGetProperty("format", out JsonElement format) && format.ValueEquals(Format);
        }
        catch (Exception broken) when (broken is JsonException or InvalidOperationException)
        {
            return false;
        }
    }

    private static void Discard(Disk disk, string built)
    {
        try
        {
            if (disk.FolderExists(built))
            {
                disk.Delete(built);
            }
        }
        catch (Exception fault) when (DiskFaults.IsDiskFault(fault))
        {
            // The fault that brought us here is the one to report.
        }
    }
}
