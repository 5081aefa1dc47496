using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using static Dewstone.Compute.Tests.Geometry.SampleUnits;

namespace Dewstone.Compute.Tests.Geometry;

/// <summary>
/// Each finding DW2xxx with a unit that raises it, the key it must stand at, and a near neighbour that does not; on a grid of 50 mm.
/// </summary>
public sealed class ShapeCheckTests
{
    private static readonly ReefUnit Sound = Plain(0.9, 0.9, 0.9) with
    {
        Rounding = new Length(0.05),
        Blend = new Length(0.025),
        Tunnels = [Straight("way", Axis.X, new Point3(0.0, 0.45, 0.3), Round(0.2))],
    };

    private static readonly ScatteredCavities Niches = (ScatteredCavities)WrackBlock.Cavities[0];

    private static readonly Relief Waves = new()
    {
        Amplitude = new Length(0.012),
        ShortestLength = new Length(0.1),
        LongestLength = new Length(0.25),
        Faces = FaceSet.Top,
        Seed = 7,
    };

    public static TheoryData<string, string, ReefUnit, ReefUnit> Fixtures { get; } = new()
    {
        { "DW2001", "cavities[0].scatter.count", With(Niches with { Count = 300 }), With(Niches with { Count = 5 }) },
        { "DW2002", "tunnels[0].at", Tunnel(Straight("low", Axis.X, new Point3(0.0, 0.45, 2.7), Round(0.2))), Sound },
        {
            "DW2002", "tunnels[0].at",
            Tunnel(Straight("low", Axis.Z, new Point3(-0.1, 0.45, 0.0), Round(0.2))),
            Tunnel(Straight("low", Axis.Z, new Point3(-0.09, 0.45, 0.0), Round(0.2)))
        },
        {
            "DW2002", "tunnels[0].path",
            Tunnel(Winding("bend", Round(0.2), new Point3(0.0, -0.2, 0.3), new Point3(0.9, -0.2, 0.3))),
            Tunnel(Winding("bend", Round(0.2), new Point3(0.0, 0.2, 0.3), new Point3(0.9, 0.2, 0.3)))
        },
        {
            "DW2003", "tunnels[0].path[1]",
            Tunnel(Winding("bend", Round(0.2), new Point3(0.0, 0.45, 0.3), new Point3(0.45, 0.45, 0.3))),
            Tunnel(Winding("bend", Round(0.2), new Point3(0.0, 0.45, 0.3), new Point3(0.45, 0.45, 0.3), new Point3(0.45, 0.9, 0.3)))
        },
        {
            "DW2004", "cavities[0].sphere.centre",
            With(Hollow("den", Ball(0.45, 0.45, 1.2, 0.2))),
            With(Hollow("den", Ball(0.45, 0.45, 0.9, 0.2)))
        },
        {
            "DW2004", "cavities[0].block.centre",
            With(Hollow("den", Block(0.45, 0.45, 1.0, 0.2, 0.2, 0.2))),
            With(Hollow("den", Block(0.45, 0.45, 0.99, 0.2, 0.2, 0.2)))
        },
        {
            "DW2005", "tunnels[0].section.diameter", Tunnel(Straight("drain", Axis.X, new Point3(0.0, 0.45, 0.3), Round(0.049))),
            Tunnel(Straight("drain", Axis.X, new Point3(0.0, 0.45, 0.3), Round(0.05)))
        },
        {
            "DW2005", "tunnels[0].section.height", Tunnel(Straight("slit", Axis.X, new Point3(0.0, 0.45, 0.3), Rectangle(0.2, 0.03))),
            Tunnel(Straight("slit", Axis.X, new Point3(0.0, 0.45, 0.3), Rectangle(0.2, 0.06)))
        },
        {
            "DW2005", "tunnels[0].section.width", Tunnel(Straight("slit", Axis.X, new Point3(0.0, 0.45, 0.3), Rectangle(0.04, 0.2))),
            Tunnel(Straight("slit", Axis.X, new Point3(0.0, 0.45, 0.3), Rectangle(0.05, 0.2)))
        },
        { "DW2005", "box", Plain(0.9, 0.9, 0.04), Plain(0.9, 0.9, 0.05) },
        {
            "DW2005", "keep[0].block.size",
            Sound with { Keep = [Zone("skin", Block(0.45, 0.45, 0.7, 0.9, 0.02, 0.2))] },
            Sound with { Keep = [Zone("skin", Block(0.45, 0.45, 0.7, 0.9, 0.1, 0.2))] }
        },
        { "DW2005", "cavities[0].scatter.diameter", With(Niches with { LeastDiameter = new Length(0.04) }), With(Niches) },
        { "DW2006", "tunnels[0]", Twins(0.299), Twins(0.301) },
        {
            "DW2006", "tunnels[0]",
            Tunnel(Straight("low", Axis.X, new Point3(0.0, 0.45, 0.19), Round(0.2))),
            Tunnel(Straight("low", Axis.X, new Point3(0.0, 0.45, 0.201), Round(0.2)))
        },
        { "DW2006", "tunnels[0]", With(Hollow("den", Ball(0.9, 0.45, 0.57, 0.2))), With(Hollow("den", Ball(0.9, 0.45, 0.61, 0.2))) },
        {
            "DW2007", "keep[0].block.centre",
            Sound with { Keep = [Zone("foot", Block(0.45, 0.45, -0.05, 0.9, 0.9, 0.1))] },
            Sound with { Keep = [Zone("foot", Block(0.45, 0.45, 0.05, 0.9, 0.9, 0.1))] }
        },
        { "DW2008", "blend", Sound with { Blend = new Length(0.11) }, Sound with { Blend = new Length(0.1) } },
        {
            "DW2009", "relief.amplitude",
            Sound with { Relief = Waves with { Amplitude = new Length(0.06) } },
            Sound with { Relief = Waves with { Amplitude = new Length(0.05) } }
        },
        {
            "DW2010", "relief.length",
            Sound with { Relief = Waves with { ShortestLength = new Length(0.09) } },
            Sound with { Relief = Waves }
        },
        {
            "DW2011", "cavities[0].sphere.centre",
            With(Hollow("den", Ball(0.45, 0.45, 0.6, 0.15))),
            With(Hollow("den", Ball(0.45, 0.45, 0.4, 0.15)))
        },
        {
            "DW2011", "cavities[1].ellipsoid.centre", With(Hollow("den", Ball(0.45, 0.45, 0.6, 0.15)), Hollow("far",
            Egg(0.45, 0.45, 0.7, 0.2, 0.2, 0.1))),
            With(Hollow("den", Ball(0.45, 0.45, 0.45, 0.15)), Hollow("far", Egg(0.45, 0.45, 0.55, 0.2, 0.2, 0.1)))
        },
        {
            "DW2012", "tunnels[0].path", Tunnel(Winding("hairpin",
            Round(0.1), new Point3(0.0, 0.3, 0.3), new Point3(0.6, 0.3, 0.3), new Point3(0.0, 0.4, 0.3))),
            Tunnel(Winding("hairpin",
                Round(0.1), new Point3(0.0, 0.3, 0.3), new Point3(0.6, 0.3, 0.3), new Point3(0.6, 0.5, 0.3), new Point3(0.0, 0.6, 0.3)))
        },
        { "DW2012", "tunnels[0].path", Tunnel(Winding("none", Round(0.1), new Point3(0.0, 0.3, 0.3), new Point3(0.0, 0.3, 0.3))), Sound },
        {
            "DW2013", "tunnels[0].clear", Tunnel(Straight("way",
            Axis.X, new Point3(0.0, 0.45, 0.3), Round(0.2)) with { Clear = new Length(0.21) }),
            Tunnel(Straight("way", Axis.X, new Point3(0.0, 0.45, 0.3), Round(0.2)) with { Clear = new Length(0.2) })
        },
        {
            "DW2014", "keep[0]",
            Sound with { Keep = [Zone("core", Ball(0.45, 0.45, 0.3, 0.3))] },
            Sound with { Keep = [Zone("core", Ball(0.45, 0.45, 0.7, 0.3))] }
        },
        {
            "DW2016", "tunnels[0].at",
            Tunnel(Straight("way", Axis.X, new Point3(0.0, 0.45, 0.91), Round(0.2))),
            Tunnel(Straight("way", Axis.X, new Point3(0.0, 0.45, 0.9), Round(0.2)))
        },
        {
            "DW2015", "box",
            Plain(0.3, 0.3, 0.3) with { Cavities = [Hollow("all", Ball(0.15, 0.15, 0.15, 0.6))] },
            Plain(0.3, 0.3, 0.3) with { Cavities = [Hollow("all", Ball(0.15, 0.15, 0.15, 0.3))] }
        },
    };

