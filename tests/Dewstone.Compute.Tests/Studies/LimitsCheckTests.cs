using Dewstone.Compute.Dosing;
using Dewstone.Compute.Geometry;
using Dewstone.Compute.Studies;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Studies;

/// <summary>Each finding DW302x: what raises it, and the nearest sound case that does not.</summary>
public sealed class LimitsCheckTests
{
    private static IReadOnlyList<Diagnostic> Window(Func<Needle, Needle> needle, WaterCementBand? band = null)
    {
        Printer yard = Samples.YardPrinter();
        ReefUnit unit = Samples.Box(0.1, 0.1, 0.1) with { Require = new Requirements { WaterCement = band } };
        JobDescription job = Samples.Job(unit, printer: yard with { Needle = needle(yard.Needle) });
        return LimitsCheck.Window(job, LimitsStudy.OneVoxel(yard), 28.0);
    }

    private static IReadOnlyList<Diagnostic> Features(ReefUnit unit, bool shifted = false) => LimitsCheck.Features(
        Samples.Job(unit), ReefShapeBuilder.Build(unit).Shape, shifted, 28.4, new Parallelism(2), TestContext.Current.CancellationToken);

    /// <summary>A box of 0.6 m with a square tunnel along x whose wall to the side, or to the top, has a thickness.</summary>
    private static ReefUnit WithWall(double thickness, bool slab) => Samples.Box(0.6, 0.6, 0.6) with
    {
        Tunnels =
        [
            new AxisTunnel
            {
                Name = "way",
                Along = Axis.X,
                At = slab ? new Point3(0.0, 0.3, 0.6 - thickness - 0.1) : new Point3(0.0, thickness + 0.1, 0.3),
                Section = new RectangularSection(new Length(0.2), new Length(0.2), new Length(0.0)),
            },
        ],
    };

    private static ReefUnit WithHole(double diameter) => Samples.Box(0.6, 0.6, 0.6) with
    {
        Tunnels =
        [
            new AxisTunnel { Name = "wide", Along = Axis.X, At = new Point3(0.0, 0.3, 0.3), Section = new RoundSection(new Length(0.2)) },
            new AxisTunnel { Name = "drain", Along = Axis.Z, At = new Point3(0.3, 0.3, 0.0), Section = new RoundSection(new Length(diameter)) },
        ],
    };

    [Fact]
    public void Needles_that_drift_over_the_window_are_a_warning_at_their_drift()
    {
        // Window 28 to 31.875 mL, 1.9 mL either way; 2 x sqrt(0.02^2 + 0.05^2) x 29.9375 mL = 3.2 mL.
        Diagnostic finding = Assert.Single(Window(n => n with { Repeatability = 0.02, Drift = 0.05 }));

        Assert.Equal(("DW3033", Severity.Warning, "needle.drift"), (finding.Code, finding.Severity, finding.Key!.Path));
        Assert.Contains("28.0 to 31.9 mL, 1.9 mL either way; two standard deviations of a dose are more at 576 of 576 needles, up to 3.2 mL", finding.Message);
        Assert.Empty(Window(n => n with { Repeatability = 0.02, Drift = 0.02 }));
    }

    [Fact]
    public void Needles_that_do_not_repeat_are_a_warning_at_their_repeatability() =>
        Assert.Equal("needle.repeatability", Assert.Single(Window(n => n with { Repeatability = 0.05, Drift = 0.01 })).Key!.Path);

    [Fact]
    public void Window_follows_the_band_of_the_unit() =>
        Assert.Empty(Window(n => n with { Repeatability = 0.02, Drift = 0.05 }, new WaterCementBand(0.25, 0.80, 0.95)));

    [Fact]
    public void Unknown_needles_and_bands_below_the_closing_dose_are_not_told_here()
    {
        Assert.Empty(Window(n => n with { Repeatability = 0.0, Drift = 0.0 }));
        Assert.Empty(Window(n => n with { Repeatability = 0.02, Drift = 0.05 }, new WaterCementBand(0.25, 0.50, 0.95)));
    }

    /// <summary>The quick try against the card: nothing at the thickness the card calls sound at a bad place, a warning two steps (20 mm) below it.</summary>
    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void Thin_wall_is_told_where_the_card_says_so(bool slab, bool shifted)
    {
        StudyBench bench = new(Samples.Job(Samples.Box(0.1, 0.1, 0.1)), 28.4, new DoseSolverOptions(), 8);
        double sound = LimitsStudy.Walls(bench, slab ? Axis.Z : Axis.Y, shifted, new Parallelism(2), TestContext.Current.CancellationToken).Sound.WorstMetres!.Value;

        Diagnostic finding = Assert.Single(Features(WithWall(sound - 0.02, slab), shifted));

        Assert.Equal(("DW3032", Severity.Warning, "tunnels[0]"), (finding.Code, finding.Severity, finding.Key!.Path));
        Assert.Contains($"{sound * 1000 - 20:0} mm thick", finding.Message);
        Assert.NotNull(finding.Where);
        Assert.Empty(Features(WithWall(sound, slab), shifted));
    }

    /// <summary>On this mix and printer a hole opens from 25 to 35 mm; one of 20 mm, below the pitch and so refused anyhow, shows that the finding works.</summary>
    [Fact]
    public void Narrow_hole_that_closes_is_told_by_its_name_and_an_open_one_is_not()
    {
        Diagnostic finding = Assert.Single(Features(WithHole(0.02)));

        Assert.Equal(("DW3031", Severity.Warning, "tunnels[1]"), (finding.Code, finding.Severity, finding.Key!.Path));
        Assert.Contains("\"drain\" is 20 mm", finding.Message);
        Assert.Empty(Features(WithHole(0.05)));
    }

    [Fact]
    public void Drawing_without_narrow_features_is_not_tried() => Assert.Empty(Features(Samples.Box(0.6, 0.6, 0.6)));
}
