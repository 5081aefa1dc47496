using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Orders.SitePlans;

/// <summary>A finished unit as those see it who carry it out and set it down.</summary>
public sealed record SeaUnit
{
    /// <summary>Its mark.</summary>
    public required string Mark { get; init; }

    /// <summary>Name of its kind.</summary>
    public required string Name { get; init; }

    /// <summary>Outer sizes of what is set down: x, y and height, m.</summary>
    public required Size3 Size { get; init; }

    /// <summary>Mass on the hook, kg.</summary>
    public required double LiftKilograms { get; init; }

    /// <summary>What a balance under water would show with its pores full, kg.</summary>
    public required double SubmergedKilograms { get; init; }

    /// <summary>How it is lifted; null when its description does not say.</summary>
    public Lifting? Lifting { get; init; }

    /// <summary>The site its description names; null for none.</summary>
    public Site? Site { get; init; }
}
