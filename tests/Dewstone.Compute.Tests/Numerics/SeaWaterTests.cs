using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

public sealed class SeaWaterTests
{
    /// <summary>
    /// Check values of the equation of state of 1980: Fofonoff and Millard, 1983, UNESCO Technical Papers in Marine Science 44; Gill, 1982, appendix 3.
    /// Salinity, temperature degC, pressure bar, density kg/m3.
    /// </summary>
    [Theory]
    [InlineData(0, 5, 0, 999.96675)]
    [InlineData(35, 5, 0, 1027.67547)]
    [InlineData(0, 25, 0, 997.04796)]
    [InlineData(35, 25, 0, 1023.34306)]
    [InlineData(0, 5, 1000, 1044.12802)]
    [InlineData(0, 25, 1000, 1037.90204)]
    [InlineData(35, 5, 1000, 1069.48914)]
    [InlineData(35, 25, 1000, 1062.53817)]
    public void Density_equals_the_published_values(double salinity, double celsius, double bar, double expected) =>
        Assert.Equal(expected, SeaWater.KilogramsPerCubicMetre(salinity, celsius, bar), 1e-5);

    /// <summary>Secant bulk modulus, bar; same source.</summary>
    [Theory]
    [InlineData(0, 5, 0, 20337.80375)]
    [InlineData(35, 5, 0, 22185.93358)]
    [InlineData(0, 25, 1000, 25405.09717)]
    [InlineData(35, 5, 1000, 25577.49819)]
    public void Secant_bulk_modulus_equals_the_published_values(double salinity, double celsius, double bar, double expected) =>
        Assert.Equal(expected, SeaWater.SecantBulkModulusBar(salinity, celsius, bar), 1e-5);

    /// <summary>The same equation recomputed at other temperatures, and at 1000 dbar = 100 bar: 1032.25864, which is what a decibar taken for a bar would miss.</summary>
    [Theory]
    [InlineData(35, 10, 0, 1026.95241)]
    [InlineData(35, 15, 0, 1025.97275)]
    [InlineData(35, 20, 0, 1024.76300)]
    [InlineData(35, 5, 100, 1032.25864)]
    public void Pressure_is_in_bar_not_decibar(double salinity, double celsius, double bar, double expected) =>
        Assert.Equal(expected, SeaWater.KilogramsPerCubicMetre(salinity, celsius, bar), 1e-5);

    [Fact]
    public void Density_without_a_site_is_within_three_of_the_equation_at_salinity_35()
    {
        for (double celsius = 5; celsius <= 25; celsius += 1)
        {
            Assert.InRange(SeaWater.KilogramsPerCubicMetre(35, celsius) - SeaWater.UsualKilogramsPerCubicMetre, -3.0, 3.0);
        }
    }

    /// <summary>1.36e-6 m2/s at 10 degC and salinity 35, and fresh water's 1.004e-6 at 20 degC: Soulsby, 1997, "Dynamics of marine sands", table 1; from memory.</summary>
    [Theory]
    [InlineData(35, 10, 1.36e-6)]
    [InlineData(0, 20, 1.004e-6)]
    public void Viscosity_is_within_a_hundredth_of_the_handbook(double salinity, double celsius, double expected) =>
        Assert.Equal(1.0, SeaWater.KinematicViscosity(salinity, celsius) / expected, 0.01);
}
