using Dewstone.Model.Description;

namespace Dewstone.Reading;

/// <summary>A unit's file: the reef unit and the files it names.</summary>
public sealed record UnitFile
{
    /// <summary>The reef unit.</summary>
    public required ReefUnit Unit { get; init; }

    /// <summary>Path of the mix, as written; null when not named.</summary>
    public string? Mix { get; init; }

    /// <summary>Path of the printer, as written; null when not named.</summary>
    public string? Printer { get; init; }

    /// <summary>Path of the site, as written; null when not named.</summary>
    public string? Site { get; init; }
}
