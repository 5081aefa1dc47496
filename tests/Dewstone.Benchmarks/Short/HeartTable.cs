using System.Globalization;

namespace Dewstone.Benchmarks.Short;

/// <summary>Measures one heart after the other and writes a row of each.</summary>
/// <param name="write">Takes a finished line.</param>
internal sealed class HeartTable(Action<string> write)
{
    private const double MostSeconds = 8.0;

    /// <summary>Writes the head.</summary>
    public void Head()
    {
        write("| heart | size | threads | median s | least s | CPU s | rate | rate beside it | times as fast |");
        write("|---|---|---|---|---|---|---|---|---|");
    }

    /// <summary>Measures and writes a row. Rates are of the least time.</summary>
    /// <param name="heart">What is measured.</param>
    /// <param name="size">On how much.</param>
    /// <param name="threads">Threads.</param>
    /// <param name="work">The work of one round.</param>
    /// <param name="amount">What one round does, in the unit of the rate times a second.</param>
    /// <param name="unit">Unit of the rate.</param>
    /// <param name="beside">Rate that is set beside it; null for none.</param>
    /// <param name="rounds">Rounds at most.</param>
    /// <returns>Rate, in the unit.</returns>
    public double Row(string heart, string size, int threads, Func<object?> work, double amount, string unit, double? beside = null, int rounds = 7)
    {
        Measured taken = Measured.Of(work, rounds, MostSeconds);
        double rate = amount / taken.Least;
        string compared = beside is { } figure ? $"{Digits(figure)} | {Digits(rate / figure)}" : " | ";
        write($"| {heart} | {size} | {threads} | {Digits(taken.Median)} | {Digits(taken.Least)} | {Digits(taken.Processor)} | {Digits(rate)} {unit} | {compared} |");
        return rate;
    }

    /// <summary>Three digits that count, more for greater numbers.</summary>
    /// <param name="value">Value.</param>
    /// <returns>Text.</returns>
    public static string Digits(double value) => double.IsNaN(value)
        ? ""
        : value.ToString(Math.Abs(value) switch { >= 100.0 => "0", >= 10.0 => "0.0", >= 1.0 => "0.00", >= 0.1 => "0.000", _ => "0.0000" }, CultureInfo.InvariantCulture);
}
