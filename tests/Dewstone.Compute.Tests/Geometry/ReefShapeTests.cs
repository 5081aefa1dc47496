using CsCheck;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using static Dewstone.Compute.Tests.Geometry.SampleUnits;

namespace Dewstone.Compute.Tests.Geometry;

public sealed class ReefShapeTests
{
    private static readonly ReefUnit Mixed = Plain(0.8, 0.7, 0.6) with
    {
        Rounding = new Length(0.04),
        Blend = new Length(0.03),
        Tunnels =
        [
            Straight("x", Axis.X, new Point3(0.0, 0.35, 0.2), Rectangle(0.2, 0.18, 0.03)),
            Straight("y", Axis.Y, new Point3(0.3, 0.0, 0.24), Round(0.16)),
            Winding("bend", Round(0.12), new Point3(0.6, 0.0, 0.4), new Point3(0.6, 0.3, 0.42), new Point3(0.55, 0.4, 0.6)),
        ],
        Cavities = [Hollow("ball", Ball(0.2, 0.15, 0.6, 0.2)), Hollow("egg", Egg(0.2, 0.6, 0.35, 0.2, 0.3, 0.16)), Hollow("niche",
            Block(0.75, 0.6, 0.2, 0.2, 0.16, 0.12, 0.02))],
        Keep = [Zone("foot", Block(0.4, 0.35, 0.04, 0.8, 0.7, 0.08))],
    };

    // Fixed cases: point i of a box that reaches 100 mm beyond the unit.
    private static Point3 At(uint number, Size3 box)
    {
        Gen<Point3> gen = Gen.Select(
            Gen.Double[-0.1, box.X + 0.1], Gen.Double[-0.1, box.Y + 0.1], Gen.Double[-0.1, box.Z + 0.1], (x, y, z) => new Point3(x, y, z));
        return gen.Generate(new PCG(number, 20), null, out _);
    }

    [Theory]
    [InlineData(0.5, 0.5, 0.9, -0.1)]
    [InlineData(0.5, 0.5, 1.2, 0.2)]
    [InlineData(1.3, 1.4, 0.5, 0.5)]
    [InlineData(0.05, 0.5, 0.5, -0.05)]
    public void Distance_to_a_plain_cube_is_exact(double x, double y, double z, double expected) =>
        Assert.Equal(expected, Shape(Plain(1.0, 1.0, 1.0)).SignedDistance(new Point3(x, y, z)), 1e-12);

    // Asking only the parts near a point must change no bit: held to the same solid asked with all its parts, near and far, inside and out.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Distance_has_the_bits_of_that_from_all_parts(bool block)
    {
        ReefUnit unit = block ? WrackBlock : Mixed;
        ReefShape shape = Shape(unit);
        int[] openings = [.. Enumerable.Range(0, shape.Openings.Count)], keep = [.. Enumerable.Range(0, shape.Keep.Count)];
        for (uint i = 0; i < 20_000; i++)
        {
            Point3 p = At(i, unit.OuterBox);
            Assert.Equal(BitConverter.DoubleToInt64Bits(shape.Value(p.X, p.Y, p.Z, openings, keep)), BitConverter.DoubleToInt64Bits(shape.SignedDistance(p)));
        }
    }

    // The corner of a box rounded by 0.1: along the diagonal the surface lies at 0.1 from the core's corner.
    [Fact]
    public void Distance_to_a_rounded_corner_is_that_to_its_ball()
    {
        double diagonal = 0.1 / Math.Sqrt(3.0);
        Point3 onBall = new(0.9 + diagonal, 0.9 + diagonal, 0.9 + diagonal);

        Assert.Equal(0.0, Shape(Plain(1.0, 1.0, 1.0) with { Rounding = new Length(0.1) }).SignedDistance(onBall), 1e-12);
    }

    // The nearest point must lie on the ellipsoid, and the way to it along its normal: the two conditions that define it.
    [Fact]
    public void Nearest_point_of_an_ellipsoid_is_on_it_and_square_to_it()
    {
        Point3 half = new(0.3, 0.2, 0.05);
        for (uint i = 0; i < 500; i++)
        {
            Point3 p = At(i, new Size3(0.5, 0.5, 0.5)) - new Point3(0.25, 0.25, 0.25), foot = Forms.NearestOnEllipsoid(p, half);
            double on = foot.X * foot.X / 0.09 + foot.Y * foot.Y / 0.04 + foot.Z * foot.Z / 0.0025;
            Assert.Equal(1.0, on, 1e-9);
            Point3 away = p - foot;
            if (away.Norm > 1e-4) { Assert.Equal(1.0, Math.Abs(Point3.Dot(Forms.Unit(away), Forms.EllipsoidNormal(p, half))), 1e-6); }
        }
    }

    [Fact]
    public void Distance_to_an_ellipsoid_from_its_axes_is_exact()
    {
        Point3 half = new(0.3, 0.2, 0.1);

        Assert.Equal(0.2, Forms.EllipsoidDistance(new Point3(0.5, 0.0, 0.0), half), 1e-9);
        Assert.Equal(0.4, Forms.EllipsoidDistance(new Point3(0.0, 0.0, -0.5), half), 1e-9);
        Assert.Equal(-0.1, Forms.EllipsoidDistance(new Point3(0.0, 0.0, 0.0), half), 1e-9);
        Assert.Equal(0.15, Forms.EllipsoidDistance(new Point3(0.25, 0.0, 0.0), new Point3(0.1, 0.1, 0.1)), 1e-9);
    }

