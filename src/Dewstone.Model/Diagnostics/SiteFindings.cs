namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW6xxx: the site.</summary>
public static class SiteFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [];
}
