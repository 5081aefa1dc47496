namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW7xxx: orders.</summary>
public static class OrderFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [];
}
