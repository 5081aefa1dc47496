using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Folders;

/// <summary>Names of job folders and how one is told from any other folder.</summary>
public static class JobFolder
{
    /// <summary>Ending of a job that may be printed.</summary>
    public const string Ready = ".job";

    /// <summary>Ending of a job held back from printing.</summary>
    public const string Held = ".held.job";

    /// <summary>Ending of an older job whose newer description was held back.</summary>
    public const string Superseded = ".superseded.job";

    /// <summary>Endings a job's folders can have, the longer ones first.</summary>
    internal static IReadOnlyList<string> Endings { get; } = [Superseded, Held, Ready];

    /// <summary>Name of the job made from a unit's file: the file's name without <c>.unit.yaml</c>.</summary>
    /// <param name="unitFile">Path of the file.</param>
    /// <returns>For instance <c>wrack-block</c>.</returns>
    public static string NameOf(string unitFile)
    {
        string name = Path.GetFileName(unitFile);
        foreach (string ending in (ReadOnlySpan<string>)[".yaml", ".yml", ".unit"])
        {
            if (name.EndsWith(ending, StringComparison.OrdinalIgnoreCase))
            {
                name = name[..^ending.Length];
            }
        }

        return name.Length == 0 ? "unit" : name;
    }

    /// <summary>Whether a folder is a job folder: no link, and its manifest says so.</summary>
    /// <param name="path">The folder.</param>
    /// <returns>True when it is one.</returns>
    public static bool IsJobFolder(string path) => IsJobFolder(new Disk(), path);

    /// <summary>The same through a given disk.</summary>
    internal static bool IsJobFolder(IDisk disk, string path)
    {
        if (!disk.FolderExists(path) || disk.IsLink(path) || disk.TryRead(Path.Combine(path, ManifestEmitter.Path)) is not { } manifest)
        {
            return false;
        }

        try
        {
            using JsonDocument document = SoundJson.Parse(manifest);
            return document.RootElement.ValueKind == JsonValueKind.Object
                && document.RootElement.TryGetProperty("format", out JsonElement format)
                && format.ValueKind == JsonValueKind.String && format.ValueEquals(ManifestEmitter.Format);
        }
        catch (JsonException)
        {
            return false;
        }
    }
}
