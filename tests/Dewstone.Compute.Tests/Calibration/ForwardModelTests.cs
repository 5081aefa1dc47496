using Dewstone.Compute.Calibration;
using Dewstone.Compute.Tests.Wetting;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Calibration;

/// <summary>
/// The one-dimensional and small forward models of the fit against exact solutions and against the solver of the jobs. Reference mix: porosity 0.383947,
/// D1 = 3.2e-6 m2/s, m = 4, threshold at water/cement 0.22.
/// </summary>
public sealed class ForwardModelTests
{
    private const double Diffusivity = 3.2e-6;
    private static readonly double Threshold = 0.22 * 0.425 / ReferenceMix.Porosity;

    // Barenblatt (1952), Pattle (1959), exact point source, 600 s. The saturated start is forgotten by then: 0.3 % of the diameter.
    [Theory]
    [InlineData(10.0, 50.11)]
    [InlineData(20.0, 61.83)]
    [InlineData(35.0, 73.04)]
    [InlineData(40.0, 75.97)]
    public void Ball_is_the_exact_point_source(double millilitres, double diameter) =>
        Assert.InRange(2000.0 * Ball(4, millilitres, 600.0).Radius / diameter, 0.997, 1.003);

    // Other exponents at a late time: radius at half of the exact middle's saturation, to 0.5 %.
    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(6)]
    [InlineData(8)]
    public void Ball_of_any_exponent_nears_the_exact_point_source(int exponent)
    {
        const double late = 200.0;
        PointSource exact = new(exponent, 1.0, 4.0 * Math.PI / 3.0, 1.0);
        double saturation = 0.5 * exact.CentreSaturation(late);
        double radius = new BallHistory(new SaturationLaw(true, exponent)).At(late, saturation).Radius;
        Assert.InRange(radius / exact.RadiusAtSaturation(saturation, late), 0.995, 1.005);
    }

    // Solver of the jobs, three layers spread, one dose in the middle; tolerances of its own checks against the exact ball: 1 mm.
    [Theory]
    [InlineData(15.0)]
    [InlineData(35.0)]
    public void Ball_is_that_of_the_jobs_solver(double millilitres)
    {
        MoistureResult result = new SmallJob(3, 3, 3, 20).Dose(1, 1, 1, millilitres).Solve();
        double diameter = SmallJob.EquivalentDiameter(SmallJob.Surface(result).VolumeCubicMetres());
        double inside = 0.0, all = 0.0;
        for (int i = 0; i < result.Grid.Count; i++)
        {
            all += result.VolumetricWaterContent[i];
            inside += result.Hardened[i] * result.VolumetricWaterContent[i];
        }

        (double radius, double water) = Ball(4, millilitres, 600.0);
        Assert.Equal(diameter, 2000.0 * radius, 1.0);
        Assert.Equal(inside / all, water, 0.03);
    }

    // Two doses of 35 mL one pitch apart, solver of the jobs at 20 cells a pitch (2.5 mm), read on the rows of cells beside the axes: length along the
    // line of the needles and width midway, to half a cell at each end.
    [Fact]
    public void Pair_is_that_of_the_jobs_solver()
    {
        const int cells = 20;
        MoistureResult two = new SmallJob(4, 3, 3, cells).Dose(1, 1, 1, 35.0).Dose(2, 1, 1, 35.0).Solve();
        int middle = 3 * cells / 2;
        double At(int x, int y) => two.VolumetricWaterContent[(middle * two.Grid.Ny + y) * two.Grid.Nx + x] / ReferenceMix.Porosity;
        double[] along = [.. Enumerable.Range(2 * cells, 2 * cells).Select(x => At(x, middle))];
        double[] across = [.. Enumerable.Range(middle, middle).Select(y => At(2 * cells, y))];
        double cell = 2000.0 * ReferenceMix.Pitch / cells;

        double unit = Unit(35.0), spacing = ReferenceMix.Pitch / unit;
        PairHistory pair = new(new SaturationLaw(true, 4), spacing, PairHistory.HalfCells(spacing));
        (double length, double waist) = pair.At(Diffusivity * 600.0 / (unit * unit), Threshold);
        Assert.Equal(cell * FrontPlace.Of(along, Threshold, 3), 1000.0 * unit * length, 0.5 * cell);
        Assert.Equal(cell * FrontPlace.Of(across, Threshold, 3), 1000.0 * unit * waist, 0.5 * cell);
    }

    // Far apart a pair is two balls: length = spacing + diameter of the exact point source (73.04 mm), and nothing midway.
    [Fact]
    public void Pair_far_apart_is_two_balls()
    {
        double unit = Unit(35.0);
        PairHistory pair = new(new SaturationLaw(true, 4), 0.1 / unit, PairHistory.HalfCells(0.1 / unit));
        (double length, double waist) = pair.At(Diffusivity * 600.0 / (unit * unit), Threshold);
        Assert.Equal(173.04, 1000.0 * unit * length, 1.5);
        Assert.Equal(0.0, waist);
    }

    // S over porosity and root of D at saturation for D = exp(b (s - 1)): shooting on Philip's Boltzmann equation (own numerics, 1e-6), 0.5 %.
    [Theory]
    [InlineData(4, 0.654085)]
    [InlineData(6, 0.551228)]
    [InlineData(8, 0.483621)]
    public void Sorptivity_of_the_exponential_law_is_that_of_the_Boltzmann_equation(int exponent, double expected) =>
        Assert.InRange(Sorptivity.Number(new SaturationLaw(false, exponent)) / expected, 0.995, 1.005);

    // Power law: S^2 = integral of (1 + s) D ds = 1/(m + 1) + 1/(m + 2), Parlange 1975 (Soil Sci. Soc. Am. J. 39, 415-418); the estimate is within 1 %
    // of S for steep laws (Lockington, Parlange, Dux 1999).
    [Theory]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(8)]
    public void Sorptivity_of_the_power_law_is_Parlanges(int exponent) =>
        Assert.InRange(Sorptivity.Number(new SaturationLaw(true, exponent)) / Math.Sqrt(1.0 / (exponent + 1.0) + 1.0 / (exponent + 2.0)), 0.99, 1.01);

    private static (double Radius, double Water) Ball(int exponent, double millilitres, double seconds)
    {
        double unit = Unit(millilitres);
        (double radius, double water) = new BallHistory(new SaturationLaw(true, exponent)).At(Diffusivity * seconds / (unit * unit), Threshold);
        return (unit * radius, water);
    }

    private static double Unit(double millilitres) => Math.Cbrt(3.0 * millilitres * 1e-6 / (4.0 * Math.PI * ReferenceMix.Porosity));
}
