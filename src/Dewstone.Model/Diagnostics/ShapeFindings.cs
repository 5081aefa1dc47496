namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW2xxx: the shape.</summary>
public static class ShapeFindings
{
    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [];
}
