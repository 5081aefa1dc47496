using CsCheck;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Tests.SitePlans;

public sealed class AnchorFrameTests
{
    private const double Degree = Math.PI / 180.0;

    // A point 300 m away: the chord through space between both positions, from earth-centred coordinates X = N cos phi cos lambda, ..., Z = N (1 - e2) sin phi
    // (every textbook of geodesy), must be 300 m. Within the plan's size the ground is flat to a few millimetres: d2 tan(phi) / 2R is 12 mm at 60 degrees.
    [Theory]
    [InlineData(0.0, 300.0, 0.0)]
    [InlineData(41.5, 300.0, 0.0)]
    [InlineData(41.5, 0.0, -300.0)]
    [InlineData(-60.0, 180.0, 240.0)]
    public void Distance_through_space_is_the_distance_in_the_plan(double latitude, double east, double north)
    {
        GeographicPosition anchor = new(latitude, -30.2);
        GeographicPosition there = new AnchorFrame(anchor).Position(new GroundPoint(east, north));

        Assert.Equal(300.0, Chord(anchor, there), 0.012);
        Assert.Equal(Math.Sign(east), Math.Sign(Math.Round(there.LongitudeDegrees - anchor.LongitudeDegrees, 12)));
        Assert.Equal(Math.Sign(north), Math.Sign(Math.Round(there.LatitudeDegrees - anchor.LatitudeDegrees, 12)));
    }

    [Fact]
    public void Positions_read_back_are_the_points_they_came_from() =>
        Gen.Select(Gen.Double[-80.0, 80.0], Gen.Double[-2000.0, 2000.0], Gen.Double[-2000.0, 2000.0]).Sample((latitude, east, north) =>
        {
            AnchorFrame frame = new(new GeographicPosition(latitude, 12.0));
            GroundPoint back = frame.Point(frame.Position(new GroundPoint(east, north)));
            Assert.Equal(east, back.EastMetres, 1e-5);
            Assert.Equal(north, back.NorthMetres, 1e-5);
        });

    private static double Chord(GeographicPosition one, GeographicPosition other)
    {
        (double x, double y, double z) = Earth(one);
        (double u, double v, double w) = Earth(other);
        return Math.Sqrt((x - u) * (x - u) + (y - v) * (y - v) + (z - w) * (z - w));
    }

    private static (double X, double Y, double Z) Earth(GeographicPosition position)
    {
        const double a = 6378137.0, f = 1.0 / 298.257223563, e2 = f * (2.0 - f);
        double phi = position.LatitudeDegrees * Degree, lambda = position.LongitudeDegrees * Degree;
        double n = a / Math.Sqrt(1.0 - e2 * Math.Sin(phi) * Math.Sin(phi));
        return (n * Math.Cos(phi) * Math.Cos(lambda), n * Math.Cos(phi) * Math.Sin(lambda), n * (1.0 - e2) * Math.Sin(phi));
    }
}
