namespace Dewstone.Orders.Gathering;

/// <summary>What bins take and cost, as their jobs say; sums of several are of the same kind.</summary>
public sealed record BinTotals
{
    /// <summary>Number of bins.</summary>
    public required int Bins { get; init; }

    /// <summary>Number of units in them.</summary>
    public required int Units { get; init; }

    /// <summary>Dry mix spread, kg.</summary>
    public required double SpreadKilograms { get; init; }

    /// <summary>Dry mix that hardens, kg.</summary>
    public required double HardenedKilograms { get; init; }

    /// <summary>Dry mix that can be spread again, kg.</summary>
    public required double ReusableKilograms { get; init; }

    /// <summary>Binder in the units, kg.</summary>
    public required double BinderKilograms { get; init; }

    /// <summary>Water injected, L.</summary>
    public required double WaterLitres { get; init; }

    /// <summary>Water to flush with, L.</summary>
    public required double FlushLitres { get; init; }

    /// <summary>Carbon dioxide equivalent of what is used up, kg.</summary>
    public required double CarbonKilograms { get; init; }

    /// <summary>Cost of what is used up, by currency in ordinal order.</summary>
    public required IReadOnlyList<(string Currency, double Amount)> Cost { get; init; }

    /// <summary>Setting up and printing, s.</summary>
    public required double PrinterSeconds { get; init; }

    /// <summary>Sum, added in the order given.</summary>
    /// <param name="parts">The parts.</param>
    /// <returns>Their sum.</returns>
    public static BinTotals Sum(IReadOnlyList<BinTotals> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return new BinTotals
        {
            Bins = parts.Sum(part => part.Bins),
            Units = parts.Sum(part => part.Units),
            SpreadKilograms = parts.Sum(part => part.SpreadKilograms),
            HardenedKilograms = parts.Sum(part => part.HardenedKilograms),
            ReusableKilograms = parts.Sum(part => part.ReusableKilograms),
            BinderKilograms = parts.Sum(part => part.BinderKilograms),
            WaterLitres = parts.Sum(part => part.WaterLitres),
            FlushLitres = parts.Sum(part => part.FlushLitres),
            CarbonKilograms = parts.Sum(part => part.CarbonKilograms),
            Cost = [.. parts.SelectMany(part => part.Cost).GroupBy(cost => cost.Currency, StringComparer.Ordinal).OrderBy(costs => costs.Key, StringComparer.Ordinal).Select(costs => (costs.Key, costs.Sum(cost => cost.Amount)))],
            PrinterSeconds = parts.Sum(part => part.PrinterSeconds),
        };
    }
}
