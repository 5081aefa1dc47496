using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;
using static Dewstone.Compute.Tests.Geometry.SampleUnits;

namespace Dewstone.Compute.Tests.Geometry;

/// <summary>Volumes of the voxelized shape against closed forms, on cells of 6.25 mm: 8 cells to a voxel of 50 mm.</summary>
public sealed class VolumeTests
{
    private const double Cell = 0.00625;
    private const double Share = 0.002;

    private static double Volume(ReefUnit unit) => Voxelizer.Volume(Shape(unit), Cell, new Parallelism(2), CancellationToken.None);

    private static void Near(double expected, double actual) => Assert.InRange(actual, expected * (1.0 - Share), expected * (1.0 + Share));

    // V = abc + 2 r (ab + bc + ca) + pi r^2 (a + b + c) + 4/3 pi r^3 with a = L - 2 r (exact). 100 x 60 x 40, r = 10: 224171.087355; here
    // in cm.
    [Fact]
    public void Rounded_box_has_the_volume_of_its_closed_form() =>
        Near(0.224171087355, Volume(Plain(1.0, 0.6, 0.4) with { Rounding = new Length(0.1) }));

    // Steiner 1840: V(K + rB) = V + S r + M r^2 + 4/3 pi r^3. Box 3 x 4 x 5 with a ball of r = 2: 432.306769011; here in dm.
    [Fact]
    public void Box_grown_by_a_ball_obeys_the_Steiner_formula() =>
        Near(0.432306769011, Volume(Plain(0.7, 0.8, 0.9) with { Rounding = new Length(0.2) }));

    [Fact]
    public void Cube_rounded_by_half_its_edge_is_a_ball() =>
        Near(4.0 / 3.0 * Math.PI * 0.064, Volume(Plain(0.8, 0.8, 0.8) with { Rounding = new Length(0.4) }));

    // 4/3 pi abc (exact), half axes 450, 300, 150 mm. The void is held to the 0.2 %, not the much larger solid.
    [Fact]
    public void Ellipsoid_hollow_has_the_volume_of_its_closed_form() =>
        Near(
            4.0 / 3.0 * Math.PI * 0.45 * 0.3 * 0.15,
            1.0 - Volume(Plain(1.0, 1.0, 1.0) with { Cavities = [Hollow("egg", Egg(0.5, 0.5, 0.5, 0.9, 0.6, 0.3))] }));

    // Two crossing cylinders share 16/3 r^3 (Steinmetz, exact): void 2 pi r^2 - 16/3 r^3 = 0.208660746 in a unit cube with r = 0.2.
    [Fact]
    public void Two_round_tunnels_that_cross_leave_the_void_of_Steinmetz() =>
        Near(0.208660746, 1.0 - Volume(Plain(1.0, 1.0, 1.0) with { Tunnels = [Way(Axis.X), Way(Axis.Y)] }));

    // Three: void 3 pi r^2 - 16 r^3 + 8 (2 - sqrt 2) r^3 = 0.286481450 (exact).
    [Fact]
    public void Three_round_tunnels_that_cross_leave_the_void_of_Steinmetz() =>
        Near(0.286481450, 1.0 - Volume(Plain(1.0, 1.0, 1.0) with { Tunnels = [Way(Axis.X), Way(Axis.Y), Way(Axis.Z)] }));

    // The first step of the sponge of Menger 1926: 20 of 27 cubes stay (exact).
    [Fact]
    public void Three_square_tunnels_of_a_third_leave_20_of_27_cubes()
    {
        RectangularSection third = Rectangle(1.0 / 3.0, 1.0 / 3.0);
        Point3 middle = new(0.5, 0.5, 0.5);
        ReefUnit sponge = Plain(1.0, 1.0, 1.0) with
        {
            Tunnels = [Straight("x", Axis.X, middle, third), Straight("y", Axis.Y, middle, third), Straight("z", Axis.Z, middle, third)],
        };

        Near(20.0 / 27.0, Volume(sponge));
    }

