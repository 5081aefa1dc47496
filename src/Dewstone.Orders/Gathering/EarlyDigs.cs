using Dewstone.Model.Diagnostics;

namespace Dewstone.Orders.Gathering;

/// <summary>Bins that the plan digs out before all their units may be lifted: the plan knows one water/cement for all cells of a unit; compiled, it may take longer.</summary>
/// <param name="Bins">Names of the bins, in the order of the plan; at least one.</param>
/// <param name="Hours">Time from the last layer to dig-out that would do for all of them, whole hours.</param>
public sealed record EarlyDigs(IReadOnlyList<string> Bins, int Hours)
{
    /// <summary>Finds them.</summary>
    /// <param name="bins">Bins of the order.</param>
    /// <param name="units">Its units as compiled.</param>
    /// <returns>The bins; null when none is dug out too early.</returns>
    public static EarlyDigs? Of(IReadOnlyList<GatheredBin> bins, IReadOnlyList<GatheredUnit> units)
    {
        Dictionary<string, double> days = units.ToDictionary(unit => unit.Ordered.Mark, unit => unit.Record.Figures!.LiftDays ?? 0.0, StringComparer.Ordinal);
        double Needed(GatheredBin bin) => bin.Planned.Units.Max(unit => days[unit.Mark]);
        GatheredBin[] early = [.. bins.Where(bin => (bin.Planned.DigStart - bin.Planned.PrintEnd).TotalDays < Needed(bin))];
        return early.Length == 0 ? null : new EarlyDigs([.. early.Select(bin => bin.Planned.Name)], (int)Math.Ceiling(24.0 * early.Max(Needed)));
    }

    /// <summary>The finding that says so.</summary>
    /// <param name="all">Bins of the order.</param>
    /// <returns>DW7063.</returns>
    public Diagnostic Finding(int all) => YardFindings.DugTooEarly.At(
        $"the plan digs out {Which(all)} before all their units are strong enough to be lifted, first {Bins[0]}",
        $"leave them in the mix until then, or plan again with `set_before_dig: {Hours} h`",
        new KeyPath(DescriptionKind.Order, "bins").Key("set_before_dig"));

    /// <summary>How many they are, in words.</summary>
    /// <param name="all">Bins of the order.</param>
    /// <returns>Text such as "2 of 5 bins".</returns>
    public string Which(int all) => Bins.Count == all ? "all bins" : $"{Bins.Count} of {all} bins";
}
