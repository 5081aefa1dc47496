namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW4xxx: the printer.</summary>
public static class PrinterFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [];
}
