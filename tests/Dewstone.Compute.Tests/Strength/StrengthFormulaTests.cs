using Dewstone.Compute.Strength;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Strength;

public sealed class StrengthFormulaTests
{
    // x = 0.68 a / (0.32 a + w/c), f = 234 x^3 MPa: Powers, 1958, Journal of the American Ceramic Society 41 (from memory). Paste ceilings, no concrete.
    [Theory]
    [InlineData(0.50, 0.80, 0.71958, 87.186)]
    [InlineData(0.40, 0.70, 0.76282, 103.868)]
    [InlineData(0.60, 1.00, 0.73913, 94.489)]
    public void Gel_space_without_air_gives_the_paste_ceilings(double waterCement, double hydrated, double ratio, double megapascals)
    {
        double x = GelSpaceRatio.Of(hydrated, waterCement);
        Assert.Equal(ratio, x, 1e-5);
        Assert.Equal(megapascals, GelSpaceRatio.Pascals(x) * 1e-6, 1e-3);
    }

    // The constants belong in pairs: 234 MPa with 0.68 and 0.32, or 240 MPa with 0.657 and 0.319 (x = 0.59 -> 49.29 MPa). Mixed, w/c 0.50 and a = 0.80 give 89.42 or 79.5 MPa.
    [Fact]
    public void Gel_space_does_not_mix_the_pairs_of_constants()
    {
        double ours = GelSpaceRatio.Pascals(GelSpaceRatio.Of(0.80, 0.50)) * 1e-6, other = 0.657 * 0.80 / (0.319 * 0.80 + 0.50);
        Assert.Equal(49.29, 240.0 * Math.Pow(0.59, 3), 1e-2);
        Assert.True(Math.Abs(ours - 240.0 * Math.Pow(GelSpaceRatio.Of(0.80, 0.50), 3)) > 2.0);
        Assert.True(Math.Abs(ours - 234.0 * Math.Pow(other, 3)) > 5.0);
    }

    // Design and Control of Concrete Mixtures (Portland Cement Association), table 9-3, non-air-entrained, after ACI 211.1: the rows themselves, and falling between them.
    [Theory]
    [InlineData(0.38, 45)]
    [InlineData(0.42, 40)]
    [InlineData(0.47, 35)]
    [InlineData(0.54, 30)]
    [InlineData(0.61, 25)]
    [InlineData(0.69, 20)]
    [InlineData(0.79, 15)]
    public void Handbook_curve_returns_its_rows(double waterCement, double megapascals)
    {
        Assert.Equal(megapascals, HandbookCurve.Pascals(waterCement) * 1e-6, 1e-9);
        Assert.True(waterCement >= 0.79 || HandbookCurve.Pascals(waterCement + 0.005) < HandbookCurve.Pascals(waterCement));
    }

    // f = K (c / (c + w + a))^2: Feret, 1892 (from memory). c = 0.10, w = 0.15, a = 0.02, K = 250 MPa: 34.2936 MPa. Falls with water and with air.
    [Fact]
    public void Feret_gives_the_worked_value_and_falls_with_water_and_air()
    {
        Assert.Equal(34.2936, FeretLaw.Pascals(0.10, 0.15, 0.02) * 1e-6, 1e-4);
        Assert.True(FeretLaw.Pascals(0.10, 0.16, 0.02) < FeretLaw.Pascals(0.10, 0.15, 0.02));
        Assert.True(FeretLaw.Pascals(0.10, 0.15, 0.03) < FeretLaw.Pascals(0.10, 0.15, 0.02));
    }

    // ASTM C1074, Nurse-Saul: 24 h at 10 degC and 24 h at 30 degC are 960 degC h from 0 degC, 1440 from -10 degC; below the datum nothing.
    [Fact]
    public void Maturity_adds_up_above_the_datum_only()
    {
        Assert.Equal(960.0, Maturity.NurseSaul(10.0, 24.0) + Maturity.NurseSaul(30.0, 24.0), 1e-9);
        Assert.Equal(1440.0, Maturity.NurseSaul(10.0, 24.0, -10.0) + Maturity.NurseSaul(30.0, 24.0, -10.0), 1e-9);
        Assert.Equal(0.0, Maturity.NurseSaul(-3.0, 24.0));
    }

