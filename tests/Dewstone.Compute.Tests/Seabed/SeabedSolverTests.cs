using CsCheck;
using Dewstone.Compute.Seabed;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Seabed;

public sealed class SeabedSolverTests
{
    private static readonly Size3 Cube = new(0.9, 0.9, 0.9);

    private static StabilityReport Report(Site site, Size3? box = null, Func<Point3, bool>? isSet = null, double saturated = 2150) =>
        Shoal.Stand(site, box ?? Cube, isSet, saturated).Report!;

    [Fact]
    public void Rows_hold_every_level_heading_and_phase()
    {
        StabilityReport report = Report(Shoal.Site);

        Assert.Equal(2 * 36 * 36, report.Rows.Count);
        Assert.Equal(["low", "high"], report.Levels.Select(level => level.Name));
        Assert.Equal((5.7, 7.4), (report.Levels[0].DepthMetres, report.Levels[1].DepthMetres));
        Assert.Equal(4.8, report.Levels[0].CoverMetres, 1e-9);
        Assert.Equal(1.524, report.Levels[0].HeightMetres, 1e-9);
        Assert.Equal(new AiryWave(1.524, 7, 5.7).SpeedAt(0.9), report.Levels[0].SpeedMetresPerSecond, 1e-12);
        Assert.Equal(report.Rows.Min(row => row.Sliding), report.Sliding);
        Assert.Equal(report.Rows.Min(row => row.Overturning), report.Overturning);
        Assert.All(report.Rows, row => Assert.True(double.IsFinite(row.Sliding) && double.IsFinite(row.Overturning)));
    }

    /// <summary>
    /// A crest 0.15 m out of the water and one 0.2 m under it, by hand: Kt = -0.4 Rc / H + 0.64 (B / H)^-0.31 (1 - exp(-0.5 xi)), xi = (1 / 1.5) / sqrt(H / L0),
    /// L0 = g T^2 / 2 pi; d'Angremond, van der Meer and de Jong, 1996. What is covered lets more through.
    /// </summary>
    [Fact]
    public void Share_of_the_wave_that_passes_falls_with_the_crest_above_the_water()
    {
        SiteWater shallow = Shoal.Site.Water with { Depth = new Length(0.9), Low = new Length(-0.15), High = new Length(0.2) };
        StabilityReport report = Report(Shoal.Site with { Water = shallow });

        Assert.Equal(2, report.Levels.Count);
        Assert.All(report.Levels.Zip([0.15, -0.2]), pair =>
        {
            double height = pair.First.HeightMetres, surf = 1.0 / 1.5 / Math.Sqrt(height / (9.81 * 49.0 / (2.0 * Math.PI)));
            double share = -0.4 * pair.Second / height + 0.64 * Math.Pow(0.9 / height, -0.31) * (1.0 - Math.Exp(-0.5 * surf));
            Assert.InRange(share, 0.1, 0.79);
            Assert.Equal(share, pair.First.Transmission, 2e-4);
        });
    }

    /// <summary>W' = V (saturated - water) g, and fresh as the low bound: (fresh - water) V g.</summary>
    [Fact]
    public void Weight_under_water_is_that_of_full_pores_with_fresh_as_low_bound()
    {
        StabilityReport report = Report(Shoal.Site);

        Assert.Equal(0.729 * (2150 - report.WaterDensity) * 9.81, report.SubmergedNewtons, 1e-6);
        Assert.Equal(0.729 * (1850 - report.WaterDensity) * 9.81, report.FreshSubmergedNewtons, 1e-6);
        Assert.True(report.FreshSliding < report.Sliding && report.FreshOverturning < report.Overturning);
    }

    /// <summary>A quarter turn maps a square body onto itself, so its factors come back every 90 degrees, wherever wave and current come from.</summary>
    [Fact]
    public void Square_body_has_the_same_factors_every_quarter_turn()
    {
        foreach ((double wave, double current, double speed) in Cases(Gen.Select(Gen.Double[0, 360], Gen.Double[0, 360], Gen.Double[0, 1]), 8))
        {
            StabilityReport report = Report(With(wave, current, speed, 1.2), isSet: p => !(Math.Abs(p.X - 0.45) < 0.15 && p.Z < 0.3) && !(Math.Abs(p.Y - 0.45) < 0.15 && p.Z < 0.3));
            for (int i = 0; i < 36; i++)
            {
                Assert.Equal(1.0, report.Headings[i].Sliding / report.Headings[(i + 9) % 36].Sliding, 1e-9);
                Assert.Equal(1.0, report.Headings[i].Overturning / report.Headings[(i + 9) % 36].Overturning, 1e-9);
            }
        }
    }

    /// <summary>A body that is its own mirror image, met from the north, stands as well at a heading as at its opposite sign.</summary>
    [Fact]
    public void Mirrored_body_has_a_mirrored_chart()
    {
        StabilityReport report = Report(With(0, 180, 0.5, 1.2), new Size3(1.2, 0.6, 0.5));

        for (int i = 1; i < 18; i++)
        {
            Assert.Equal(1.0, report.Headings[i].Sliding / report.Headings[36 - i].Sliding, 1e-9);
            Assert.Equal(1.0, report.Headings[i].Overturning / report.Headings[36 - i].Overturning, 1e-9);
        }

        // Its long side across the waves is the worst, its short side the safest.
        Assert.True(report.Headings[0].Overturning < report.Headings[9].Overturning);
    }

