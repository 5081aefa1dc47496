using Dewstone.Compute.Habitat;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Habitat;

/// <summary>The refuge curve against shapes whose reachable volume has a closed form.</summary>
public sealed class RefugeCurveTests
{
    private static readonly Size3 Cube = new(0.4, 0.4, 0.4);

    /// <summary>
    /// A round tunnel of diameter D through length L lets in every ball up to D, and such a ball reaches all of it: pi D^2 L / 4; of a wider ball of radius r only a cap of height
    /// h = r - sqrt(r^2 - D^2 / 4) bulges into each mouth, pi h^2 (3 r - h) / 3.
    /// </summary>
    [Fact]
    public void Round_tunnels_open_at_their_diameters()
    {
        const double Narrow = 0.08, Wide = 0.14;
        BallReach reach = Waters.Reach(Cube, 0.01, p => Tunnelled(p, (0.12, 0.12, Narrow), (0.28, 0.28, Wide)), 0.2);

        double both = Math.PI / 4.0 * 0.4 * (Narrow * Narrow + Wide * Wide), one = Math.PI / 4.0 * 0.4 * Wide * Wide;
        Assert.Equal(1.0, reach.VoidCubicMetres() / both, 0.02);
        Assert.Equal(1.0, Waters.Volume(reach, 0.05) / both, 0.03);
        Assert.Equal(1.0, Waters.Volume(reach, 0.11) / (one + 2.0 * Cap(0.055, Narrow)), 0.03);
        Assert.Equal(1.0, Waters.Volume(reach, 0.16) / (2.0 * Cap(0.08, Narrow) + 2.0 * Cap(0.08, Wide)), 0.1);

        static double Cap(double radius, double mouth)
        {
            double height = radius - Math.Sqrt(radius * radius - mouth * mouth / 4.0);
            return Math.PI * height * height * (3.0 * radius - height) / 3.0;
        }
    }

    /// <summary>
    /// Test modules of 1 m3 with 12 square tunnels, 6 along each of two directions, none crossing: of 150 mm, of 75 mm, or 6 and 6 (sizes as printed at nsuworks.nova.edu/occ_facpresentations/67;
    /// void 12 x 0.15^2 = 0.270 and 12 x 0.075^2 = 0.0675 m3). A ball of radius r in a square of side a reaches a^2 - (4 - pi) r^2 of it; wider than a it only bulges into the mouths, by
    /// less than r - sqrt(r^2 - a^2 / 4). The error falls with the cell, so the values at 25 and 12.5 mm are extrapolated; 75 mm are no whole cells of 25, so those modules are on 12.5 mm alone.
    /// </summary>
    [Theory]
    [InlineData(0.15, 0.15)]
    [InlineData(0.075, 0.075)]
    [InlineData(0.15, 0.075)]
    public void Modules_of_twelve_tunnels_equal_the_closed_form(double alongX, double alongY)
    {
        BallReach coarse = Waters.Reach(new Size3(1, 1, 1), 0.025, p => Module(p, alongX, alongY), 0.2);
        BallReach reach = Waters.Reach(new Size3(1, 1, 1), 0.0125, p => Module(p, alongX, alongY), 0.2);

        Assert.Equal(1.0, reach.VoidCubicMetres() / (6 * alongX * alongX + 6 * alongY * alongY), 1e-6);
        foreach (double diameter in (double[])[0.1, 0.125])
        {
            double expected = 6 * Square(alongX, diameter) + 6 * Square(alongY, diameter);
            double found = Waters.Volume(reach, diameter);
            double bulge = 12 * Bulge(alongX, diameter) + 12 * Bulge(alongY, diameter);
            Assert.InRange(found, expected * 0.95, expected * 1.02 + bulge);
        }

        // Where the ball has a coarse cell of room on either side, the error falls with the cell.
        if (alongX == alongY && alongX > 0.1)
        {
            Assert.Equal(1.0, (2.0 * Waters.Volume(reach, 0.1) - Waters.Volume(coarse, 0.1)) / (12 * Square(alongX, 0.1)), 0.02);
        }

        static double Square(double side, double diameter) => diameter < side ? side * side - (4.0 - Math.PI) * diameter * diameter / 4.0 : 0.0;

        static double Bulge(double side, double diameter) =>
            diameter < side ? 0.0 : side * side * (0.5 * diameter - Math.Sqrt(0.25 * (diameter * diameter - side * side)));
    }

