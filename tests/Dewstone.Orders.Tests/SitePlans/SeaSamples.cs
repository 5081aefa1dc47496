using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Tests.SitePlans;

/// <summary>Units and plans at sea for the tests; invented.</summary>
internal static class SeaSamples
{
    public static SitePlan Plan(double heading = 40.0, double spacing = 3.0, int rows = 4, double latitude = 41.5, double longitude = -30.2) =>
        new() { AnchorLatitudeDegrees = latitude, AnchorLongitudeDegrees = longitude, Heading = new Angle(heading), Spacing = new Length(spacing), Rows = rows };

    public static SeaUnit Unit(string mark, double x = 0.9, double y = 0.9, double z = 0.9, double lift = 600.0, Site? site = null) => new()
    {
        Mark = mark,
        Name = "Wrack block",
        Size = new Size3(x, y, z),
        LiftKilograms = lift,
        SubmergedKilograms = 0.5 * lift,
        Lifting = new StrapLifting { Lines = [new StrapLine(Axis.Y, new Length(0.2)), new StrapLine(Axis.Y, new Length(0.7))] },
        Site = site,
    };

    public static SeaUnit[] Units(int count) => [.. Enumerable.Range(1, count).Select(i => Unit($"WB-{i:000}", lift: 500.0 + i))];

    public static Site Site(double depth, double? clearance = 1.83, PermitRules? permit = null, string name = "Wrackline shoal") => new()
    {
        Name = name,
        Water = new SiteWater { Depth = new Length(depth), Low = new Length(-0.3), High = new Length(1.4) },
        Wave = new DesignWave { SignificantHeight = new Length(1.2), PeakPeriod = new Duration(7.0), Direction = new Angle(270.0) },
        Seabed = new SeabedSoil { Soil = SoilKind.Sand, Friction = 0.55, EffectiveWeight = new UnitWeight(8500.0) },
        Clearance = clearance is { } least ? new Length(least) : null,
        Permit = permit,
    };
}
