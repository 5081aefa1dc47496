namespace Dewstone.Model.Description;

/// <summary>The head that carries the needles, at the pitch of the grid.</summary>
public sealed record Head
{
    /// <summary>Needles along x.</summary>
    public required int Columns { get; init; }

    /// <summary>Needles along y.</summary>
    public required int Rows { get; init; }

    /// <summary>Whether the head can index half a pitch in x and y, so that every other layer may be shifted.</summary>
    public bool CanShiftLayers { get; init; }
}