    [Fact]
    public void Heavier_body_never_stands_worse()
    {
        foreach ((double wave, double current, double speed, double height, double density, double more) in Cases(Gen.Select(Gen.Double[0, 360], Gen.Double[0, 360], Gen.Double[0, 1.5], Gen.Double[0.2, 3], Gen.Double[1100, 2600], Gen.Double[1, 1000]), 12))
        {
            Site site = With(wave, current, speed, height);
            StabilityReport light = Report(site, saturated: density), heavy = Report(site, saturated: density + more);
            for (int i = 0; i < light.Rows.Count; i++)
            {
                Assert.True(heavy.Rows[i].Sliding >= light.Rows[i].Sliding && heavy.Rows[i].Overturning >= light.Rows[i].Overturning);
            }
        }
    }

    /// <summary>
    /// With the current along the waves, or none. Across them a higher wave turns the flow, perhaps onto a narrower side of the body, and need not be worse at one heading.
    /// </summary>
    [Fact]
    public void Higher_wave_is_never_safer()
    {
        foreach ((double wave, bool along, double speed, double height, double more) in Cases(Gen.Select(Gen.Double[0, 360], Gen.Bool, Gen.Double[0, 1.5], Gen.Double[0.2, 3], Gen.Double[0.01, 1]), 12))
        {
            double current = along ? (wave + 180) % 360 : wave;
            StabilityReport low = Report(With(wave, current, speed, height)), high = Report(With(wave, current, speed, height + more));
            for (int i = 0; i < 36; i++)
            {
                Assert.True(high.Headings[i].Sliding <= low.Headings[i].Sliding * (1 + 1e-9));
                Assert.True(high.Headings[i].Overturning <= low.Headings[i].Overturning * (1 + 1e-9));
            }
        }
    }

    /// <summary>The storm curve's wave, taken as the design wave at that period, leaves a factor of 1.</summary>
    [Fact]
    public void Critical_wave_of_the_storm_curve_just_moves_the_body()
    {
        // Half as heavy as usual: the block itself is moved by no wave that stands in this depth.
        StabilityReport report = Report(Shoal.Site, saturated: 1400);
        StormPoint point = report.Storm.First(storm => storm.LowMetres is not null);
        Site critical = Shoal.Site with
        {
            Water = Shoal.Site.Water with { High = Shoal.Site.Water.Low },
            Wave = Shoal.Site.Wave with
            {
                PeakPeriod = new Duration(point.PeriodSeconds),
                HeightRule = DesignHeightRule.Stated,
                StatedHeight = new Length(point.LowMetres!.Value),
                SignificantHeight = new Length(0.1),
            },
        };
        StabilityReport again = Report(critical, saturated: 1400);

        Assert.Equal(1.0, Math.Min(again.Sliding, again.Overturning), 1e-3);
        Assert.Equal(14, report.Storm.Count);
        Assert.All(report.Storm, storm => Assert.True(storm.LowMetres is null || storm.LowMetres <= storm.LowLimitMetres));
    }

    /// <summary>The least mass, given to the body, leaves the lesser factor just at what is asked (on a level seabed the equations are exact).</summary>
    [Fact]
    public void Least_mass_just_stands()
    {
        double least = Report(Shoal.Site).LeastSaturatedKilograms!.Value;
        StabilityReport again = Report(Shoal.Site, saturated: least / 0.729);

        Assert.Equal(1.0, Math.Min(again.Sliding / 1.3, again.Overturning / 1.5), 1e-9);
    }

    [Fact]
    public void Safe_heading_is_the_best_of_all()
    {
        StabilityReport report = Report(With(0, 180, 0.5, 1.2), new Size3(1.2, 0.6, 0.5));
        HeadingFactors safe = report.Headings.Single(heading => heading.HeadingDegrees == report.SafeHeadingDegrees);

        Assert.All(report.Headings, other => Assert.True(
            Math.Min(other.Sliding / 1.3, other.Overturning / 1.5) <= Math.Min(safe.Sliding / 1.3, safe.Overturning / 1.5)));
    }

    [Fact]
    public void Threads_change_nothing()
    {
        UnitMassesFree(1, out StabilityReport one);
        UnitMassesFree(4, out StabilityReport four);
        Assert.Equal(one.Rows, four.Rows);

        static void UnitMassesFree(int threads, out StabilityReport report)
        {
            Dewstone.Model.Lattices.UnitPlacement placement = new() { QuarterTurns = 1, Corner = new Point3(0.1, 0.1, 0.1), UnitBox = new Size3(1.0, 0.6, 0.6) };
            (Dewstone.Model.Lattices.CellGrid grid, byte[] hardened) = Bodies.Cells(placement, _ => true);
            report = SeabedSolver.Solve(
                Samples.Job() with { Site = Shoal.Site }, grid, hardened, placement, Bodies.Masses(0.36, 2150, 1850, 1023), new Parallelism(threads)).Report!;
        }
    }

    private static IEnumerable<T> Cases<T>(Gen<T> gen, int count) => Enumerable.Range(1, count).Select(seed => gen.Generate(new PCG((uint)seed, 5), null, out _));

    private static Site With(double wave, double current, double speed, double height) => Shoal.Site with
    {
        Wave = Shoal.Site.Wave with { Direction = new Angle(wave), HeightRule = DesignHeightRule.Significant, SignificantHeight = new Length(height) },
        Current = new SeaCurrent(new Speed(speed), new Angle(current)),
    };
}
