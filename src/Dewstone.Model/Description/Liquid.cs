using Dewstone.Model.Quantities;

namespace Dewstone.Model.Description;

/// <summary>What the needles inject.</summary>
public sealed record Liquid
{
    /// <summary>Density.</summary>
    public required Density Density { get; init; }

    /// <summary>Price per litre, in the mix's currency.</summary>
    public double PricePerLitre { get; init; }

    /// <summary>What is stirred in.</summary>
    public IReadOnlyList<Additive> Additives { get; init; } = [];
}
