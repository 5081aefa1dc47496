using Dewstone.Compute.Seabed;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Seabed;

public sealed class BearingCapacityTests
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Nq, Ng by Meyerhof and by Vesic as in the tables of bearing capacity factors at geotechnicalinfo.com.</summary>
    [Theory]
    [InlineData(0, 1.0, 0.0, 0.0)]
    [InlineData(20, 6.399, 2.871, 5.386)]
    [InlineData(30, 18.401, 15.668, 22.402)]
    [InlineData(40, 64.195, 93.691, 109.411)]
    public void Factors_equal_the_tables(double degrees, double nq, double meyerhof, double vesic)
    {
        double phi = degrees * Degree;

        Assert.Equal(nq, BearingCapacity.Nq(phi), 1e-3);
        Assert.Equal(meyerhof, BearingCapacity.MeyerhofNg(phi), 1e-3);
        Assert.Equal(vesic, BearingCapacity.VesicNg(phi), 1e-3);
    }

    /// <summary>Nc without friction, same tables.</summary>
    [Fact]
    public void Undrained_factor_equals_the_tables() => Assert.Equal(5.142, BearingCapacity.UndrainedFactor, 1e-3);

    /// <summary>Terzaghi's classic Ng, same tables; 30 deg is 19.7, not the 19.13 of a later table.</summary>
    [Theory]
    [InlineData(0, 0.0)]
    [InlineData(20, 5.0)]
    [InlineData(30, 19.7)]
    [InlineData(35, 42.4)]
    [InlineData(40, 100.4)]
    public void Terzaghi_factor_equals_the_classic_table(double degrees, double expected) => Assert.Equal(expected, BearingCapacity.TerzaghiNg(degrees * Degree), 1e-9);

    /// <summary>1 m square on sand, gam' = 8.5 kN/m3, 30 deg: Terzaghi 66.980, Vesic 57.126, Meyerhof 86.566 kPa (worked by hand).</summary>
    [Fact]
    public void Square_on_sand_equals_the_worked_one()
    {
        Assert.Equal(66_980.0, BearingCapacity.Terzaghi(30 * Degree, 8500, 1, 1), 1.0);
        Assert.Equal(57_126.0, BearingCapacity.Vesic(30 * Degree, 8500, 1, 1), 1.0);
        Assert.Equal(86_566.0, BearingCapacity.Meyerhof(30 * Degree, 8500, 1, 1), 1.0);
    }

    /// <summary>Clay of 5 kPa: strip 25.708, square 30.850 kPa; a cube of 1 m and 2300 kg/m3 presses with 12.508 kPa: factor 2.466 (worked by hand).</summary>
    [Fact]
    public void Cube_on_clay_equals_the_worked_one()
    {
        Assert.Equal(25_708.0, BearingCapacity.Undrained(5000, 1, 1e9), 1.0);
        Assert.Equal(30_850.0, BearingCapacity.Undrained(5000, 1, 1), 1.0);
        BearingReport report = FootBearing.Of(Clay(5000), Bodies.Box(1, 1, 1), 12_507.75, Still)!;
        Assert.Equal(12_507.75, report.PressurePascals, 0.01);
        Assert.Equal(2.466, report.Factor, 1e-3);
        Assert.Equal(0.0, report.SinkageMetres);
    }

    /// <summary>Sinkage into clay of 1 kPa stops where 6.17 su + gam' D = q: (12.508 - 6.17) / 6 = 1.056 m.</summary>
    [Fact]
    public void Sinkage_into_soft_clay_equals_the_closed_form() =>
        Assert.Equal(1.0563, FootBearing.Of(Clay(1000), Bodies.Box(1, 1, 1), 12_507.75, Still)!.SinkageMetres, 1e-3);

    /// <summary>A moment of W' x 0.1 m leaves 0.8 m of a 1 m foot (Meyerhof's effective width).</summary>
    [Fact]
    public void Moment_of_the_sea_narrows_the_foot()
    {
        StabilityRow push = Still[0] with { DragNewtons = 2501.55, DragHeightMetres = 0.5 };
        BearingReport report = FootBearing.Of(Clay(5000), Bodies.Box(1, 1, 1), 12_507.75, [push])!;

        Assert.Equal(0.8, report.EffectiveWidthMetres, 1e-9);
        Assert.Equal(BearingCapacity.Undrained(5000, 0.8, 1.0) * 0.8 / 12_507.75, report.Factor, 1e-9);
    }

    [Fact]
    public void Soil_without_strength_gives_no_figure() =>
        Assert.Null(FootBearing.Of(
            new SeabedSoil { Soil = SoilKind.Sand, Friction = 0.5, EffectiveWeight = new UnitWeight(8500) }, Bodies.Box(1, 1, 1), 12_507.75, Still));

    private static StabilityRow[] Still =>
    [
        WaveLoad.At(
            Bodies.Box(1, 1, 1), new Footing(12_507.75, 0.6, 0.0), new SeaState { WaterDensity = 1025, WaveSpeed = 0, WaveAcceleration = 0, WaveTowards = 0 },
            new ForceCoefficients(1.05, 1.67, 0.8), 0, 0),
    ];

    private static SeabedSoil Clay(double pascals) =>
        new() { Soil = SoilKind.Clay, Friction = 0.4, UndrainedStrength = new Pressure(pascals), EffectiveWeight = new UnitWeight(6000) };
}
