namespace Dewstone.Model.Description;

/// <summary>One line of an order.</summary>
public sealed record OrderLine
{
    /// <summary>Path of the unit file, as written.</summary>
    public required string File { get; init; }

    /// <summary>How many.</summary>
    public required int Quantity { get; init; }

    /// <summary>First seed when each unit gets its own scatter and relief; null when all are alike.</summary>
    public ulong? VarySeed { get; init; }

    /// <summary>How often a draw that fails may be replaced by the next seed.</summary>
    public int Redraw { get; init; }

    /// <summary>Letters its marks begin with.</summary>
    public required string Mark { get; init; }
}
