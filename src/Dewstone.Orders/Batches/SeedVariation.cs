using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;

namespace Dewstone.Orders.Batches;

/// <summary>Gives each unit of a varied line niches and relief of its own: the same unit of the same order has the same seeds on every machine.</summary>
/// <remarks>
/// A feature's seed is the upper 53 bits of mix(mix(mix(s, k), d), own), where mix(seed, n) is output n of a SplitMix64 with that seed, s the
/// line's seed, k the unit's number in its line, d the draw and own the feature's seed in the unit's file.
/// </remarks>
public static class SeedVariation
{
    private const int DroppedBits = 11;

    /// <summary>A seed.</summary>
    /// <param name="vary">Seed of the line.</param>
    /// <param name="ordinal">Number of the unit within its line, from 1.</param>
    /// <param name="draw">Draw, from 0.</param>
    /// <param name="own">Seed the unit's file gives the feature.</param>
    /// <returns>A seed under 2^53.</returns>
    public static ulong Seed(ulong vary, int ordinal, int draw, ulong own) =>
        SplitMix64.Output(SplitMix64.Output(SplitMix64.Output(vary, (ulong)ordinal), (ulong)draw), own) >> DroppedBits;

    /// <summary>A unit with the seeds of a draw.</summary>
    /// <param name="unit">As its file describes it.</param>
    /// <param name="vary">Seed of the line; null when its units are alike.</param>
    /// <param name="ordinal">Number within its line, from 1.</param>
    /// <param name="draw">Draw, from 0.</param>
    /// <returns>The unit and the seeds it was given; the unit itself and none when its line does not vary.</returns>
    public static (ReefUnit Unit, IReadOnlyList<DrawnSeed> Seeds) Draw(ReefUnit unit, ulong? vary, int ordinal, int draw)
    {
        ArgumentNullException.ThrowIfNull(unit);
        if (vary is not { } seed)
        {
            return (unit, []);
        }

        List<DrawnSeed> seeds = [];
        List<Cavity> cavities = [];
        foreach (Cavity cavity in unit.Cavities)
        {
            if (cavity is ScatteredCavities scatter)
            {
                seeds.Add(new DrawnSeed(scatter.Name, Seed(seed, ordinal, draw, scatter.Seed)));
                cavities.Add(scatter with { Seed = seeds[^1].Seed });
            }
            else
            {
                cavities.Add(cavity);
            }
        }

        Relief? relief = unit.Relief;
        if (relief is not null)
        {
            relief = relief with { Seed = Seed(seed, ordinal, draw, relief.Seed) };
            seeds.Add(new DrawnSeed("relief", relief.Seed));
        }

        return (unit with { Cavities = cavities, Relief = relief }, seeds);
    }
}
