using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>Stands the predicted solid at a site: every heading, both water levels, every phase of the design wave; then judges.</summary>
/// <remarks>
/// The wave's motion is taken at the unit's top, where it is greatest, and over its whole height. The current is added to it and does not change the wave's length. Where the unit
/// stands out of the water its whole area is loaded and its whole volume floats, which is the safe side, but slamming is not in it.
/// </remarks>
public static class SeabedSolver
{
    /// <summary>Step of headings and of phases, degrees.</summary>
    public const int StepDegrees = 10;

    /// <summary>Depth below which a level counts as dry, m.</summary>
    public const double DryMetres = 0.1;

    /// <summary>Headings, and phases, of a turn.</summary>
    public const int Steps = 360 / StepDegrees;

    // A block's face is steeper than any mound tested; the steepest of those is taken, tangent 1 to 1.5.
    private const double MoundSlope = 1.0 / 1.5;
    private const double HudsonStability = 4.0;
    private const double HudsonCotangent = 2.0;

    /// <summary>Stands a unit at its job's site.</summary>
    /// <param name="job">The site.</param>
    /// <param name="grid">The cells.</param>
    /// <param name="hardened">1 where hardened, else 0; index order of the grid.</param>
    /// <param name="placement">Where the unit stands in the printer.</param>
    /// <param name="masses">Fresh, saturated and submerged mass, by the site's water.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Report, requirements and findings; empty without a site.</returns>
    public static SeabedResult Solve(
        JobDescription job, CellGrid grid, byte[] hardened, UnitPlacement placement, Estimate masses, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(masses);
        if (job.Site is not { } site || BodyMeasure.Of(grid, hardened, placement, parallelism) is not { } body)
        {
            return new SeabedResult(null, [], []);
        }

        return SiteFigureCheck.Check(site) is { Count: > 0 } faults
            ? new SeabedResult(null, [], faults)
            : SeabedCheck.Judge(site, Stand(site, body, masses));
    }

    /// <summary>Stands a body at a site whose figures are sound.</summary>
    /// <param name="site">The site.</param>
    /// <param name="body">The body.</param>
    /// <param name="masses">Masses of all that hardened, kg.</param>
    /// <returns>The report.</returns>
    public static StabilityReport Stand(Site site, StandingBody body, Estimate masses)
    {
        ArgumentNullException.ThrowIfNull(site);
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(masses);
        double density = SeaWater.KilogramsPerCubicMetre(site.Water.Salinity, site.Water.Temperature.Celsius);
        double newtons = masses.SubmergedKilograms * body.MainShare * AiryWave.Gravity;
        double fresh = Math.Max(0.0, masses.FreshKilograms * body.MainShare - density * body.CubicMetres) * AiryWave.Gravity;
        Footing footing = FootingOf(site, body, newtons);
        SeaLevel[] levels = [.. Depths(site).Where(level => level.DepthMetres > DryMetres).Select(level => Level(site, body, level.Name, level.DepthMetres))];
        SeaState[] seas = [.. levels.Select(level => State(site, density, level.SpeedMetresPerSecond, level.AccelerationMetresPerSecondSquared))];
        StabilityRow[] rows = new StabilityRow[levels.Length * Steps * Steps];
        for (int i = 0; i < rows.Length; i++)
        {
            rows[i] = WaveLoad.At(
                body, footing, seas[i / (Steps * Steps)], site.Forces, i / Steps % Steps * StepDegrees, i % Steps * StepDegrees);
        }

        HeadingFactors[] headings = [.. Enumerable.Range(0, Steps).Select(heading => Least(rows, heading))];
        (double freshSliding, double freshOverturning) = LeastOf(body, footing with { SubmergedNewtons = fresh }, seas, site.Forces);
        double least = rows.Max(row => WaveLoad.LeastNewtons(row, footing, body, site.Safety.Sliding, site.Safety.Overturning));
        double saturated = masses.SaturatedKilograms * body.MainShare;
        double peak = rows.Max(row => row.FlowSpeed);
        double solidDensity = saturated / body.CubicMetres;
        return new StabilityReport
        {
            Site = site.Name,
            Body = body,
            WaterDensity = density,
            SubmergedNewtons = newtons,
            FreshSubmergedNewtons = fresh,
            SaturatedKilograms = saturated,
            Levels = levels,
            Rows = rows,
            Headings = headings,
            FreshSliding = freshSliding,
            FreshOverturning = freshOverturning,
            Bearing = FootBearing.Of(site.Seabed, body, newtons, rows),
            Scour = SandMotion.Of(site, body, density, levels),
            Storm = StormCurve.Of(site, body, footing, density, headings),
            LeastSaturatedKilograms = double.IsFinite(least) ? least / AiryWave.Gravity + density * body.CubicMetres : null,
            HudsonKilograms = ArmourStone.HudsonNewtons(
                solidDensity * AiryWave.Gravity, density * AiryWave.Gravity, levels.Max(level => level.HeightMetres), HudsonStability, HudsonCotangent)
                / AiryWave.Gravity,
            IsbashMetres = ArmourStone.IsbashMetres(peak, solidDensity / density - 1.0),
            SafeHeadingDegrees = headings.MaxBy(heading => Math.Min(
                heading.Sliding / Math.Max(site.Safety.Sliding, 0.01), heading.Overturning / Math.Max(site.Safety.Overturning, 0.01)))!.HeadingDegrees,
        };
    }

