namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW8xxx: files and job folders.</summary>
public static class FileFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [];
}
