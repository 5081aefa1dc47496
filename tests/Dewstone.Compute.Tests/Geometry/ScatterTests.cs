using CsCheck;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using static Dewstone.Compute.Tests.Geometry.SampleUnits;

namespace Dewstone.Compute.Tests.Geometry;

public sealed class ScatterTests
{
    private static readonly ScatteredCavities Niches = (ScatteredCavities)WrackBlock.Cavities[0];

    [Fact]
    public void Scatter_frozen_for_version_1_gives_its_20_vectors()
    {
        ReefUnit unit = WrackBlock with { Cavities = [Niches with { Count = 20, Gap = new Length(0.06), Seed = 12 }] };

        Assert.Equal(FrozenVectors.Scatter, ReefShapeBuilder.Build(unit).Hollows);
    }

    [Fact]
    public void Scatter_of_the_habitat_block_places_all_18()
    {
        ShapeResult result = ReefShapeBuilder.Build(WrackBlock);

        Assert.Empty(result.Diagnostics);
        Assert.Equal(18, result.Hollows.Count);
    }

    [Fact]
    public void Scatter_that_finds_no_room_says_how_many_it_placed()
    {
        ShapeResult result = ReefShapeBuilder.Build(WrackBlock with { Cavities = [Niches with { Count = 200 }] });

        Model.Diagnostics.Diagnostic finding = Assert.Single(result.Diagnostics);
        Assert.Equal("DW2001", finding.Code);
        Assert.Equal("cavities[0].scatter.count", finding.Key!.Path);
        Assert.Contains($"room for {result.Hollows.Count} of 200", finding.Message, StringComparison.Ordinal);
        Assert.InRange(result.Hollows.Count, 10, 199);
    }

    // Hollows placed for a smaller count are the first of those for a larger one: a scatter grows without moving.
    [Fact]
    public void Scatter_with_a_larger_count_begins_with_the_smaller_ones_hollows()
    {
        IReadOnlyList<ScatteredHollow> few = ReefShapeBuilder.Build(WrackBlock with { Cavities = [Niches with { Count = 7 }] }).Hollows;

        Assert.Equal(ReefShapeBuilder.Build(WrackBlock).Hollows.Take(7), few);
    }

    [Fact]
    public void Scatter_second_in_the_list_keeps_its_gap_to_the_first()
    {
        ReefUnit unit = WrackBlock with
        {
            Cavities = [Niches with { Count = 6 }, Niches with { Name = "more", Count = 6, Gap = new Length(0.08), Seed = 11 }],
        };
        IReadOnlyList<ScatteredHollow> hollows = ReefShapeBuilder.Build(unit).Hollows;

        Assert.Equal(12, hollows.Count);
        Assert.True(Least(hollows) >= 0.08);
    }

    // 60 fixed cases over sizes, faces, bands, gaps, seeds and inside: every rule of placing holds for every hollow.
    [Fact]
    public void Scatter_of_any_kind_keeps_count_sizes_gaps_faces_and_bands()
    {
        FaceSet[] sets = [FaceSet.Top, FaceSet.Sides, FaceSet.East, FaceSet.Bottom | FaceSet.West, FaceSet.Sides | FaceSet.Top];
        Gen<(ScatteredCavities Scatter, double Way)> gen = Gen.Select(
            Gen.Int[1, 12], Gen.Double[0.03, 0.08], Gen.Double[1.0, 1.6], Gen.Double[0.0, 0.06], Gen.Int[0, sets.Length - 1], Gen.ULong, Gen.Int[0, 3],
            (count, least, ratio, gap, faces, seed, kind) => (
                new ScatteredCavities
                {
                    Name = "s",
                    Count = count,
                    LeastDiameter = new Length(least),
                    GreatestDiameter = new Length(least * ratio),
                    Gap = new Length(gap),
                    Faces = kind == 0 ? FaceSet.None : sets[faces],
                    Inside = kind == 0,
                    BandX = kind == 1 ? new Band(new Length(0.1), new Length(0.7)) : null,
                    BandZ = kind == 2 ? new Band(new Length(0.2), new Length(0.6)) : null,
                    Seed = seed,
                },
                0.1 + gap));
        int placed = 0;
        for (uint i = 0; i < 60; i++)
        {
            (ScatteredCavities scatter, double way) = gen.Generate(new PCG(i, 2), null, out _);
            ReefUnit unit = Plain(0.8, 0.7, 0.6) with
            {
                Rounding = new Length(0.02),
                Tunnels = [Straight("way", Axis.Y, new Point3(0.4, 0.0, 0.3), Round(way))],
                Cavities = [scatter],
            };
            ShapeResult result = ReefShapeBuilder.Build(unit);
            placed += result.Hollows.Count;
            Assert.True(result.Hollows.Count <= scatter.Count);
            Assert.Equal(result.Hollows.Count < scatter.Count, result.Diagnostics.Any(d => d.Code == "DW2001"));
            Assert.True(Least(result.Hollows) >= scatter.Gap.Metres);
            foreach (ScatteredHollow hollow in result.Hollows) { Holds(scatter, hollow, result.Shape); }
        }

        Assert.InRange(placed, 200, 60 * 12);
    }

    private static void Holds(ScatteredCavities scatter, ScatteredHollow hollow, ReefShape shape)
    {
        double radius = hollow.DiameterMetres / 2.0;
        Point3 c = hollow.Centre;
        Assert.InRange(hollow.DiameterMetres, scatter.LeastDiameter.Metres, scatter.GreatestDiameter.Metres);
        Assert.True(shape.OpeningDistance(0, c) >= radius + scatter.Gap.Metres);
        if (scatter.BandX is Band x) { Assert.InRange(c.X, x.From.Metres, x.To.Metres); }
        if (scatter.BandZ is Band z) { Assert.InRange(c.Z, z.From.Metres, z.To.Metres); }
        if (scatter.Inside)
        {
            Assert.True(shape.Body.Plain(c.X, c.Y, c.Z) <= -(radius + scatter.Gap.Metres));
            return;
        }
        Assert.True(scatter.Faces.HasFlag(hollow.Face) && hollow.Face != FaceSet.None);
        double depth = hollow.Face switch
        {
            FaceSet.West => c.X,
            FaceSet.East => 0.8 - c.X,
            FaceSet.South => c.Y,
            FaceSet.North => 0.7 - c.Y,
            FaceSet.Bottom => c.Z,
            _ => 0.6 - c.Z,
        };
        Assert.InRange(depth / radius, 0.2 - 1e-9, 0.5 + 1e-9);
        double[] depths = [c.X, 0.8 - c.X, c.Y, 0.7 - c.Y, c.Z, 0.6 - c.Z];
        Assert.Single(depths, d => d < radius);
    }

    private static double Least(IReadOnlyList<ScatteredHollow> hollows)
    {
        double least = double.PositiveInfinity;
        for (int i = 0; i < hollows.Count; i++)
        {
            for (int j = i + 1; j < hollows.Count; j++)
            {
                double apart = (hollows[i].Centre - hollows[j].Centre).Norm - (hollows[i].DiameterMetres + hollows[j].DiameterMetres) / 2.0;
                least = Math.Min(least, apart);
            }
        }
        return least + 1e-12;
    }
}
