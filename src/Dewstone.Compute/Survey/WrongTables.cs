using Dewstone.Model.Diagnostics;

namespace Dewstone.Compute.Survey;

/// <summary>Stations that were swapped, and layers that got the doses of another.</summary>
/// <remarks>
/// Delivered and planned doses are compared needle by needle of the head: the sum of absolute differences over the sum planned. A swap is named when it
/// explains the log to a tenth where the plan is off by more than a tenth and more than three times as much.
/// </remarks>
internal static class WrongTables
{
    private const double Off = 0.1;
    private const double Share = 0.3;

    /// <summary>Checks.</summary>
    /// <param name="book">The log; marks what is explained.</param>
    /// <returns>DW3062, one a pair and layer, and DW3063, one a layer.</returns>
    public static IReadOnlyList<Diagnostic> Check(RunLogBook book)
    {
        List<Diagnostic> found = [];
        Dictionary<(int Layer, int Station), LoggedPosition[]> blocks = book.All.GroupBy(p => p.Place.Block).ToDictionary(b => b.Key, b => b.ToArray());
        int[] layers = [.. blocks.Keys.Select(b => b.Layer).Distinct()];
        foreach (int layer in layers)
        {
            Swaps(book, blocks, layer, found);
        }

        foreach (int layer in layers)
        {
            Shifted(book, layers, layer, found);
        }

        return found;
    }

    private static void Swaps(RunLogBook book, Dictionary<(int Layer, int Station), LoggedPosition[]> blocks, int layer, List<Diagnostic> found)
    {
        int[] stations = [.. blocks.Keys.Where(b => b.Layer == layer).Select(b => b.Station).Order()];
        for (int a = 0; a < stations.Length; a++)
        {
            for (int b = a + 1; b < stations.Length; b++)
            {
                LoggedPosition[] one = blocks[(layer, stations[a])], two = blocks[(layer, stations[b])];
                if (one.Any(p => p.IsExplained) || two.Any(p => p.IsExplained) || Array.TrueForAll(one, p => p.Delivered == 0) || Array.TrueForAll(two, p => p.Delivered == 0))
                {
                    continue;
                }

                double sum = one.Sum(p => (double)p.Planned) + two.Sum(p => (double)p.Planned);
                double own = (Difference(one, one, p => p.Place.Needle) + Difference(two, two, p => p.Place.Needle)) / sum;
                double crossed = (Difference(one, two, p => p.Place.Needle) + Difference(two, one, p => p.Place.Needle)) / sum;
                if (Explains(own, crossed))
                {
                    Array.ForEach([.. one, .. two], p => p.IsExplained = true);
                    found.Add(book.Find(
                        SurveyFindings.StationsSwapped, one.First(p => p.Delivered > 0),
                        FormattableString.Invariant($"layer {layer}: stations {stations[a]} and {stations[b]} were swapped; as planned the doses are {100.0 * own:0.#} % off, swapped {100.0 * crossed:0.#} %"),
                        "check how the stations are numbered on the machine"));
                }
            }
        }
    }

    private static void Shifted(RunLogBook book, int[] layers, int layer, List<Diagnostic> found)
    {
        LoggedPosition[] own = Layer(book, layer);
        double sum = own.Sum(p => (double)p.Planned), off = Difference(own, own, Seat) / sum;
        if (own.Any(p => p.IsExplained) || !own.Any(p => p.Delivered > 0))
        {
            return;
        }

        (int other, double least) = (0, double.PositiveInfinity);
        foreach (int candidate in layers)
        {
            double crossed = Difference(own, Layer(book, candidate), Seat) / sum;
            (other, least) = crossed < least ? (candidate, crossed) : (other, least);
        }

        if (Explains(off, least))
        {
            Array.ForEach(own, p => p.IsExplained = true);
            found.Add(book.Find(
                SurveyFindings.OtherLayer, own.First(p => p.Delivered > 0),
                FormattableString.Invariant($"layer {layer} got the doses of layer {other}: as planned they are {100.0 * off:0.#} % off, as layer {other} {100.0 * least:0.#} %"),
                "check how layers are counted on the machine"));
        }
    }

    private static bool Explains(double own, double crossed) => own > Off && crossed < Off && crossed < Share * own;

    private static LoggedPosition[] Layer(RunLogBook book, int layer) => [.. book.All.Where(p => p.Place.Layer == layer)];

    private static (int Station, int Column, int Row) Seat(LoggedPosition position) => (position.Place.Station, position.Place.Column, position.Place.Row);

    // Sum over all needles of what was delivered in one place less what was planned in the other.
    private static double Difference<T>(LoggedPosition[] delivered, LoggedPosition[] planned, Func<LoggedPosition, T> key)
        where T : notnull
    {
        Dictionary<T, double> differences = [];
        foreach (LoggedPosition position in planned)
        {
            differences[key(position)] = -position.Planned;
        }

        foreach (LoggedPosition position in delivered)
        {
            differences[key(position)] = differences.GetValueOrDefault(key(position)) + position.Delivered;
        }

        return differences.Values.Sum(Math.Abs);
    }
}
