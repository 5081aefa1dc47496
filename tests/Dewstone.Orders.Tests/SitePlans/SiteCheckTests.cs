using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Tests.SitePlans;

public sealed class SiteCheckTests
{
    private static readonly Site Deep = SeaSamples.Site(6.0);

    [Fact]
    public void Sound_plan_on_one_site_has_no_finding()
    {
        SitePlan plan = SeaSamples.Plan();
        SeaUnit[] units = [.. SeaSamples.Units(10).Select(unit => unit with { Site = Deep })];

        Assert.Empty(SiteCheck.Before(plan, units.Length));
        Assert.Empty(SiteCheck.After(plan, SiteLayout.Arrange(plan, units)));
    }

    // Set out with 3 m and judged for 3.5 m.
    [Fact]
    public void Units_nearer_than_the_spacing_are_named()
    {
        IReadOnlyList<StandingUnit> standing = SiteLayout.Arrange(SeaSamples.Plan(spacing: 3.0), [.. SeaSamples.Units(8).Select(unit => unit with { Site = Deep })]);

        Diagnostic finding = Assert.Single(SiteCheck.After(SeaSamples.Plan(spacing: 3.5), standing));
        Assert.Equal("DW7055", finding.Code);
        Assert.Contains("stand 3.000 m apart, 3.5 m were asked for", finding.Message, StringComparison.Ordinal);
    }

    // Two squares of 2 m, the second turned by 45 degrees with its middle 4 m east: 4 - 1 - sqrt 2 = 1.5858 m. Moved to 1 m they overlap: 0.
    [Theory]
    [InlineData(4.0, 1.585786)]
    [InlineData(1.0, 0.0)]
    [InlineData(0.0, 0.0)]
    public void Nearest_distance_of_turned_squares_is_exact(double east, double clear)
    {
        SitePlan plan = SeaSamples.Plan(latitude: 0.0, longitude: 0.0);
        AnchorFrame frame = new(new GeographicPosition(0.0, 0.0));
        double half = Math.Sqrt(2.0);
        StandingUnit one = At(frame, "A-001", [(-1, -1), (1, -1), (1, 1), (-1, 1)]);
        StandingUnit other = At(frame, "A-002", [(east - half, 0), (east, -half), (east + half, 0), (east, half)]);

        Assert.Equal(clear, SiteCheck.Nearest(plan, [one, other])!.Value.Metres, 1e-6);
    }

    // 2.7 m deep at the datum, 0.3 m less at low water, unit 0.9 m high: 1.5 m over it. Half the depth would be 1.2 m.
    // Rules: Florida Administrative Code 62-330.600 (reference C-601): 6 ft over it, at most half the depth, 12 ft deep in estuaries.
    [Theory]
    [InlineData(2.7, 1.83, null, null, "WB-001 leaves 1.50 m of water over it at low water, 1.83 m were asked for")]
    [InlineData(2.7, 1.50, null, null, null)]
    [InlineData(2.0, null, 0.5, null, "WB-001 is 0.90 m high, the permit allows 0.85 m at low water")]
    [InlineData(2.2, null, 0.5, null, null)]
    [InlineData(3.9, null, null, 3.6576, "Wrackline shoal has 3.60 m of water at low water, the permit asks for 3.66 m")]
    [InlineData(4.0, null, null, 3.6576, null)]
    public void Rules_of_the_site_are_judged_at_low_water(double depth, double? clearance, double? share, double? leastDepth, string? message)
    {
        PermitRules? permit = share is null && leastDepth is null ? null : new PermitRules(share, leastDepth is { } least ? new Length(least) : null, "");
        SitePlan plan = SeaSamples.Plan(rows: 1);
        SeaUnit unit = SeaSamples.Unit("WB-001", site: SeaSamples.Site(depth, clearance, permit));

        IReadOnlyList<Diagnostic> findings = SiteCheck.After(plan, SiteLayout.Arrange(plan, [unit]));

        Assert.Equal(message is null ? [] : [("DW7056", message)], findings.Select(finding => (finding.Code, finding.Message)));
    }

    [Theory]
    [InlineData(89.0, 0.0, "DW7060")]
    [InlineData(-84.0, 0.0, null)]
    public void Anchor_near_a_pole_is_refused(double latitude, double longitude, string? code) =>
        Assert.Equal(code is null ? [] : [code], SiteCheck.Before(SeaSamples.Plan(latitude: latitude, longitude: longitude), 8).Select(finding => finding.Code));

    [Fact]
    public void Plan_across_the_meridian_of_180_degrees_is_refused()
    {
        SitePlan plan = SeaSamples.Plan(longitude: 179.99999);
        SeaUnit[] units = [.. SeaSamples.Units(8).Select(unit => unit with { Site = Deep })];

        Assert.Equal(["DW7060"], SiteCheck.After(plan, SiteLayout.Arrange(plan, units)).Select(finding => finding.Code));
    }

    [Fact]
    public void More_rows_than_units_is_said() =>
        Assert.Equal(["DW7061"], SiteCheck.Before(SeaSamples.Plan(rows: 40), 8).Select(finding => finding.Code));

    [Fact]
    public void Units_of_two_sites_and_of_none_are_said()
    {
        SitePlan plan = SeaSamples.Plan(rows: 1);
        SeaUnit[] two = [SeaSamples.Unit("A-001", site: Deep), SeaSamples.Unit("A-002", site: SeaSamples.Site(7.0, name: "Inner flat"))];

        Assert.Equal(["DW7057"], SiteCheck.After(plan, SiteLayout.Arrange(plan, two)).Select(finding => finding.Code));
        Assert.Equal(["DW7058"], SiteCheck.After(plan, SiteLayout.Arrange(plan, SeaSamples.Units(2))).Select(finding => finding.Code));
    }

    private static StandingUnit At(AnchorFrame frame, string mark, (double East, double North)[] corners) => new()
    {
        Unit = SeaSamples.Unit(mark),
        Row = 1,
        Place = 1,
        HeadingDegrees = 0.0,
        Middle = new GroundPoint(0.0, 0.0),
        Position = new GeographicPosition(0.0, 0.0),
        Corners = [.. corners.Select(corner => frame.Position(new GroundPoint(corner.East, corner.North)))],
    };
}
