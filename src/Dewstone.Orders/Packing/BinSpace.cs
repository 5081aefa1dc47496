namespace Dewstone.Orders.Packing;

/// <summary>Room of a bin, in whole pitches, and what it may weigh.</summary>
public sealed record BinSpace
{
    /// <summary>Columns of the grid.</summary>
    public required int Columns { get; init; }

    /// <summary>Rows of the grid.</summary>
    public required int Rows { get; init; }

    /// <summary>Least pitches between two footprints.</summary>
    public int Gap { get; init; }

    /// <summary>Pitches from a footprint to the ends of the grid, as far as the kind leaves room for them.</summary>
    public int Wall { get; init; }

    /// <summary>Pitches from a footprint to the ends of the grid that no kind may do without.</summary>
    public int LeastWall { get; init; }

    /// <summary>Whether footprints may be turned by a quarter.</summary>
    public bool MayTurn { get; init; } = true;

    /// <summary>Most units in a bin.</summary>
    public int MostUnits { get; init; } = int.MaxValue;

    /// <summary>Dry mix of one layer over the whole bin, kg.</summary>
    public double KilogramsALayer { get; init; }

    /// <summary>Greatest mass of mix and water of a full bin, kg.</summary>
    public double MostKilograms { get; init; } = double.PositiveInfinity;

    /// <summary>First and last position of a footprint along an axis.</summary>
    /// <param name="positions">Positions of the grid along the axis.</param>
    /// <param name="length">Positions it covers.</param>
    /// <returns>Both, from 0; the last before the first when it does not fit.</returns>
    public (int First, int Last) Range(int positions, int length)
    {
        int wall = Math.Max(LeastWall, Math.Min(Wall, (positions - length) / 2));
        return (wall, positions - length - wall);
    }

    /// <summary>Mass of mix and water of a bin.</summary>
    /// <param name="kinds">The kinds.</param>
    /// <param name="counts">Units of each kind in it.</param>
    /// <returns>kg: every layer up to the top of the highest unit is spread over the whole bin.</returns>
    public double Kilograms(IReadOnlyList<PackedKind> kinds, IReadOnlyList<int> counts)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        ArgumentNullException.ThrowIfNull(counts);
        int layers = 0;
        double water = 0.0;
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            layers = counts[kind] > 0 ? Math.Max(layers, kinds[kind].Layers) : layers;
            water += counts[kind] * kinds[kind].WaterKilograms;
        }

        return layers * KilogramsALayer + water;
    }
}