    // ASTM C1074, equivalent age with Q = 5000 K (from memory).
    [Theory]
    [InlineData(35.0, 20.0, 2.29389)]
    [InlineData(35.0, 23.0, 1.92991)]
    [InlineData(10.0, 20.0, 0.54751)]
    [InlineData(10.0, 23.0, 0.46064)]
    [InlineData(5.0, 20.0, 0.39860)]
    public void Equivalent_age_runs_at_the_published_rates(double celsius, double reference, double rate) =>
        Assert.Equal(rate, Maturity.Rate(celsius, 5000.0, reference), 1e-5);

    // 12 h at 35 degC and 12 h at 10 degC count as 28.6865 h at 23 degC (ASTM C1074, Q = 5000 K, from memory).
    [Fact]
    public void Equivalent_age_of_a_warm_and_a_cool_half_day() =>
        Assert.Equal(28.6865, 12.0 * Maturity.Rate(35.0, 5000.0, 23.0) + 12.0 * Maturity.Rate(10.0, 5000.0, 23.0), 1e-4);

    // EN 1992-1-1:2004, equation (3.2) (from memory).
    [Theory]
    [InlineData("N", 1, 0.34202)]
    [InlineData("N", 2, 0.50388)]
    [InlineData("N", 3, 0.59824)]
    [InlineData("N", 7, 0.77880)]
    [InlineData("N", 14, 0.90163)]
    [InlineData("N", 28, 1.0)]
    [InlineData("N", 90, 1.11690)]
    [InlineData("R", 1, 0.42388)]
    [InlineData("R", 3, 0.66298)]
    [InlineData("R", 7, 0.81873)]
    [InlineData("S", 1, 0.19578)]
    [InlineData("S", 7, 0.68386)]
    public void Age_factor_follows_the_code_and_back(string cementClass, double days, double factor)
    {
        AgeFactor age = AgeFactor.Of(cementClass);
        Assert.Equal(factor, age.At(days), 1e-5);
        Assert.Equal(days, age.DaysTo(age.At(days))!.Value, 1e-9 * days);
        Assert.Null(age.DaysTo(1.5));
    }

    // a = au exp(-(tau/t)^b), au = 0.72, tau = 14 h, b = 0.9: Schindler and Folliard, 2005, ACI Materials Journal 102 (from memory); a(tau) = au / e.
    [Theory]
    [InlineData(12.0, 0.22825)]
    [InlineData(24.0, 0.38901)]
    [InlineData(72.0, 0.57261)]
    [InlineData(168.0, 0.64704)]
    [InlineData(672.0, 0.69824)]
    public void Hydration_follows_the_published_curve(double hours, double share)
    {
        Assert.Equal(share, 0.72 * Hydration.Reached(hours, 14.0, 0.9), 1e-5);
        Assert.Equal(1.0 / Math.E, Hydration.Reached(14.0, 14.0, 0.9), 1e-12);
    }

    // EN 206-1:2000, table F.1 (XS2 and XS3: w/c 0.45, C35/45 i.e. 45 MPa on cubes, 320 and 340 kg/m3); ACI 318 for sea water: 0.40, 35 MPa. 0.45 passes, 0.451 does not.
    [Fact]
    public void Exposure_rows_are_the_codes_and_sharp_at_their_edge()
    {
        ExposureRule Row(string name) => ExposureRules.All.Single(rule => rule.Name == name);
        Assert.Equal((0.50, 37e6, 300.0), Limits(Row("EN 206 XS1")));
        Assert.Equal((0.45, 45e6, 320.0), Limits(Row("EN 206 XS2")));
        Assert.Equal((0.45, 45e6, 340.0), Limits(Row("EN 206 XS3")));
        Assert.Equal((0.50, 37e6, 320.0), Limits(Row("EN 206 XF3")));
        Assert.Equal((0.50, 37e6, 320.0), Limits(Row("EN 206 XA2")));
        Assert.Equal((0.45, 45e6, 360.0), Limits(Row("EN 206 XA3")));
        Assert.Equal((0.40, 35e6, null), Limits(Row("ACI 318 sea water")));
        Assert.Equal((0.50, 28e6, null), Limits(Row("ACI 318 low permeability")));
        foreach (string name in (string[])["EN 206 XS2", "EN 206 XS3"])
        {
            Assert.True(ExposureRules.Met(Row(name), 0.45, 45e6, 340.0));
            Assert.False(ExposureRules.Met(Row(name), 0.451, 45e6, 340.0));
        }

        static (double, double, double?) Limits(ExposureRule rule) => (rule.MostWaterCement, rule.LeastPascals, rule.LeastCement);
    }

