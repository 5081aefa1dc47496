using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Comparison;

/// <summary>Sums up where a solid grew and shrank.</summary>
internal static class SolidComparison
{
    /// <summary>Share of a cell below which a difference is rounding, 1.</summary>
    private const float LeastShare = 1e-4f;

    /// <summary>Compares two solids.</summary>
    /// <param name="cells">What they are compared on.</param>
    /// <param name="before">Values of the old job's cells.</param>
    /// <param name="after">Values of the new job's.</param>
    /// <returns>What changed.</returns>
    public static SolidChange Compare<T>(CommonCells cells, T[] before, T[] after)
        where T : struct, IConvertible, IEquatable<T>
    {
        SortedDictionary<int, (double Added, double Removed)> slabs = [];
        Point3 low = new(double.PositiveInfinity, double.PositiveInfinity, double.PositiveInfinity), high = low * -1.0;
        cells.Differences(before, after, (at, change) =>
        {
            if (Math.Abs(change) < LeastShare)
            {
                return;
            }

            int slab = (int)Math.Floor(at.Z / cells.LayerMetres);
            (double added, double removed) = slabs.GetValueOrDefault(slab);
            slabs[slab] = change > 0f ? (added + change, removed) : (added, removed - change);
            low = new Point3(Math.Min(low.X, at.X), Math.Min(low.Y, at.Y), Math.Min(low.Z, at.Z));
            high = new Point3(Math.Max(high.X, at.X), Math.Max(high.Y, at.Y), Math.Max(high.Z, at.Z));
        });
        double litres = cells.CellLitres;
        return new SolidChange(
            slabs.Values.Sum(s => s.Added) * litres, slabs.Values.Sum(s => s.Removed) * litres, slabs.Count == 0 ? null : low, slabs.Count == 0 ? null : high,
            [.. slabs.Select(s => new SlabChange(s.Key * cells.LayerMetres, (s.Key + 1) * cells.LayerMetres, s.Value.Added * litres, s.Value.Removed * litres))]);
    }
}