    // Area w h - (4 - pi) r^2 (exact) times the length of the tunnel.
    [Theory]
    [InlineData(Axis.X)]
    [InlineData(Axis.Y)]
    [InlineData(Axis.Z)]
    public void Tunnel_of_rounded_rectangular_section_has_the_void_of_its_closed_form(Axis along)
    {
        ReefUnit unit = Plain(1.0, 1.0, 1.0) with { Tunnels = [Straight("way", along, new Point3(0.5, 0.5, 0.5), Rectangle(0.5, 0.3, 0.05))] };

        Near(0.5 * 0.3 - (4.0 - Math.PI) * 0.0025, 1.0 - Volume(unit));
    }

    // A bent way: two straight pieces of unit length and the elbow. Mitred square section s, both legs to the faces from the middle: s^2
    // (0.5 + 0.5) (exact).
    [Fact]
    public void Square_path_with_a_right_bend_has_a_mitred_elbow()
    {
        ReefUnit unit = Plain(1.0, 1.0, 1.0) with
        {
            Tunnels = [Winding("bend",
                Rectangle(0.2, 0.2), new Point3(0.0, 0.5, 0.5), new Point3(0.5, 0.5, 0.5), new Point3(0.5, 1.0, 0.5))],
        };

        Near(0.04, 1.0 - Volume(unit));
    }

    // Round section r, both legs 0.5 long. Two cylinders (2 x 0.5 pi r^2) less what they share (a quarter of Steinmetz' 16/3 r^3) plus the
    // quarter ball that fills the outer side (pi r^3 / 3); exact.
    [Fact]
    public void Round_path_with_a_right_bend_has_a_ball_in_its_elbow()
    {
        const double R = 0.12;
        ReefUnit unit = Plain(1.0, 1.0, 1.0) with
        {
            Tunnels = [Winding("bend", Round(2.0 * R), new Point3(0.0, 0.5, 0.5), new Point3(0.5, 0.5, 0.5), new Point3(0.5, 1.0, 0.5))],
        };

        Near((Math.PI * R * R) - (4.0 / 3.0 * R * R * R) + (Math.PI * R * R * R / 3.0), 1.0 - Volume(unit));
    }

    // An edge of 90 degrees rounded by r loses (1 - pi/4) r^2 per length (exact). Two units that differ only in their length along y: the
    // ends cancel.
    [Fact]
    public void Fillet_takes_its_closed_form_off_the_edges_of_a_slot()
    {
        const double R = 0.05;
        double fillets = (0.4 * (1.0 - 0.3 * 0.3)) - (Volume(Slot(1.4)) - Volume(Slot(1.0)));

        Assert.InRange(fillets / (0.4 * 2.0 * (1.0 - Math.PI / 4.0) * R * R), 0.99, 1.01);

        static ReefUnit Slot(double length) => Plain(1.0, length, 1.0) with
        {
            Blend = new Length(R),
            Cavities = [Hollow("slot", Block(0.5, length / 2.0, 1.0, 0.3, length + 1.0, 0.6))],
        };
    }

    // A keep zone undoes openings only: the block of 0.2 m in the middle of the tunnel stands again, and nothing grows outside the body.
    [Fact]
    public void Keep_zone_stands_in_a_tunnel_but_not_outside_the_body()
    {
        ReefUnit unit = Plain(1.0, 1.0, 1.0) with
        {
            Tunnels = [Straight("way", Axis.X, new Point3(0.0, 0.5, 0.5), Rectangle(0.4, 0.4))],
            Keep = [Zone("plug", Block(0.5, 0.5, 0.5, 0.2, 1.0, 1.0)), Zone("beyond", Block(0.5, 0.5, 1.1, 1.0, 1.0, 0.4))],
        };

        Near(1.0 - 0.8 * 0.16, Volume(unit));
    }

    private static AxisTunnel Way(Axis along) => Straight(along.ToString(), along, new Point3(0.5, 0.5, 0.5), Round(0.4));
}
