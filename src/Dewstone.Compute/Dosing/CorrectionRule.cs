namespace Dewstone.Compute.Dosing;

/// <summary>What the proximity correction counts as a misfit, and how it moves.</summary>
/// <remarks>
/// <para>Objective, in litres: J = sum over cells of cell volume x weight x |t - s - e|. t = wanted share of the cell; s = hardened share, rising straight from 0 to 1
/// between <see cref="DryShare"/> and <see cref="SetShare"/> of the content at which the mix sets: behind a front as steep as that of water in dry mix a
/// cell's mean content is in proportion to how much of it the front has passed; e = price of water, 0 up to a water/cement and rising straight above it
/// (<see cref="WaterPrice"/>, <see cref="BandPrice"/>). Weight = 1 + distance to the wanted surface / <see cref="DepthMetres"/>: what is far out counts more, so that
/// corners between needles close and bulges go first; times <see cref="OpeningWeight"/> for wanted voids of tunnels and cavities, so that openings stay open;
/// times <see cref="PocketWeight"/> where water is missing in solid deeper than <see cref="PocketMetres"/>;
/// times <see cref="BlockedWeight"/> in the voxels of blocked needles;
/// times <see cref="ReliefWeight"/> within the relief's amplitude of the wanted surface, openings excepted, because there the surface counts as met.</para>
/// <para>Step: every dose is multiplied by exp(v), v = momentum x v before + gain x mean misfit around its tip (Gaussian of the weighted misfit over two pitches
/// each way): a fixed point at which each needle's surroundings balance. All constants are chosen by trial on bodies of our own; no source.</para>
/// </remarks>
public sealed record CorrectionRule
{
    /// <summary>Share of the setting content below which a cell counts as dry, 1.</summary>
    public double DryShare { get; init; } = 0.214;

    /// <summary>Share of the setting content from which a cell counts as hardened all through, 1; above 1, so that a lean corner still asks for water.</summary>
    public double SetShare { get; init; } = 1.7;

    /// <summary>Distance from the wanted surface at which a cell weighs twice as much as at it, metres.</summary>
    public double DepthMetres { get; init; } = 0.01;

    /// <summary>Distance from which the weight grows no more, metres.</summary>
    public double FarthestMetres { get; init; } = 0.03;

    /// <summary>Weight of the wanted voids of tunnels and cavities, 1.</summary>
    public double OpeningWeight { get; init; } = 3.0;

    /// <summary>Weight of missing water in deep solid, 1: dry pockets close at a price of water that the rest of the solid would not pay.</summary>
    public double PocketWeight { get; init; } = 1.6;

    /// <summary>Depth below the wanted surface from which solid counts as deep, metres: less than a pocket in the middle of a thin wall lies.</summary>
    public double PocketMetres { get; init; } = 0.015;

    /// <summary>Weight of the voxels of blocked needles, 1: what they lack their neighbours must bring, at whatever price of water.</summary>
    public double BlockedWeight { get; init; } = 3.0;

    /// <summary>Weight of cells within the relief's amplitude of the wanted surface, 1.</summary>
    public double ReliefWeight { get; init; } = 0.3;

    /// <summary>Hardened share that one setting content of water above the dose of a full voxel costs, 1.</summary>
    public double WaterPrice { get; init; } = 0.06;

    /// <summary>The same above the upper end of the wanted band of water/cement less <see cref="NominalDose.BandMargin"/>, 1.</summary>
    public double BandPrice { get; init; } = 0.5;

    /// <summary>Water/cement above that of a full voxel from which water has its price, 1.</summary>
    public double WaterRoom { get; init; } = 0.015;

    /// <summary>Width of the Gaussian around a tip, pitches: the weight falls to 1/e there.</summary>
    public double ReachPitches { get; init; } = 0.7;

    /// <summary>Gain of a step, 1.</summary>
    public double Gain { get; init; } = 3.0;

    /// <summary>Most that one misfit moves the logarithm of a dose, 1.</summary>
    public double MostStep { get; init; } = 0.35;

    /// <summary>Share of the last step that goes on, 1.</summary>
    public double Momentum { get; init; } = 0.5;

    /// <summary>Dose of a full voxel from which the correction starts, as a share of the least that closes all pockets, 1: pockets then ask for what they lack.</summary>
    public double StartShare { get; init; } = 0.93;
}