    // Sling factors 1 / sin a, a from the horizontal (chart after ASME B30.9), and 10 kN on two legs.
    [Theory]
    [InlineData(90.0, 1.0, 5.0)]
    [InlineData(75.0, 1.035, 5.1764)]
    [InlineData(60.0, 1.155, 5.7735)]
    [InlineData(45.0, 1.414, 7.0711)]
    [InlineData(30.0, 2.000, 10.0)]
    public void Sling_factor_is_one_over_the_sine_from_the_horizontal(double degrees, double factor, double kilonewtons)
    {
        Assert.Equal(factor, SlingLoad.Tension(1.0, 1.0, 1, degrees), 5e-4);
        Assert.Equal(kilonewtons, SlingLoad.Tension(10.0, 1.0, 2, degrees), 1e-4);
    }

    // The trap: 1 / cos of the angle from the horizontal. At 30 degrees that is 1.155 where 2 is right.
    [Fact]
    public void Sling_factor_is_not_the_one_of_the_vertical()
    {
        Assert.True(SlingLoad.Tension(1.0, 1.0, 1, 30.0) > 1.9);
        Assert.True(Math.Abs(SlingLoad.Tension(1.0, 1.0, 1, 30.0) - 1.0 / Math.Cos(Math.PI / 6.0)) > 0.8);
    }

    // 29 CFR 1926.704: inserts 4 times, hardware 5 times. 6 kN, dynamic 1.2, 60 degrees, 2 legs: 4.1569 kN a leg, 16.6277 and 20.7846 kN. A stiff body on four legs hangs on two.
    [Fact]
    public void Inserts_and_hardware_bear_four_and_five_times_the_leg()
    {
        double leg = SlingLoad.Tension(6.0, 1.2, SlingLoad.Carrying(4), 60.0);
        Assert.Equal(4.1569, leg, 1e-4);
        Assert.Equal(16.6277, SlingLoad.InsertFactor * leg, 1e-4);
        Assert.Equal(20.7846, SlingLoad.HardwareFactor * leg, 1e-4);
        Assert.Equal((1, 2, 3, 2, 2), (SlingLoad.Carrying(1), SlingLoad.Carrying(2), SlingLoad.Carrying(3), SlingLoad.Carrying(4), SlingLoad.Carrying(6)));
    }

    // 0.62 sqrt(f) MPa (ACI 318-19, 19.2.3) and that over 1.5 (PCI); from memory.
    [Theory]
    [InlineData(10.0, 1.9606, 1.3071)]
    [InlineData(15.0, 2.4012, 1.6008)]
    [InlineData(20.0, 2.7727, 1.8485)]
    [InlineData(25.0, 3.1000, 2.0667)]
    [InlineData(30.0, 3.3959, 2.2639)]
    [InlineData(40.0, 3.9212, 2.6141)]
    public void Cracking_stress_is_the_modulus_of_rupture(double compressive, double cracking, double allowed)
    {
        Assert.Equal(cracking, CrackingStress.Pascals(compressive * 1e6) * 1e-6, 1e-4);
        Assert.Equal(allowed, CrackingStress.Pascals(compressive * 1e6) * 1e-6 / CrackingStress.LeastFactor, 1e-4);
    }

    // Principal stresses of a plane state by Mohr's circle: 80, 20 and shear 40 MPa give 50 + 50 = 100 MPa; of pure shear the shear itself; of equal stresses themselves.
    [Fact]
    public void Largest_principal_stress_is_mohrs()
    {
        Assert.Equal(100.0, new Stress(80.0, 20.0, 0.0, 0.0, 0.0, 40.0).LargestPrincipal, 1e-9);
        Assert.Equal(7.0, new Stress(0.0, 0.0, 0.0, 7.0, 0.0, 0.0).LargestPrincipal, 1e-9);
        Assert.Equal(-3.0, new Stress(-3.0, -3.0, -3.0, 0.0, 0.0, 0.0).LargestPrincipal, 1e-9);
    }
}