    /// <summary>Depths at low and high water.</summary>
    /// <param name="site">The site.</param>
    /// <returns>Name and depth, m.</returns>
    internal static IEnumerable<(string Name, double DepthMetres)> Depths(Site site) =>
        [("low", site.Water.Depth.Metres + site.Water.Low.Metres), ("high", site.Water.Depth.Metres + site.Water.High.Metres)];

    /// <summary>The water at the unit.</summary>
    /// <param name="site">Directions and current.</param>
    /// <param name="density">Of the water, kg/m3.</param>
    /// <param name="speed">Greatest speed of the wave, m/s.</param>
    /// <param name="acceleration">Greatest acceleration of the wave, m/s2.</param>
    /// <returns>The state.</returns>
    internal static SeaState State(Site site, double density, double speed, double acceleration) => new()
    {
        WaterDensity = density,
        WaveSpeed = speed,
        WaveAcceleration = acceleration,
        WaveTowards = site.Wave.Direction.Degrees + 180.0,
        CurrentSpeed = site.Current?.Speed.MetresPerSecond ?? 0.0,
        CurrentTowards = site.Current?.Direction.Degrees ?? 0.0,
    };

    private static Footing FootingOf(Site site, StandingBody body, double newtons) => new(
        newtons, site.Seabed.Friction, site.Seabed.Slope.Radians,
        site.Seabed is { Soil: SoilKind.Clay, UndrainedStrength: { } strength }
            ? strength.Pascals * body.ContactSquareMetres
            : double.PositiveInfinity);

    private static SeaLevel Level(Site site, StandingBody body, string name, double depth)
    {
        double period = site.Wave.PeakPeriod.Seconds, slope = Math.Tan(site.Seabed.Slope.Radians), asked = DesignHeight.Metres(site.Wave);
        double byDepth = BreakingLimit.ByDepth(period, depth, slope), bySteepness = BreakingLimit.BySteepness(new AiryWave(0.0, period, depth));
        AiryWave wave = new(Math.Min(asked, Math.Min(byDepth, bySteepness)), period, depth);
        double cover = depth - body.HeightMetres, width = Math.Sqrt(body.PlanSquareMetres);
        double incident = Math.Max(wave.HeightMetres, 0.01);
        return new SeaLevel
        {
            Name = name,
            DepthMetres = depth,
            CoverMetres = cover,
            AskedMetres = asked,
            DepthLimitMetres = byDepth,
            SteepnessLimitMetres = bySteepness,
            GodaLimitMetres = BreakingLimit.ByGoda(period, depth, slope),
            LengthMetres = wave.LengthMetres,
            SpeedMetresPerSecond = wave.SpeedAt(body.HeightMetres),
            AccelerationMetresPerSecondSquared = wave.AccelerationAt(body.HeightMetres),
            Transmission = WaveTransmission.Share(-cover, width, incident, WaveTransmission.SurfSimilarity(MoundSlope, incident, period)),
            TransmissionInRange = Math.Abs(cover) <= WaveTransmission.RangeOfFreeboard * incident,
        };
    }

    private static HeadingFactors Least(StabilityRow[] rows, int heading)
    {
        double sliding = StabilityReport.MostFactor, overturning = StabilityReport.MostFactor;
        for (int first = heading * Steps; first < rows.Length; first += Steps * Steps)
        {
            foreach (StabilityRow row in rows.AsSpan(first, Steps))
            {
                sliding = Math.Min(sliding, row.Sliding);
                overturning = Math.Min(overturning, row.Overturning);
            }
        }

        return new HeadingFactors(heading * StepDegrees, sliding, overturning);
    }

    private static (double Sliding, double Overturning) LeastOf(StandingBody body, Footing footing, SeaState[] seas, ForceCoefficients forces)
    {
        double sliding = StabilityReport.MostFactor, overturning = StabilityReport.MostFactor;
        foreach (SeaState sea in seas)
        {
            for (int i = 0; i < Steps * Steps; i++)
            {
                StabilityRow row = WaveLoad.At(body, footing, sea, forces, i / Steps * StepDegrees, i % Steps * StepDegrees);
                sliding = Math.Min(sliding, row.Sliding);
                overturning = Math.Min(overturning, row.Overturning);
            }
        }

        return (sliding, overturning);
    }
}