    /// <summary>
    /// Menger sponge of level 2: void 1 - (20/27)^2 of the cube; a ball wider than a ninth gets only into the cross of level 1, void 7/27, whose six arms of side s = 1/3 lose
    /// (4 - pi) r^2 s each in their corners; the lower one stands on the seabed and loses (1 - pi / 4) r^2 s along four more edges. Into each of the 72 small mouths (8 a face, 24 in the
    /// arms) it bulges by less than r - sqrt(r^2 - a^2 / 4).
    /// </summary>
    [Fact]
    public void Menger_sponge_shuts_its_small_holes_to_a_large_ball()
    {
        const double Side = 0.81;
        BallReach reach = Waters.Reach(new Size3(Side, Side, Side), 0.01, p => Sponge(p, Side, 2), 0.3);
        double cube = Side * Side * Side, arm = Side / 3.0;

        Assert.Equal(1.0, reach.VoidCubicMetres() / (cube * (1.0 - Math.Pow(20.0 / 27.0, 2))), 0.02);
        foreach (double diameter in (double[])[0.12, 0.16, 0.2])
        {
            double radius = 0.5 * diameter, small = Side / 9.0;
            double expected = cube * 7.0 / 27.0 - 7.0 * (4.0 - Math.PI) * radius * radius * arm;
            double bulges = 72 * small * small * (radius - Math.Sqrt(radius * radius - 0.25 * small * small));
            Assert.InRange(Waters.Volume(reach, diameter), 0.97 * expected, 1.02 * expected + bulges);
        }
    }

    /// <summary>A chamber behind a neck is reached by what passes the neck, and a sealed one by nothing.</summary>
    [Fact]
    public void Neck_decides_who_reaches_the_chamber()
    {
        BallReach open = Waters.Reach(Cube, 0.01, p => Chamber(p, 0.08), 0.2), sealedUp = Waters.Reach(Cube, 0.01, p => Chamber(p, 0.0), 0.2);
        double chamber = Math.PI / 6.0 * 0.2 * 0.2 * 0.2;

        Assert.InRange(Waters.Volume(open, 0.06), chamber, 1.3 * chamber);
        Assert.InRange(Waters.Volume(open, 0.1), 0.0, 0.05 * chamber);
        Assert.InRange(sealedUp.VoidCubicMetres(), 0.97 * chamber, 1.03 * chamber);
        Assert.InRange(Waters.Volume(sealedUp, 0.04), 0.0, 0.02 * chamber);
    }

    [Fact]
    public void Threads_change_nothing()
    {
        BallReach one = new(Waters.Field(Cube, 0.02, p => Chamber(p, 0.08), 0.1), 0.2, new(1)), four = new(Waters.Field(Cube, 0.02, p => Chamber(p, 0.08), 0.1), 0.2, new(4));

        Assert.Equal(one.Of(0.06, new(1)), four.Of(0.06, new(4)));
    }

    private static double Tunnelled(Point3 p, params ReadOnlySpan<(double Y, double Z, double Diameter)> tunnels)
    {
        double distance = Waters.Block(p, new Point3(0, 0, 0), new Point3(Cube.X, Cube.Y, Cube.Z));
        foreach ((double y, double z, double diameter) in tunnels)
        {
            distance = Math.Max(distance, 0.5 * diameter - Math.Sqrt((p.Y - y) * (p.Y - y) + (p.Z - z) * (p.Z - z)));
        }

        return distance;
    }

    private static double Module(Point3 p, double alongX, double alongY)
    {
        double distance = Waters.Block(p, new Point3(0, 0, 0), new Point3(1, 1, 1));
        for (int level = 0; level < 4; level++)
        {
            double z = 0.125 + 0.25 * level, half = 0.5 * (level % 2 == 0 ? alongX : alongY);
            foreach (double across in (double[])[0.2, 0.5, 0.8])
            {
                distance = Math.Max(
                    distance,
                    level % 2 == 0
                        ? -Waters.Block(p, new Point3(-1, across - half, z - half), new Point3(2, across + half, z + half))
                        : -Waters.Block(p, new Point3(across - half, -1, z - half), new Point3(across + half, 2, z + half)));
            }
        }

        return distance;
    }

    private static double Sponge(Point3 p, double side, int levels)
    {
        double distance = Waters.Block(p, new Point3(0, 0, 0), new Point3(side, side, side));
        for (int level = 0; level < levels; level++)
        {
            side /= 3.0;
            double x = Folded(p.X, side), y = Folded(p.Y, side), z = Folded(p.Z, side);
            double hole = Math.Min(Math.Max(x, y), Math.Min(Math.Max(y, z), Math.Max(z, x)));
            distance = Math.Max(distance, -hole);
        }

        return distance;

        // Distance to the middle third of the period that the coordinate lies in, negative inside it.
        static double Folded(double v, double third) => Math.Abs(v - 3.0 * third * Math.Floor(v / (3.0 * third)) - 1.5 * third) - 0.5 * third;
    }

    private static double Chamber(Point3 p, double neck)
    {
        double solid = Waters.Block(p, new Point3(0, 0, 0), new Point3(Cube.X, Cube.Y, Cube.Z));
        double ball = Math.Sqrt((p.X - 0.2) * (p.X - 0.2) + (p.Y - 0.2) * (p.Y - 0.2) + (p.Z - 0.2) * (p.Z - 0.2)) - 0.1;
        double way = p.X < 0.2 ? Math.Sqrt((p.Y - 0.2) * (p.Y - 0.2) + (p.Z - 0.2) * (p.Z - 0.2)) - 0.5 * neck : 1.0;
        return Math.Max(solid, -(neck > 0.0 ? Math.Min(ball, way) : ball));
    }
}
