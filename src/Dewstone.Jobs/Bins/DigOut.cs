namespace Dewstone.Jobs.Bins;

/// <summary>When a unit may be dug out: after the time the order states and the age at which it is strong enough, whichever is later.</summary>
internal static class DigOut
{
    private const double SecondsPerDay = 86400.0;

    /// <summary>Days after the last layer.</summary>
    /// <param name="bin">The bin.</param>
    /// <param name="unit">The unit.</param>
    /// <returns>Days; null when its strength cannot be told or never suffices.</returns>
    public static double? Days(BinQuestion bin, SolvedUnit unit) =>
        unit.DigOutDays is { } strong ? Math.Max(strong, (bin.SetBeforeDig?.Seconds ?? 0.0) / SecondsPerDay) : null;
}
