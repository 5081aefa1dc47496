namespace Dewstone.Model.Results;

/// <summary>How the predicted solid stands at a site. Forces N, lengths m, masses kg, bearings degrees clockwise from true north.</summary>
public sealed record StabilityReport
{
    /// <summary>Greatest factor told; more is written as this.</summary>
    public const double MostFactor = 100.0;

    /// <summary>Name of the site.</summary>
    public required string Site { get; init; }

    /// <summary>The body.</summary>
    public required StandingBody Body { get; init; }

    /// <summary>Density of the sea water, kg/m3.</summary>
    public required double WaterDensity { get; init; }

    /// <summary>Weight under water with all pores full of sea water, N: what is judged.</summary>
    public required double SubmergedNewtons { get; init; }

    /// <summary>Weight under water as lowered, pores still full of air, N.</summary>
    public required double FreshSubmergedNewtons { get; init; }

    /// <summary>Saturated mass, kg.</summary>
    public required double SaturatedKilograms { get; init; }

    /// <summary>Low water, then high water; a level without water is left out.</summary>
    public required IReadOnlyList<SeaLevel> Levels { get; init; }

    /// <summary>Every heading, level and phase: for each level in turn the headings, for each of them the phases.</summary>
    public required IReadOnlyList<StabilityRow> Rows { get; init; }

    /// <summary>Least factors by heading, from 0.</summary>
    public required IReadOnlyList<HeadingFactors> Headings { get; init; }

    /// <summary>Least factor against sliding with fresh weight, 1.</summary>
    public required double FreshSliding { get; init; }

    /// <summary>Least factor against overturning with fresh weight, 1.</summary>
    public required double FreshOverturning { get; init; }

    /// <summary>Bearing; null when the site lacks a figure for it.</summary>
    public BearingReport? Bearing { get; init; }

    /// <summary>Scour; null on clay, or when no grain size is given.</summary>
    public ScourReport? Scour { get; init; }

    /// <summary>The waves that just move it, by period, at its worst headings.</summary>
    public required IReadOnlyList<StormPoint> Storm { get; init; }

    /// <summary>Least saturated mass of this shape that would stand with the factors asked for, kg; null when none would.</summary>
    public double? LeastSaturatedKilograms { get; init; }

    /// <summary>Mass that Hudson would ask of a loose stone on a slope of 1 to 2 with KD 4, kg.</summary>
    public required double HudsonKilograms { get; init; }

    /// <summary>Diameter of the ball that Isbash would ask of a loose stone, m.</summary>
    public required double IsbashMetres { get; init; }

    /// <summary>Least factor against sliding over all headings, 1.</summary>
    public double Sliding => Headings.Min(heading => heading.Sliding);

    /// <summary>Least factor against overturning over all headings, 1.</summary>
    public double Overturning => Headings.Min(heading => heading.Overturning);

    /// <summary>Heading whose lesser factor, each over that asked for, is greatest; the first of equals.</summary>
    public required double SafeHeadingDegrees { get; init; }

    /// <summary>Diameter of the ball of the unit's volume, m.</summary>
    public double BallMetres => Math.Cbrt(6.0 * Body.CubicMetres / Math.PI);
}
