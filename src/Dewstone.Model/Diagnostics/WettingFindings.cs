namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW3xxx: wetting and doses.</summary>
public static class WettingFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [];
}