    [Theory]
    [MemberData(nameof(Fixtures))]
    public void Finding_is_raised_for_its_unit_and_not_for_its_neighbour(string code, string key, ReefUnit raises, ReefUnit spares)
    {
        IReadOnlyList<Diagnostic> found = All(raises);
        FindingKind kind = ShapeFindings.All.Single(k => k.Code == code);

        Diagnostic finding = Assert.Single(found, d => d.Code == code && d.Key!.Path == key);
        Assert.Equal(kind.Severity, finding.Severity);
        Assert.DoesNotContain('\n', finding.Message + finding.Remedy);
        Assert.DoesNotContain(All(spares), d => d.Code == code);
    }

    [Fact]
    public void Every_code_of_the_catalogue_has_a_unit_that_raises_it() =>
        Assert.Equal(ShapeFindings.All.Select(kind => kind.Code), Fixtures.Select(row => row.Data.Item1).Distinct().Order());

    [Fact]
    public void Sound_unit_has_no_finding() => Assert.Empty(All(Sound));

    [Fact]
    public void Habitat_block_has_no_error()
    {
        Assert.DoesNotContain(All(WrackBlock), d => d.Severity == Severity.Error);
        Assert.Equal(["DW2006", "DW2010"], All(WrackBlock).Select(d => d.Code).Order());
    }

