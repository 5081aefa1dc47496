namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW5xxx: strength and lifting.</summary>
public static class StrengthFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [];
}
