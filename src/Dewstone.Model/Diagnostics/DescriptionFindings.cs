namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW1xxx: description files.</summary>
public static class DescriptionFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [];
}
