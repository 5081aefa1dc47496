namespace Dewstone.Orders.Packing;

/// <summary>Where a unit of a kind stands.</summary>
/// <param name="Kind">The kind, from 0.</param>
/// <param name="Turned">Whether it is turned by a quarter.</param>
/// <param name="Column">First column it covers, from 0.</param>
/// <param name="Row">First row it covers, from 0.</param>
public readonly record struct PackedPlace(int Kind, bool Turned, int Column, int Row)
{
    /// <summary>Columns it covers.</summary>
    /// <param name="kinds">The kinds.</param>
    /// <returns>Columns.</returns>
    public int Columns(IReadOnlyList<PackedKind> kinds)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        return Turned ? kinds[Kind].Rows : kinds[Kind].Columns;
    }

    /// <summary>Rows it covers.</summary>
    /// <param name="kinds">The kinds.</param>
    /// <returns>Rows.</returns>
    public int Rows(IReadOnlyList<PackedKind> kinds)
    {
        ArgumentNullException.ThrowIfNull(kinds);
        return Turned ? kinds[Kind].Columns : kinds[Kind].Rows;
    }
}
