namespace Dewstone.Orders.Packing;

/// <summary>
/// Finds the ways to fill a bin that hold as much as possible, kind by kind from the largest count down. What is not ruled out by area, mass or number is
/// packed corner by corner, and where that fails exactly.
/// </summary>
public sealed class PatternSearch
{
    // One exact question and all of one search, in the solver's deterministic time, about a second each.
    private const double EffortEach = 2.0;
    private const double EffortWhole = 20.0;
    private const int MostExact = 60;

    private readonly BinSpace space;
    private readonly IReadOnlyList<PackedKind> kinds;
    private readonly List<BinPattern> found = [];
    private readonly Dictionary<string, IReadOnlyList<PackedPlace>?> known = new(StringComparer.Ordinal);
    private int exact;
    private bool complete = true;

    private PatternSearch(BinSpace space, IReadOnlyList<PackedKind> kinds) => (this.space, this.kinds) = (space, kinds);

    /// <summary>Finds the patterns.</summary>
    /// <param name="space">The bin.</param>
    /// <param name="kinds">The kinds.</param>
    /// <returns>The patterns, in a fixed order; none when no unit fits.</returns>
    public static PatternSet Find(BinSpace space, IReadOnlyList<PackedKind> kinds)
    {
        ArgumentNullException.ThrowIfNull(space);
        ArgumentNullException.ThrowIfNull(kinds);
        PatternSearch search = new(space, kinds);
        int[] all = [.. kinds.Select(kind => kind.Count)];
        if (all.Sum(count => (long)count) <= space.MostUnits && search.Places(all, EffortWhole) is { } places)
        {
            return new PatternSet([search.Pattern(all, places)], true);
        }

        search.Extend(0, new int[kinds.Count]);
        return new PatternSet(search.Undominated(), search.complete);
    }

    private void Extend(int kind, int[] counts)
    {
        if (kind == kinds.Count)
        {
            if (counts.Any(count => count > 0) && !found.Exists(other => Covers(other.Counts, counts)))
            {
                found.Add(Pattern(counts, Places(counts, EffortEach)!));
            }

            return;
        }

        int most = 0;
        for (; most < kinds[kind].Count; most++)
        {
            counts[kind] = most + 1;
            if (Places(counts, EffortEach) is null)
            {
                break;
            }
        }

        // Fewer of the last kind never make room for another.
        for (int count = most; count >= (kind == kinds.Count - 1 ? most : 0); count--)
        {
            counts[kind] = count;
            Extend(kind + 1, counts);
        }

        counts[kind] = 0;
    }

    private IReadOnlyList<PackedPlace>? Places(int[] counts, double effort)
    {
        if (counts.Sum() > space.MostUnits || space.Kilograms(kinds, counts) > space.MostKilograms || !AreaAllows(counts))
        {
            return null;
        }

        string key = string.Join(',', counts);
        if (known.TryGetValue(key, out IReadOnlyList<PackedPlace>? places))
        {
            return places;
        }

        places = CornerPacking.Pack(space, kinds, counts);
        if (places is null)
        {
            (places, bool proved) = exact++ < MostExact ? ExactPacking.Pack(space, kinds, counts, effort) : (null, false);
            complete &= proved;
        }

        known[key] = places;
        return places;
    }

    // Each footprint takes its gap to the right and above; kinds that reach into the margin of the walls are not ruled out by it.
    private bool AreaAllows(int[] counts)
    {
        long area = 0;
        int wallX = space.Wall, wallY = space.Wall;
        for (int kind = 0; kind < kinds.Count; kind++)
        {
            if (counts[kind] == 0)
            {
                continue;
            }

            area += (long)counts[kind] * (kinds[kind].Columns + space.Gap) * (kinds[kind].Rows + space.Gap);
            int longest = Math.Max(kinds[kind].Columns, kinds[kind].Rows);
            wallX = Math.Min(wallX, Math.Max(space.LeastWall, (space.Columns - longest) / 2));
            wallY = Math.Min(wallY, Math.Max(space.LeastWall, (space.Rows - longest) / 2));
            if (!Fits(kinds[kind]))
            {
                return false;
            }
        }

        return area <= (long)(space.Columns + space.Gap - 2 * wallX) * (space.Rows + space.Gap - 2 * wallY);
    }

    private bool Fits(PackedKind kind)
    {
        int columns = space.Columns - 2 * space.LeastWall, rows = space.Rows - 2 * space.LeastWall;
        return (kind.Columns <= columns && kind.Rows <= rows) || (space.MayTurn && kind.Rows <= columns && kind.Columns <= rows);
    }

    // The filling in the middle of the bin, so that the margins are even.
    private BinPattern Pattern(int[] counts, IReadOnlyList<PackedPlace> places)
    {
        int right = places.Max(p => p.Column + p.Columns(kinds)), left = places.Min(p => p.Column);
        int top = places.Max(p => p.Row + p.Rows(kinds)), bottom = places.Min(p => p.Row);
        int columns = (space.Columns - right - left) / 2, rows = (space.Rows - top - bottom) / 2;
        return new BinPattern([.. counts], [.. places.Select(p => p with { Column = p.Column + columns, Row = p.Row + rows })]);
    }

    private List<BinPattern> Undominated() => [.. found.Where(one => !found.Exists(other => other != one && Covers(other.Counts, one.Counts)))];

    private static bool Covers(IReadOnlyList<int> large, IReadOnlyList<int> small) => !small.Where((count, kind) => count > large[kind]).Any();
}
