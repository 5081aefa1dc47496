using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Orders.Batches;

namespace Dewstone.Orders.Tests.Batches;

public sealed class SeedVariationTests
{
    // Computed apart from this code, in Python, from the generator as published (Steele, Lea, Flood 2014, with the constants of the public
    // reference code; its first output for seed 1234567 is 6457827717110365317): out(out(out(vary, ordinal), draw), own) >> 11.
    [Theory]
    [InlineData(1UL, 1, 0, 7UL, 8780304272257800UL)]
    [InlineData(1UL, 1, 1, 7UL, 4584920695745967UL)]
    [InlineData(1UL, 2, 0, 7UL, 2073400586351534UL)]
    [InlineData(1UL, 80, 5, 11UL, 1643767211889065UL)]
    [InlineData(0UL, 1, 0, 0UL, 4527226248070083UL)]
    [InlineData(18446744073709551615UL, 100000, 3, 18446744073709551615UL, 8909081042602302UL)]
    public void Seeds_are_those_computed_apart(ulong vary, int ordinal, int draw, ulong own, ulong seed) =>
        Assert.Equal(seed, SeedVariation.Seed(vary, ordinal, draw, own));

    [Fact]
    public void A_draw_changes_the_seeds_of_scatters_and_relief_and_nothing_else()
    {
        ReefUnit unit = Unit();

        (ReefUnit drawn, IReadOnlyList<DrawnSeed> seeds) = SeedVariation.Draw(unit, 1, 2, 0);

        Assert.Equal(["niches", "relief"], seeds.Select(seed => seed.Feature));
        ScatteredCavities scatter = Assert.IsType<ScatteredCavities>(drawn.Cavities[1]);
        Assert.Equal(seeds[0].Seed, scatter.Seed);
        Assert.Equal(seeds[1].Seed, drawn.Relief!.Seed);
        Assert.Equal(unit.Cavities[1], scatter with { Seed = 11 });
        Assert.Same(unit.Cavities[0], drawn.Cavities[0]);
        Assert.Equal(unit.Relief, drawn.Relief with { Seed = 7 });
        Assert.Equal(unit, drawn with { Cavities = unit.Cavities, Relief = unit.Relief });
    }

    [Fact]
    public void Units_of_a_line_that_does_not_vary_stay_as_they_are()
    {
        ReefUnit unit = Unit();
        (ReefUnit drawn, IReadOnlyList<DrawnSeed> seeds) = SeedVariation.Draw(unit, null, 2, 3);
        Assert.Same(unit, drawn);
        Assert.Empty(seeds);
    }

    [Fact]
    public void No_two_draws_of_a_hundred_units_share_a_seed()
    {
        IEnumerable<ulong> seeds = Enumerable.Range(1, 100).SelectMany(ordinal => Enumerable.Range(0, 6).Select(draw => SeedVariation.Seed(1, ordinal, draw, 7)));
        Assert.Equal(600, seeds.Distinct().Count());
    }

    private static ReefUnit Unit() => new()
    {
        Name = "Block",
        OuterBox = new Size3(0.9, 0.9, 0.9),
        Relief = new Relief { Amplitude = new Length(0.012), ShortestLength = new Length(0.08), LongestLength = new Length(0.25), Faces = FaceSet.Top, Seed = 7 },
        Cavities =
        [
            new FormedCavity { Name = "hollow", Form = new SphereForm { Centre = new Point3(0.4, 0.4, 0.4), Diameter = new Length(0.2) } },
            new ScatteredCavities
            {
                Name = "niches", Count = 3, LeastDiameter = new Length(0.1), GreatestDiameter = new Length(0.16), Gap = new Length(0.1), Faces = FaceSet.East, Seed = 11,
            },
        ],
    };
}
