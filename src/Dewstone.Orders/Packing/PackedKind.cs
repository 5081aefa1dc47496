namespace Dewstone.Orders.Packing;

/// <summary>Units that pack alike.</summary>
public sealed record PackedKind
{
    /// <summary>Columns of the grid it covers, unturned.</summary>
    public required int Columns { get; init; }

    /// <summary>Rows of the grid it covers, unturned.</summary>
    public required int Rows { get; init; }

    /// <summary>Units of the kind that a bin may hold at most: as many as are wanted.</summary>
    public required int Count { get; init; }

    /// <summary>Layers from the bin's floor to its top; 0 when height does not matter.</summary>
    public int Layers { get; init; }

    /// <summary>Water of one unit, kg; 0 when mass does not matter.</summary>
    public double WaterKilograms { get; init; }
}
