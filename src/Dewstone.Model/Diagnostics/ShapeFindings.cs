namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW2xxx: the shape.</summary>
public static class ShapeFindings
{
    /// <summary>A scatter that finds no room for all its hollows.</summary>
    public static FindingKind ScatterCannotPlace { get; } = new(
        "DW2001", Severity.Error, "Scatter finds no room",
        "A scatter was to place a number of hollows with a gap between them and found no room for all of them.",
        "A unit with fewer hollows than asked for is not the unit that was ordered.",
        "Ask for fewer or smaller hollows, a smaller gap, a wider band or more faces, or try another seed.",
        "cavities:\n  - name: niches\n    scatter: {count: 500, diameter: [110 mm, 160 mm], gap: 100 mm, faces: [top], seed: 1}");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All => [ScatterCannotPlace];
}
