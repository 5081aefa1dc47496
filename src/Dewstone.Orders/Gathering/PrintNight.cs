using Dewstone.Model.Description;

namespace Dewstone.Orders.Gathering;

/// <summary>A night of printing: all bins begun in one shift, told by the day the shift began; around the clock, by the day.</summary>
/// <param name="Day">That day.</param>
/// <param name="Totals">What its bins take together.</param>
public sealed record PrintNight(DateOnly Day, BinTotals Totals)
{
    /// <summary>The nights of an order.</summary>
    /// <param name="bins">Its bins.</param>
    /// <param name="shifts">Its shifts; null for around the clock.</param>
    /// <returns>Nights in which a bin is begun, in their order.</returns>
    public static IReadOnlyList<PrintNight> Of(IReadOnlyList<GatheredBin> bins, Shifts? shifts)
    {
        ArgumentNullException.ThrowIfNull(bins);
        return [.. bins.GroupBy(bin => DayOf(bin.Planned.Start, shifts)).OrderBy(night => night.Key).Select(night => new PrintNight(night.Key, BinTotals.Sum([.. night.Select(bin => bin.Totals)])))];
    }

    /// <summary>The day whose shift a moment falls into.</summary>
    /// <param name="moment">Yard's local time.</param>
    /// <param name="shifts">The shifts; null for around the clock.</param>
    /// <returns>The day on which that shift began.</returns>
    public static DateOnly DayOf(DateTime moment, Shifts? shifts)
    {
        bool overnight = shifts is not null && shifts.To <= shifts.From;
        return DateOnly.FromDateTime(overnight && TimeOnly.FromDateTime(moment) < shifts!.From ? moment.AddDays(-1.0) : moment);
    }
}
