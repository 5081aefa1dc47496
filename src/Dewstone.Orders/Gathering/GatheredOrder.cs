using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Orders.Plans;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Gathering;

/// <summary>An order of which everything is there.</summary>
public sealed record GatheredOrder
{
    /// <summary>The order.</summary>
    public required Order Order { get; init; }

    /// <summary>Its plan.</summary>
    public required OrderPlan Plan { get; init; }

    /// <summary>Its units, in the order of the listing.</summary>
    public required IReadOnlyList<GatheredUnit> Units { get; init; }

    /// <summary>Its bins, in the order of the plan.</summary>
    public required IReadOnlyList<GatheredBin> Bins { get; init; }

    /// <summary>Its nights.</summary>
    public required IReadOnlyList<PrintNight> Nights { get; init; }

    /// <summary>Where the units stand at sea; empty without a site plan.</summary>
    public required IReadOnlyList<StandingUnit> Standing { get; init; }

    /// <summary>Trips of the barge; null when the order names no transport.</summary>
    public required BargeLoads? Loads { get; init; }

    /// <summary>Bins that are dug out too early; null when there are none.</summary>
    public required EarlyDigs? EarlyDigs { get; init; }

    /// <summary>Findings about dig-out, sea and transport.</summary>
    public required IReadOnlyList<Diagnostic> Findings { get; init; }

    /// <summary>Version of the tool.</summary>
    public required string ToolVersion { get; init; }

    /// <summary>What the whole order takes.</summary>
    public BinTotals Totals => BinTotals.Sum([.. Nights.Select(night => night.Totals)]);

    /// <summary>Puts an order together.</summary>
    /// <param name="order">The order.</param>
    /// <param name="contents">What its folder holds, complete.</param>
    /// <param name="toolVersion">Version of the tool.</param>
    /// <returns>The order with its plan at sea and its loads.</returns>
    public static GatheredOrder Of(Order order, FolderContents contents, string toolVersion)
    {
        ArgumentNullException.ThrowIfNull(order);
        ArgumentNullException.ThrowIfNull(contents);
        EarlyDigs? early = EarlyDigs.Of(contents.Bins, contents.Units);
        List<Diagnostic> findings = early is null ? [] : [early.Finding(contents.Bins.Count)];
        SeaUnit[] units = [.. contents.Units.Select(unit => unit.AtSea)];
        IReadOnlyList<StandingUnit> standing = Stand(order.SitePlan, units, findings);
        return new GatheredOrder
        {
            Order = order,
            Plan = contents.Plan!,
            Units = contents.Units,
            Bins = contents.Bins,
            Nights = PrintNight.Of(contents.Bins, order.Shifts),
            Standing = standing,
            Loads = Load(order.Transport, units, findings),
            EarlyDigs = early,
            Findings = findings,
            ToolVersion = toolVersion,
        };
    }

    private static IReadOnlyList<StandingUnit> Stand(SitePlan? plan, SeaUnit[] units, List<Diagnostic> findings)
    {
        if (plan is null)
        {
            findings.Add(YardFindings.NotPlannedAtSea.At("the order has no site plan, so there is no deployment list and no map", "add `site_plan:` if they are wanted", new KeyPath(DescriptionKind.Order, "")));
            return [];
        }

        findings.AddRange(SiteCheck.Before(plan, units.Length));
        if (findings.Exists(finding => finding.Severity == Severity.Error))
        {
            return [];
        }

        IReadOnlyList<StandingUnit> standing = SiteLayout.Arrange(plan, units);
        findings.AddRange(SiteCheck.After(plan, standing));
        return standing;
    }

    private static BargeLoads? Load(Transport? transport, SeaUnit[] units, List<Diagnostic> findings)
    {
        KeyPath key = new(DescriptionKind.Order, transport is null ? "" : "transport");
        if (transport is null)
        {
            findings.Add(YardFindings.NotPlannedAtSea.At("the order names no transport, so there are no barge loads", "add `transport:` if they are wanted", key));
            return null;
        }

        BargeLoads loads = BargeLoading.Load(transport, units);
        if (loads.TooHeavy.Count > 0)
        {
            findings.Add(YardFindings.TooHeavyToCarry.At(
                $"heavier than the payload of {transport.Payload.Kilograms:0.#} kg: {string.Join(", ", loads.TooHeavy)}", "hire a larger barge or make them lighter", key.Key("payload")));
        }

        if (loads.Trips.SelectMany(trip => trip.Units).Any(unit => unit.Level > 1))
        {
            findings.Add(YardFindings.StackedOnDeck.At(
                "some trip carries more units than there are places, so lighter ones stand on heavier ones", "look at the sheets of those below, or set `stack: 1`", key.Key("stack")));
        }

        return loads;
    }
}
