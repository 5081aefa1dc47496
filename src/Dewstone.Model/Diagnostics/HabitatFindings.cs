namespace Dewstone.Model.Diagnostics;

/// <summary>Findings DW6020 to DW6029: what the unit offers to those who live in it.</summary>
public static class HabitatFindings
{
    /// <summary>Shelters nobody.</summary>
    public static FindingKind NoShelter { get; } = new(
        "DW6020", Severity.Warning, "Shelters no animal from its predator",
        "What a ball as deep as the sheltered animal reaches in the predicted solid, and one as deep as its predator does not, is less than one such ball.",
        "The animal the site names would find no refuge here.",
        "Add holes whose mouths, once set, lie between the two body depths.",
        "animals: {sheltered: {body_depth: 80 mm}, predator: {body_depth: 90 mm}}", "common practice, no source");

    /// <summary>Too small for the cells.</summary>
    public static FindingKind TooFine { get; } = new(
        "DW6021", Severity.Note, "Shelter not judged",
        "The animal to shelter is less than four cells deep, and what shelters it is as much the cells' doing as the unit's.",
        "A figure would say more than is known.",
        "Compile with more --cells, or measure it on the unit.");

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<FindingKind> All { get; } = [NoShelter, TooFine];
}
