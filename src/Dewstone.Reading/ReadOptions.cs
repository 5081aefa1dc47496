namespace Dewstone.Reading;

/// <summary>What the command line says about files; each path is relative to the current folder.</summary>
public sealed record ReadOptions
{
    /// <summary>Nothing said.</summary>
    public static ReadOptions None { get; } = new();

    /// <summary>Mix file that wins over the unit's; null for none.</summary>
    public string? Mix { get; init; }

    /// <summary>Printer file that wins over tonight's and the unit's; null for none.</summary>
    public string? Printer { get; init; }

    /// <summary>Site file that wins over the unit's; null for none.</summary>
    public string? Site { get; init; }

    /// <summary>Needles file that wins over tonight's and the printer's; null for none.</summary>
    public string? Needles { get; init; }

    /// <summary>Tonight's file; null for none.</summary>
    public string? Tonight { get; init; }

    /// <summary>
    /// Folder under which all files must lie that descriptions name; null for the nearest parent folder of the naming file that holds
    /// <c>.dewstone-root</c>, else that file's folder.
    /// </summary>
    public string? Root { get; init; }
}
