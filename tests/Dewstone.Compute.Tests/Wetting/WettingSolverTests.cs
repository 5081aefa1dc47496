using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Wetting;

/// <summary>What the solver does with the machine's times, with windows, with what callers must not ask, and in time and space.</summary>
public sealed class WettingSolverTests
{
    // Explicit Euler is of first order: the field at steps of share s differs from that at s/8 by an amount that falls in proportion.
    // Measured as sum |difference| over the sum, from the same start, over 100 s.
    [Fact]
    public void Error_of_the_time_step_falls_in_proportion_to_it()
    {
        double[] reference = March(0.05);
        double coarse = Distance(March(0.8), reference);
        double fine = Distance(March(0.4), reference);
        Assert.InRange(coarse / fine, 1.8, 2.6);
        Assert.InRange(coarse, 1e-5, 5e-3);
    }

    // A shifted layer has its needles half a pitch further along x and y: the water's centre is at the tip, straight or shifted.
    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Water_lies_around_its_tip(int layer)
    {
        SmallJob job = new SmallJob(4, 4, 2, shifted: true).Dose(1, 1, layer, 10.0);
        MoistureResult result = job.Solve(ReferenceMix.Bed(20.0));
        Point3 tip = job.Lattice.Tip(1, 1, layer);
        double sum = 0.0, x = 0.0, y = 0.0, z = 0.0;
        for (int i = 0; i < result.Grid.Count; i++)
        {
            Point3 centre = result.Grid.Centre(i % result.Grid.Nx, i / result.Grid.Nx % result.Grid.Ny, i / result.Grid.Nx / result.Grid.Ny);
            double content = result.VolumetricWaterContent[i];
            (sum, x, y, z) = (sum + content, x + content * centre.X, y + content * centre.Y, z + content * centre.Z);
        }

        Assert.Equal(tip.X, x / sum, 1e-6);
        Assert.Equal(tip.Y, y / sum, 1e-6);
        Assert.Equal(tip.Z, z / sum, 1e-6);
    }

    // Cells 6.35 mm wide and 5.33 or 7.33 mm high must make the same ball as cubes do: exact diameter 50.11 mm after 600 s for 10 mL.
    [Theory]
    [InlineData(0.016, 0.00533)]
    [InlineData(0.022, 0.00733)]
    public void Cells_that_are_no_cubes_make_the_same_ball(double layerHeight, double cellHeight)
    {
        MoistureResult result = new SmallJob(3, 3, 9, 8, ReferenceMix.Pitch, layerHeight).Dose(1, 1, 4, 10.0).Solve();
        Assert.Equal(cellHeight, result.Grid.CellHeightMetres, 1e-5);
        Assert.Empty(result.Refused);
        Assert.Equal(50.11, SmallJob.EquivalentDiameter(SmallJob.Surface(result).VolumeCubicMetres()), 1.0);
    }

    // Water that meets a side of the window inside the bin is said; a bin wall is a wall.
    [Theory]
    [InlineData(0.0, 45.0, false)]
    [InlineData(0.1, 45.0, true)]
    [InlineData(0.1, 1.0, false)]
    public void Window_that_is_too_small_is_said(double marginMetres, double millilitres, bool expected) =>
        Assert.Equal(expected, new SmallJob(1, 1, 1, marginMetres: marginMetres).Dose(0, 0, 0, millilitres).Solve().TouchedWindowEdge);

    // A needle whose pump runs a quarter of the station's time has delivered all in the first of its four shots.
    [Fact]
    public void Short_pump_times_end_before_long_ones()
    {
        WettingProblem problem = new SmallJob(2, 1, 1).Dose(0, 0, 0, 10.0).Dose(1, 0, 0, 40.0).Problem();
        (problem.Schedule.PumpSeconds[0], problem.Schedule.PumpSeconds[1]) = (2.0, 8.0);
        Station station = Assert.Single(Station.Of(problem));
        Assert.Equal([1.0, 3.0, 5.0, 7.0], Enumerable.Range(0, 4).Select(station.ShotSeconds));
        Assert.Equal([1.0, 0.0, 0.0, 0.0], Enumerable.Range(0, 4).Select(shot => station.Share(shot, 2.0)));
        Assert.Equal([0.25, 0.25, 0.25, 0.25], Enumerable.Range(0, 4).Select(shot => station.Share(shot, 8.0)));
        Assert.Equal(1.0, Enumerable.Range(0, 4).Sum(shot => station.Share(shot, 7.3)), 1e-15);
    }

