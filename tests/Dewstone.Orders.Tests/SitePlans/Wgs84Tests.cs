using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Tests.SitePlans;

public sealed class Wgs84Tests
{
    private const double Degree = Math.PI / 180.0;

    // Length of a degree of latitude and of longitude at latitude phi by the published series of US agencies
    //   111132.92 - 559.82 cos 2phi + 1.175 cos 4phi - 0.0023 cos 6phi    and    111412.84 cos phi - 93.5 cos 3phi + 0.118 cos 5phi   metres
    // (quoted with its coefficients at gis.stackexchange.com, question 75528, whose answer finds it within 0.6 parts per million of the radii, and a
    // little low): asked within 0.1 m of 111 km.
    [Theory]
    [InlineData(0.0)]
    [InlineData(15.0)]
    [InlineData(41.5)]
    [InlineData(45.0)]
    [InlineData(70.0)]
    [InlineData(90.0)]
    public void Degrees_have_the_lengths_of_the_published_series(double latitude)
    {
        double phi = latitude * Degree;
        double north = 111132.92 - 559.82 * Math.Cos(2 * phi) + 1.175 * Math.Cos(4 * phi) - 0.0023 * Math.Cos(6 * phi);
        double east = 111412.84 * Math.Cos(phi) - 93.5 * Math.Cos(3 * phi) + 0.118 * Math.Cos(5 * phi);

        Assert.Equal(north, Wgs84.MeridianRadiusMetres(phi) * Degree, 0.1);
        Assert.Equal(east, Wgs84.PrimeVerticalRadiusMetres(phi) * Math.Cos(phi) * Degree, 0.1);
    }

    // At the equator N = a and M = a (1 - e2) = b2 / a; at the pole M = N = a2 / b, with b = a (1 - f) = 6356752.3142 m (NIMA TR8350.2, table 3.3; from memory).
    [Fact]
    public void Radii_at_equator_and_pole_are_those_of_the_axes()
    {
        const double a = 6378137.0, b = 6356752.3142;

        Assert.Equal(b * b / a, Wgs84.MeridianRadiusMetres(0.0), 0.001);
        Assert.Equal(a, Wgs84.PrimeVerticalRadiusMetres(0.0), 1e-9);
        Assert.Equal(a * a / b, Wgs84.MeridianRadiusMetres(90.0 * Degree), 0.001);
        Assert.Equal(a * a / b, Wgs84.PrimeVerticalRadiusMetres(90.0 * Degree), 0.001);
    }
}
