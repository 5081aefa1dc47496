namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW8xxx: files and job folders.</summary>
public static class FileFindings
{
    /// <summary>File not found.</summary>
    public static FindingKind NotFound { get; } = new(
        "DW8001", Severity.Error, "File not found",
        "A file that is named does not exist.",
        "Without it the job is not complete.",
        "Check the name. A path in a description is relative to the file that names it, one on the command line to the " +
            "current folder.",
        "mix: ../mixes/estuari.mix.yaml");

    /// <summary>File cannot be read.</summary>
    public static FindingKind NotReadable { get; } = new(
        "DW8002", Severity.Error, "File cannot be read",
        "The file exists but cannot be read: it is a folder, its rights forbid it, or the disk reports a fault.",
        "Without it the job is not complete.",
        "Name a file, not a folder, and see that you may read it.");

    /// <summary>File outside the root.</summary>
    public static FindingKind OutsideRoot { get; } = new(
        "DW8003", Severity.Error, "File outside the root",
        "A path in a description leads outside the root folder, directly, by an absolute path or through a link.",
        "A description that came from elsewhere must not be able to read any file of this machine.",
        "Move the file under the root, or name a higher folder with --root. The root is otherwise the nearest parent " +
            "folder with a file `.dewstone-root`, else the folder of the file.",
        "mix: /etc/passwd");

    /// <summary>File too large.</summary>
    public static FindingKind TooLarge { get; } = new(
        "DW8004", Severity.Error, "File too large",
        "The file is larger than a description or table can be.",
        "It is not the file that was meant, and reading it would only waste memory.",
        "Check that the right file was named.");

    /// <summary>Not UTF-8 text.</summary>
    public static FindingKind NotUtf8 { get; } = new(
        "DW8005", Severity.Error, "Not UTF-8 text",
        "The file holds bytes that are not UTF-8: it was saved in another encoding, or is no text.",
        "Read wrongly, a name or a unit of measure would change without notice.",
        "Save the file as UTF-8; editors offer it under encoding when saving.");

    /// <summary>Root folder not found.</summary>
    public static FindingKind NoSuchRoot { get; } = new(
        "DW8006", Severity.Error, "Root folder not found",
        "The folder named with --root does not exist.",
        "The root decides which files a description may name.",
        "Name a folder that exists and holds the descriptions.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } =
    [
        NotFound, NotReadable, OutsideRoot, TooLarge, NotUtf8, NoSuchRoot,
    ];
}