    [Fact]
    public void Job_without_doses_stays_dry()
    {
        MoistureResult result = new SmallJob(2, 2, 2).Layered().Solve();
        Assert.All(result.VolumetricWaterContent, c => Assert.Equal(0f, c));
        Assert.Equal(0.0, result.InjectedCubicMetres);
        Assert.Equal(0, result.TimeSteps);
    }

    [Fact]
    public void Cancelled_solve_stops() => Assert.Throws<OperationCanceledException>(() =>
        WettingSolver.Solve(new SmallJob(1, 1, 1).Dose(0, 0, 0, 1.0).Problem(), new Parallelism(1), null, new CancellationToken(true)));

    [Fact]
    public void Dose_before_its_layer_lies_spread_is_refused()
    {
        WettingProblem problem = new SmallJob(1, 1, 2).Dose(0, 0, 1, 10.0).Layered().Problem();
        problem.Schedule.DoseStartSeconds[1] = 79.0;
        AssertRefused(problem, "before its layer lies spread");
    }

    [Fact]
    public void Negative_dose_is_refused() => AssertRefused(new SmallJob(1, 1, 1).Dose(0, 0, 0, -1.0).Problem(), "-1E-06 m3");

    [Fact]
    public void Shifted_voxel_over_the_window_is_refused() =>
        AssertRefused(new SmallJob(2, 2, 2, shifted: true).Dose(1, 0, 1, 1.0).Problem(), "2, 1 of layer 2 reaches over the window");

    [Fact]
    public void Grid_of_another_lattice_is_refused() =>
        AssertRefused(new SmallJob(2, 2, 2).Problem() with { Grid = new SmallJob(3, 2, 2).Grid }, "not one over the lattice");

    // ASTM C1074 form, Q = 5000 K: at 10 instead of 20 degC the window is exp(5000 (1/283.15 - 1/293.15)) = 1.826443 times as long.
    [Fact]
    public void Cold_bed_stays_open_longer()
    {
        DryMix mix = new()
        {
            Name = "Test mix",
            Origin = new MixOrigin(MixOriginKind.Assumed, ""),
            Currency = "EUR",
            Solids =
            [
                new Constituent { Name = "cement", Share = 0.25, GrainDensity = new Density(3150.0), IsBinder = true },
                new Constituent { Name = "sand", Share = 0.75, GrainDensity = new Density(2650.0) },
            ],
            LooseDensity = new Density(1700.0),
            Liquid = new Liquid { Density = new Density(1000.0) },
            Wetting = ReferenceMix.Bed().Law,
            Hardening = new Hardening { WaterCement = 0.22, Window = new Duration(600.0) },
        };
        Assert.Equal(600.0, BedProperties.From(mix, mix.LooseDensity, new Temperature(20.0)).WindowSeconds);
        Assert.Equal(600.0 * 1.826443, BedProperties.From(mix, mix.LooseDensity, new Temperature(10.0)).WindowSeconds, 0.01);
        BedProperties bed = BedProperties.From(mix, mix.LooseDensity, new Temperature(20.0));
        Assert.Equal(0.383947, bed.Porosity, 1e-6);
        Assert.Equal(0.903405, bed.Porosity * 1000.0 / bed.BinderKilogramsPerCubicMetre, 1e-6);
        Assert.Equal(0.0935, bed.ThresholdContent, 1e-12);
    }

    private static void AssertRefused(WettingProblem problem, string text) => Assert.Contains(text, Assert.Throws<ArgumentException>(() =>
        WettingSolver.Solve(problem, new Parallelism(1), null, CancellationToken.None)).Message, StringComparison.Ordinal);

    private static double[] March(double share)
    {
        BedProperties bed = ReferenceMix.Bed();
        TransportStepper field = new(16, 16, 16, 0.00635, 0.00635, MoisturePotential.Of(bed.Law, bed.Porosity), 1);
        for (int z = 0; z < 16; z++)
        {
            for (int y = 0; y < 16; y++)
            {
                for (int x = 0; x < 16; x++)
                {
                    double r = Math.Sqrt(x * x + y * y + z * z) / 10.0;
                    field.Content[(z * 16 + y) * field.RowStride + x] = (float)(0.35 * Math.Max(0.0, 1.0 - r * r));
                }

                field.Touch(y, z, 0.35f);
            }
        }

        double now = 0.0;
        while (now < 100.0)
        {
            double step = Math.Min(field.StableStepSeconds() * share / TransportStepper.StepShare, 100.0 - now);
            field.Step(step);
            now += step;
        }

        return [.. field.TakeContent().Select(c => (double)c)];
    }

    private static double Distance(double[] a, double[] b) => a.Zip(b, (p, q) => Math.Abs(p - q)).Sum() / b.Sum();
}