    [Fact]
    public void Wall_finding_says_the_thickness_and_where()
    {
        Diagnostic finding = Assert.Single(All(Twins(0.26)), d => d.Code == "DW2006");

        Assert.Contains("\"a\" and \"b\" is 60 mm thick", finding.Message, StringComparison.Ordinal);
        Assert.Equal(0.43, finding.Where!.Value.Y, 1e-6);
        Assert.Equal("tunnels[1]", Assert.Single(finding.Related).Key!.Path);
    }

    [Fact]
    public void Openings_that_cross_have_no_wall_between_them()
    {
        ReefUnit unit = Sound with { Tunnels = [.. Sound.Tunnels, Straight("cross", Axis.Y, new Point3(0.45, 0.0, 0.3), Round(0.2))] };

        Assert.Empty(All(unit));
    }

    private static List<Diagnostic> All(ReefUnit unit)
    {
        ShapeResult result = ReefShapeBuilder.Build(unit);
        return [.. result.Diagnostics, .. ShapeCheck.Check(unit, result.Shape, 0.05, 0.05)];
    }

    private static ReefUnit Tunnel(Tunnel tunnel) => Sound with { Tunnels = [tunnel] };

    private static ReefUnit With(params Cavity[] cavities) => Sound with { Cavities = cavities };

    // Two round tunnels of 200 mm side by side.
    private static ReefUnit Twins(double apart) => Sound with
    {
        Tunnels = [Straight("a", Axis.X, new Point3(0.0, 0.3, 0.45), Round(0.2)), Straight("b",
            Axis.X, new Point3(0.0, 0.3 + apart, 0.45), Round(0.2))],
    };
}
