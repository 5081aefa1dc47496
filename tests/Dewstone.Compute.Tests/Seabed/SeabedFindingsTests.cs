using Dewstone.Compute.Seabed;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Seabed;

/// <summary>Each finding of the sea with a site that raises it; the shoal itself raises none.</summary>
public sealed class SeabedFindingsTests
{
    private static readonly Size3 Cube = new(0.9, 0.9, 0.9);

    private static readonly Dictionary<string, Func<SeabedResult>> Raisers = new()
    {
        ["DW6001"] = () => Shoal.Stand(Shoal.Site with { Current = new SeaCurrent(new Speed(3), new Angle(90)) }, Cube),
        ["DW6002"] = () => Shoal.Stand(Shoal.Site with { Current = new SeaCurrent(new Speed(1.6), new Angle(90)) }, new Size3(0.3, 0.3, 1.5), fresh: 2150),
        ["DW6003"] = () => Shoal.Stand(Shoal.Clay(2500), Cube),
        ["DW6004"] = () => Shoal.Stand(Shoal.Site with { Clearance = new Length(4.9) }, Cube),
        ["DW6005"] = () => Shoal.Stand(Shoal.Site with { Permit = new PermitRules(0.1, null, "permit 7") }, Cube),
        ["DW6006"] = () => Shoal.Stand(Shoal.Site with { Permit = new PermitRules(null, new Length(5.71), "") }, Cube),
        ["DW6007"] = () => Shoal.Stand(Shoal.Site with { Seabed = Shoal.Site.Seabed with { Friction = 0 } }, Cube),
        ["DW6008"] = () => Shoal.Stand(Shoal.Site with { Wave = Shoal.Site.Wave with { SignificantHeight = new Length(4) } }, Cube),
        ["DW6009"] = () => Shoal.Stand(Shoal.Site with { Water = Shoal.Site.Water with { Low = new Length(-5.3) } }, Cube),
        ["DW6010"] = () => Shoal.Stand(Shoal.Site with { Water = Shoal.Site.Water with { Low = new Length(-6) } }, Cube),
        ["DW6011"] = () => Shoal.Stand(Shoal.Site, Cube, fresh: 1200),
        ["DW6012"] = () => Shoal.Stand(Shoal.Site with { Seabed = Shoal.Site.Seabed with { Grain = new Length(2e-4) } }, Cube),
        ["DW6013"] = () => Shoal.Stand(Shoal.Site with { Seabed = Shoal.Site.Seabed with { Grain = null } }, Cube),
        ["DW6014"] = () => Shoal.Stand(Shoal.Clay(1000), Cube),
        ["DW6015"] = () => Shoal.Stand(Shoal.Site with { Seabed = Shoal.Site.Seabed with { FrictionAngle = null } }, Cube),
    };

    public static TheoryData<string> Codes => [.. SeaFindings.All.Select(kind => kind.Code)];

    private static Site Coarse => Shoal.Site with { Seabed = Shoal.Site.Seabed with { Grain = new Length(0.03) } };

    [Theory]
    [MemberData(nameof(Codes))]
    public void Code_is_raised_by_its_fixture(string code)
    {
        Diagnostic found = Assert.Single(Raisers[code]().Findings, finding => finding.Code == code);

        Assert.Equal(DiagnosticCatalogue.Find(code)!.Severity, found.Severity);
        Assert.Equal(DescriptionKind.Site, found.Key!.Kind);
        Assert.NotEmpty(found.Remedy);
    }

    [Fact]
    public void Block_on_a_shoal_of_gravel_raises_nothing()
    {
        SeabedResult result = Shoal.Stand(Coarse with { Clearance = new Length(1.83), Permit = new PermitRules(0.5, new Length(3.6576), "") }, Cube);

        Assert.Empty(result.Findings);
        Assert.Equal(
            ["safety.sliding", "safety.overturning", "safety.bearing", "clearance", "permit.height_share", "permit.least_depth"],
            result.Requirements.Select(requirement => requirement.Id));
        Assert.All(result.Requirements, requirement => Assert.True(requirement.Met, requirement.Id));
    }

