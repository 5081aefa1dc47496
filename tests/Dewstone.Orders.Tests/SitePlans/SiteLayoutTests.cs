using CsCheck;
using Dewstone.Model.Description;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Tests.SitePlans;

public sealed class SiteLayoutTests
{
    // Five units of 1 m by 2 m (x by y), two rows heading north, 3 m clear: row 1 holds three, their middles 5 m apart along the heading and the row
    // half a width and half a gap (0.5 + 1.5 = 2 m) west of the anchor; row 2 as far east. Worked by hand.
    [Fact]
    public void Rows_heading_north_stand_as_worked_by_hand()
    {
        SeaUnit[] units = [.. Enumerable.Range(1, 5).Select(i => SeaSamples.Unit($"A-{i:000}", x: 1.0, y: 2.0))];
        IReadOnlyList<StandingUnit> standing = SiteLayout.Arrange(SeaSamples.Plan(heading: 0.0, spacing: 3.0, rows: 2), units);

        (int, int, double, double)[] expected = [(1, 1, -2.0, -5.0), (1, 2, -2.0, 0.0), (1, 3, -2.0, 5.0), (2, 1, 2.0, -2.5), (2, 2, 2.0, 2.5)];
        Assert.Equal(expected, standing.Select(at => (at.Row, at.Place, Round(at.Middle.EastMetres), Round(at.Middle.NorthMetres))));
        Assert.Equal(units.Select(unit => unit.Mark), standing.Select(at => at.Unit.Mark));
    }

    // Heading east the row runs east, and the next row lies to its right, south.
    [Fact]
    public void Rows_heading_east_run_east_and_follow_to_the_south()
    {
        IReadOnlyList<StandingUnit> standing = SiteLayout.Arrange(SeaSamples.Plan(heading: 90.0, spacing: 3.0, rows: 2), SeaSamples.Units(4));

        Assert.True(standing[1].Middle.EastMetres > standing[0].Middle.EastMetres + 3.8);
        Assert.True(standing[2].Middle.NorthMetres < standing[0].Middle.NorthMetres - 3.8);
        Assert.All(standing, at => Assert.Equal(90.0, at.HeadingDegrees));
    }

    // Clear distances are measured back from the written positions, by another way than they were made; sizes differ, so rows are as deep as their deepest.
    [Fact]
    public void Clear_distance_is_the_spacing_whatever_heading_and_sizes() =>
        Gen.Select(Gen.Double[0.0, 360.0], Gen.Double[-80.0, 80.0], Gen.Double[0.5, 6.0], Gen.Int[1, 5], Gen.Select(Gen.Double[0.3, 3.0], Gen.Double[0.3, 3.0]).Array[2, 20]).Sample(
            (heading, latitude, spacing, rows, sizes) =>
            {
                SitePlan plan = SeaSamples.Plan(heading, spacing, rows, latitude);
                SeaUnit[] units = [.. sizes.Select((size, i) => SeaSamples.Unit($"A-{i + 1:000}", size.Item1, size.Item2))];
                IReadOnlyList<StandingUnit> standing = SiteLayout.Arrange(plan, units);
                Assert.Equal(units.Length, standing.Count);
                Assert.Equal(Math.Min(rows, units.Length), standing.Max(at => at.Row));
                Assert.Equal(spacing, SiteCheck.Nearest(plan, standing)!.Value.Metres, 0.005);
            },
            iter: 200);

    private static double Round(double metres) => Math.Round(metres, 9);
}
