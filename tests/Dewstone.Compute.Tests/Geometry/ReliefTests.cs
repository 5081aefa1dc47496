using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using static Dewstone.Compute.Tests.Geometry.SampleUnits;

namespace Dewstone.Compute.Tests.Geometry;

public sealed class ReliefTests
{
    private static readonly OuterBody Body = new(WrackBlock);

    private static readonly OuterBody Plainly = new(WrackBlock with { Relief = null });

    private static IEnumerable<Point3> Points(int count) => Enumerable.Range(0, count).Select(i => new Point3(
        0.9 * ((i * 0.754877666) % 1.0), 0.9 * ((i * 0.569840291) % 1.0), 0.9 * ((i * 0.382716049) % 1.0)));

    [Fact]
    public void Wavelengths_halve_from_the_longest_and_end_at_the_shortest()
    {
        Assert.Equal([0.25, 0.125, 0.08], ReliefNoise.Wavelengths(0.25, 0.08));
        Assert.Equal([0.2, 0.1], ReliefNoise.Wavelengths(0.2, 0.1));
        Assert.Equal([0.1], ReliefNoise.Wavelengths(0.1, 0.1));
    }

    [Fact]
    public void Relief_removes_0_to_its_amplitude_and_adds_nothing()
    {
        foreach (Point3 p in Points(5_000))
        {
            double removed = Body.Relieved(p.X, p.Y, p.Z) - Plainly.Relieved(p.X, p.Y, p.Z);
            Assert.InRange(removed, 0.0, 0.012);
        }
    }

    [Fact]
    public void Relief_spares_a_face_that_is_not_named()
    {
        foreach (Point3 p in Points(500)) { Assert.Equal(Plainly.Plain(p.X, p.Y, 0.0), Body.Relieved(p.X, p.Y, 0.0)); }
    }

    // On a named face, away from the bottom, the depths must use a good part of the amplitude: bumps, not an even skin.
    [Fact]
    public void Relief_on_a_named_face_varies_over_a_good_part_of_its_amplitude()
    {
        List<double> depths = [.. Points(2_000).Where(p => p.Z > 0.2).Select(p => Body.Relieved(0.0, p.Y, p.Z) - Body.Plain(0.0, p.Y, p.Z))];

        Assert.InRange(depths.Max() - depths.Min(), 0.006, 0.012);
        Assert.InRange(depths.Average(), 0.004, 0.008);
    }

    [Fact]
    public void Relief_slope_keeps_to_its_bound()
    {
        double steepest = 0.0;
        foreach (Point3 p in Points(20_000))
        {
            double here = Body.Relieved(p.X, p.Y, p.Z) - Body.Plain(p.X, p.Y, p.Z);
            double there = Body.Relieved(p.X + 0.0006, p.Y + 0.0008, p.Z) - Body.Plain(p.X + 0.0006, p.Y + 0.0008, p.Z);
            steepest = Math.Max(steepest, Math.Abs(there - here) / 0.001);
        }

        Assert.InRange(steepest, Body.ReliefSlope / 10.0, Body.ReliefSlope);
    }

    // A lattice too large for a table is hashed where it is looked at; both ways must give the same bits.
    [Fact]
    public void Noise_of_a_huge_box_is_that_of_a_small_one_where_they_overlap()
    {
        Relief fine = WrackBlock.Relief! with { ShortestLength = new Length(0.02), LongestLength = new Length(0.02) };
        ReliefNoise tabled = new(fine, new Size3(0.5, 0.5, 0.5), 0), hashed = new(fine, new Size3(3.0, 3.0, 3.0), 0);

        foreach (Point3 p in Points(200)) { Assert.Equal(tabled.Value(p.X / 2.0, p.Y / 2.0, p.Z / 2.0), hashed.Value(p.X / 2.0, p.Y / 2.0, p.Z / 2.0)); }
    }

    [Fact]
    public void Noise_frozen_for_version_1_gives_its_20_vectors()
    {
        ReliefNoise noise = new(WrackBlock.Relief!, new Size3(0.9, 0.9, 0.9), ReefShapeBuilder.ReliefFeature);

        Assert.Equal(FrozenVectors.Relief, Points(20).Select(p => noise.Value(p.X, p.Y, p.Z)));
    }
}