    /// <summary>Florida Administrative Code 62-330.600: at most half the depth, 6 ft (1.8288 m) over it, no reef in estuaries less than 12 ft (3.6576 m) deep.</summary>
    [Theory]
    [InlineData(1.8, 0.9, true, false, false)] // exactly half the depth, but too little over it and too shallow
    [InlineData(2.7, 0.9, true, false, false)] // 1.8 m over it
    [InlineData(1.6, 0.9, false, false, false)]
    [InlineData(3.6, 0.9, true, true, false)]
    [InlineData(3.7, 0.9, true, true, true)]
    public void Permit_rule_with_numbers_is_held(double depth, double height, bool half, bool over, bool deep)
    {
        Site site = Coarse with
        {
            Water = Shoal.Site.Water with { Depth = new Length(depth), Low = new Length(0) },
            Clearance = new Length(1.8288),
            Permit = new PermitRules(0.5, new Length(3.6576), "Florida Administrative Code 62-330.600"),
        };
        SeabedResult result = Shoal.Stand(site, new Size3(0.9, 0.9, height));

        Assert.Equal(half, Met(RequirementIds.HeightShare));
        Assert.Equal(over, Met(RequirementIds.Clearance));
        Assert.Equal(deep, Met(RequirementIds.LeastDepth));

        bool Met(string id) => result.Requirements.Single(requirement => requirement.Id == id).Met;
    }

    /// <summary>A figure no sea has gets a finding, and the unit no factor.</summary>
    [Theory]
    [InlineData("seabed.friction")]
    [InlineData("water.depth")]
    [InlineData("water.salinity")]
    [InlineData("wave.significant_height")]
    [InlineData("seabed.friction_angle")]
    [InlineData("forces")]
    public void Absurd_figure_gets_a_finding_and_no_number(string key)
    {
        Site site = key switch
        {
            "seabed.friction" => Shoal.Site with { Seabed = Shoal.Site.Seabed with { Friction = 0 } },
            "water.depth" => Shoal.Site with { Water = new SiteWater { Depth = new Length(0.5), Low = new Length(-2), High = new Length(-0.45) } },
            "water.salinity" => Shoal.Site with { Water = Shoal.Site.Water with { Salinity = 50 } },
            "wave.significant_height" => Shoal.Site with { Wave = Shoal.Site.Wave with { PeakPeriod = new Duration(2) } },
            "seabed.friction_angle" => Shoal.Site with { Seabed = Shoal.Site.Seabed with { FrictionAngle = new Angle(1) } },
            _ => Shoal.Site with { Forces = new ForceCoefficients(0, 1.67, 0.8) },
        };
        SeabedResult result = Shoal.Stand(site, Cube);

        Diagnostic found = Assert.Single(result.Findings);
        Assert.Equal(("DW6007", key), (found.Code, found.Key!.Path));
        Assert.Null(result.Report);
        Assert.Empty(result.Requirements);
    }

    [Fact]
    public void Without_a_site_there_is_nothing()
    {
        SeabedResult result = SeabedSolver.Solve(
            Samples.Job(), Inspection.FrontFields.Grid(4, 4, 4, 0.05), new byte[64],
            new() { QuarterTurns = 0, Corner = new Point3(0, 0, 0), UnitBox = Cube }, Bodies.Masses(1, 2000, 1800, 1025), new(1));

        Assert.Null(result.Report);
        Assert.Empty(result.Findings);
    }

    [Fact]
    public void Named_method_judges_the_bearing()
    {
        foreach ((BearingMethod method, string name) in new[] { (BearingMethod.Least, "Vesic"), (BearingMethod.Meyerhof, "Meyerhof"), (BearingMethod.Terzaghi, "Terzaghi") })
        {
            Site site = Shoal.Site with { Seabed = Shoal.Site.Seabed with { Method = method } };
            Assert.Equal(name, Shoal.Stand(site, Cube).Report!.Bearing!.Method);
        }
    }
}
