using Dewstone.Compute.Geometry;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Tests.Geometry;

public sealed class FilletTests
{
    private const double R = 25.0;

    // Two planes through the origin whose outward directions enclose an angle; the rounded edge is the arc about the corner of the set-back
    // wedge. Points on that arc are on the surface, and points along its radii have the exact distance.
    [Theory]
    [InlineData(20.0)]
    [InlineData(60.0)]
    [InlineData(90.0)]
    [InlineData(119.0)]
    public void Fillet_of_two_planes_is_the_arc_at_any_angle(double degrees)
    {
        double half = degrees * Math.PI / 360.0;
        Point3 first = new(-Math.Sin(half), Math.Cos(half), 0.0), second = new(Math.Sin(half), Math.Cos(half), 0.0);
        Point3 corner = new(0.0, -R / Math.Cos(half), 0.0);
        for (double t = -0.99; t <= 0.99; t += 0.09)
        {
            Point3 radius = new(Math.Sin(t * half), Math.Cos(t * half), 0.0);
            foreach (double off in new[] { -20.0, -3.0, 0.0 })
            {
                Point3 p = corner + radius * (R + off), normal = first;
                double distance = Fillet.Join(Point3.Dot(p, first), ref normal, Point3.Dot(p, second), second, R);

                Assert.Equal(off, distance, 1e-9);
                Assert.Equal(1.0, Point3.Dot(normal, radius), 1e-9);
            }
        }
    }

    [Fact]
    public void Fillet_of_parallel_planes_leaves_them_alone()
    {
        Point3 up = new(0.0, 0.0, 1.0), normal = up;

        Assert.Equal(0.0, Fillet.Join(0.0, ref normal, 0.0, up, R));
        Assert.Equal(-3.0, Fillet.Join(-3.0, ref normal, -4.0, up, R));
    }

    // Opposite faces of a wall: with c kept to -0.5 the value is 2 u - r, u = r - thickness / 2 in its middle.
    [Theory]
    [InlineData(26.0, true)]
    [InlineData(24.0, false)]
    public void Fillet_of_a_walls_two_faces_spares_what_is_thicker_than_the_radius(double thickness, bool stands)
    {
        Point3 normal = new(1.0, 0.0, 0.0);
        double distance = Fillet.Join(-thickness / 2.0, ref normal, -thickness / 2.0, new Point3(-1.0, 0.0, 0.0), R);

        Assert.Equal(stands, distance < 0.0);
    }

    [Fact]
    public void Fillet_of_a_surface_out_of_reach_changes_nothing()
    {
        for (double cosine = -1.0; cosine <= 1.0; cosine += 0.125)
        {
            Point3 second = new(cosine, Math.Sqrt(1.0 - cosine * cosine), 0.0);
            for (double a = -40.0; a <= R; a += 5.0)
            {
                Point3 normal = new(1.0, 0.0, 0.0);
                Assert.Equal(a, Fillet.Join(a, ref normal, Math.Min(a, 0.0) - (Fillet.Reach * R), second, R));
            }
        }
    }

    // The mouth of a ball hollow in a flat face: the true arc touches the face and the ball from inside the solid, its centre r below the
    // face and R + r from the ball's. The fillet takes surfaces for their tangent planes, so it may miss the arc by the rise of the
    // set-back ball over one fillet radius, r^2 / (2 (R + r)), and a fillet of half the radius must miss by about a quarter.
    [Theory]
    [InlineData(70.0, 14.0)]
    [InlineData(70.0, 35.0)]
    [InlineData(55.0, 20.0)]
    public void Fillet_of_a_balls_mouth_follows_the_arc_to_second_order(double ball, double depth)
    {
        double whole = WorstOnArc(ball, depth, R), half = WorstOnArc(ball, depth, R / 2.0);

        Assert.InRange(whole, 0.0, R * R / (2.0 * (ball + R)));
        Assert.InRange(whole / half, 3.0, 5.0);
    }

    private static double WorstOnArc(double ball, double depth, double radius)
    {
        double worst = 0.0;
        double across = Math.Sqrt((ball + radius) * (ball + radius) - (radius - depth) * (radius - depth));
        Point3 arc = new(across, 0.0, -radius), towards = Forms.Unit(new Point3(-across, 0.0, radius - depth)), up = new(0.0, 0.0, 1.0);
        for (double t = 0.0; t <= 1.0; t += 0.05)
        {
            Point3 p = arc + Forms.Unit(up * (1.0 - t) + towards * t) * radius, from = p - new Point3(0.0, 0.0, -depth);
            Point3 normal = Forms.Unit(from) * -1.0;
            worst = Math.Max(worst, Math.Abs(Fillet.Join(ball - from.Norm, ref normal, p.Z, up, radius)));
        }
        return worst;
    }
}