    // Pairs of points in the solid 1 to 30 mm apart; without blend and relief the slope is at most 1.
    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void Slope_in_the_solid_keeps_to_its_bound(bool blend, bool relief)
    {
        ReefUnit unit = Mixed with
        {
            Blend = new Length(blend ? 0.03 : 0.0),
            Relief = relief ? WrackBlock.Relief : null,
        };
        ReefShape shape = Shape(unit);
        double steepest = 0.0;
        for (uint i = 0; i < 20_000; i++)
        {
            Point3 p = At(i, unit.OuterBox), step = Forms.Unit(At(i + 100_000, new Size3(0.0, 0.0, 0.0))), q = p + step * (0.001 * (1 + i % 30));
            double here = shape.SignedDistance(p), there = shape.SignedDistance(q);
            if (here < 0.0 && there < 0.0) { steepest = Math.Max(steepest, Math.Abs(here - there) / (p - q).Norm); }
        }

        Assert.InRange(steepest, 0.9, shape.Lipschitz + 1e-9);
        Assert.Equal(1.0 + (blend ? 2.0 : 0.0), shape.Lipschitz - shape.Body.ReliefSlope, 1e-12);
    }

    [Fact]
    public void Distance_in_the_void_leaves_a_free_ball()
    {
        ReefShape shape = Shape(Mixed with { Blend = default });
        for (uint i = 0; i < 3_000; i++)
        {
            Point3 p = At(i, Mixed.OuterBox), way = Forms.Unit(At(i + 50_000, new Size3(0.0, 0.0, 0.0)));
            double free = shape.SignedDistance(p);
            if (free > 0.0) { Assert.InRange(shape.SignedDistance(p + way * free), -1e-12, double.MaxValue); }
        }
    }

    [Fact]
    public void Mirrored_unit_has_the_mirrored_distance()
    {
        double width = Mixed.OuterBox.X;
        ReefUnit mirrored = Mixed with
        {
            Tunnels = [.. Mixed.Tunnels.Select(Mirror)],
            Cavities = [.. Mixed.Cavities.Cast<FormedCavity>().Select(c => c with { Form = c.Form with { Centre = Flip(c.Form.Centre) } })],
        };
        ReefShape one = Shape(Mixed), other = Shape(mirrored);
        for (uint i = 0; i < 2_000; i++)
        {
            Point3 p = At(i, Mixed.OuterBox);
            Assert.Equal(one.SignedDistance(p), other.SignedDistance(Flip(p)), 1e-9);
        }

        Tunnel Mirror(Tunnel t) => t switch
        {
            AxisTunnel { Along: Axis.X } along => along,
            AxisTunnel a => a with { At = Flip(a.At) },
            PathTunnel p => p with { Path = [.. p.Path.Select(Flip)] },
            _ => throw new InvalidOperationException("A new kind of tunnel needs its mirror here."),
        };

        Point3 Flip(Point3 p) => p with { X = width - p.X };
    }

    [Fact]
    public void Distance_scales_with_the_unit()
    {
        ReefUnit half = Plain(0.4, 0.4, 0.4) with
        {
            Blend = new Length(0.02),
            Tunnels = [Straight("x",
            Axis.X, new Point3(0.0, 0.2, 0.2), Round(0.1))]
        };
        ReefUnit whole = Plain(0.8, 0.8, 0.8) with
        {
            Blend = new Length(0.04),
            Tunnels = [Straight("x",
            Axis.X, new Point3(0.0, 0.4, 0.4), Round(0.2))]
        };
        ReefShape small = Shape(half), large = Shape(whole);
        for (uint i = 0; i < 1_000; i++)
        {
            Point3 p = At(i, half.OuterBox);
            Assert.Equal(2.0 * small.SignedDistance(p), large.SignedDistance(p * 2.0), 1e-12);
        }
    }

    // Two tunnels with their floors at one height: where they cross, the fillet must not dish the common floor.
    [Fact]
    public void Common_floor_of_crossing_tunnels_stays_flat()
    {
        ReefShape shape = Shape(WrackBlock with { Cavities = [], Relief = null });
        foreach (double x in new[] { 0.31, 0.38, 0.45, 0.56 }) { Assert.Equal(0.0, shape.SignedDistance(new Point3(x, 0.45, 0.12)), 1e-12); }
    }

    [Fact]
    public void Keep_zone_wins_over_openings_and_loses_to_the_body()
    {
        ReefShape shape = Shape(Mixed with
        {
            Tunnels = [.. Mixed.Tunnels, Straight("up",
            Axis.Z, new Point3(0.4, 0.35, 0.0), Round(0.2))]
        });

        Assert.True(shape.SignedDistance(new Point3(0.4, 0.35, 0.04)) < 0.0);
        Assert.True(shape.SignedDistance(new Point3(0.4, 0.35, 0.3)) > 0.0);
        Assert.True(shape.SignedDistance(new Point3(0.001, 0.001, 0.001)) > 0.0);
    }

    [Fact]
    public void Opening_distance_is_that_of_the_named_opening_alone()
    {
        ReefShape shape = Shape(Mixed);
        int ball = shape.Named.ToList().FindIndex(o => o.Name == "ball");

        Assert.Equal(-0.1, shape.OpeningDistance(ball, new Point3(0.2, 0.15, 0.6)), 1e-12);
        Assert.Equal(0.1, shape.OpeningDistance(ball, new Point3(0.2, 0.15, 0.4)), 1e-12);
        Assert.Equal(3, shape.Named.Count(o => o.Tunnel >= 0));
    }
}
