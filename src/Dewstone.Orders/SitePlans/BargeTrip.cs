namespace Dewstone.Orders.SitePlans;

/// <summary>One trip of the barge.</summary>
/// <param name="Number">From 1.</param>
/// <param name="Units">What it carries, heaviest first; place on deck and level follow from the position in this list.</param>
public sealed record BargeTrip(int Number, IReadOnlyList<DeckedUnit> Units)
{
    /// <summary>Mass on deck, kg.</summary>
    public double Kilograms { get; } = Units.Sum(unit => unit.Unit.LiftKilograms);
}
