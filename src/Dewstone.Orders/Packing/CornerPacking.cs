namespace Dewstone.Orders.Packing;

/// <summary>
/// Fills a bin quickly: the largest first, each at the lowest and then leftmost place where it touches a wall or another unit's gap (common practice, no
/// source). It may fail where a packing exists.
/// </summary>
internal static class CornerPacking
{
    /// <summary>Packs.</summary>
    /// <param name="space">The bin.</param>
    /// <param name="kinds">The kinds.</param>
    /// <param name="counts">Units of each.</param>
    /// <returns>Places by kind; null when it found none.</returns>
    public static IReadOnlyList<PackedPlace>? Pack(BinSpace space, IReadOnlyList<PackedKind> kinds, IReadOnlyList<int> counts)
    {
        List<PackedPlace> placed = [];
        foreach (int kind in Enumerable.Range(0, kinds.Count).OrderByDescending(k => kinds[k].Columns * kinds[k].Rows).ThenBy(k => k))
        {
            for (int unit = 0; unit < counts[kind]; unit++)
            {
                if (Lowest(space, kinds, kind, placed) is not { } place)
                {
                    return null;
                }

                placed.Add(place);
            }
        }

        return [.. placed.OrderBy(place => place.Kind)];
    }

    private static PackedPlace? Lowest(BinSpace space, IReadOnlyList<PackedKind> kinds, int kind, List<PackedPlace> placed)
    {
        PackedPlace? best = null;
        foreach (bool turned in space.MayTurn && kinds[kind].Columns != kinds[kind].Rows ? (bool[])[false, true] : [false])
        {
            PackedPlace shape = new(kind, turned, 0, 0);
            (int firstColumn, int lastColumn) = space.Range(space.Columns, shape.Columns(kinds));
            (int firstRow, int lastRow) = space.Range(space.Rows, shape.Rows(kinds));
            foreach (int row in placed.Select(p => p.Row + p.Rows(kinds) + space.Gap).Append(firstRow).Where(r => r >= firstRow && r <= lastRow).Distinct().Order())
            {
                foreach (int column in placed.Select(p => p.Column + p.Columns(kinds) + space.Gap).Append(firstColumn).Where(c => c >= firstColumn && c <= lastColumn).Distinct().Order())
                {
                    PackedPlace here = shape with { Column = column, Row = row };
                    if ((best is not { } b || row < b.Row || (row == b.Row && column < b.Column)) && placed.TrueForAll(other => Apart(here, other, kinds, space.Gap)))
                    {
                        best = here;
                    }
                }
            }
        }

        return best;
    }

    private static bool Apart(PackedPlace a, PackedPlace b, IReadOnlyList<PackedKind> kinds, int gap) =>
        a.Column + a.Columns(kinds) + gap <= b.Column || b.Column + b.Columns(kinds) + gap <= a.Column
        || a.Row + a.Rows(kinds) + gap <= b.Row || b.Row + b.Rows(kinds) + gap <= a.Row;
}
