using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of a tunnel: straight along an axis, or along a path.</summary>
internal static class TunnelTable
{
    private static readonly KeyOf<Length> Width =
        Key.Must("width", Forms.Extent, "along y for a tunnel along x, along x for one along y or z", "340 mm");

    private static readonly KeyOf<Length> Height =
        Key.Must("height", Forms.Extent, "along z for a tunnel along x or y, along y for one along z");
    private static readonly KeyOf<Length> Rounding =
        Key.May("rounding", Forms.Radius, "radius of the corners, at most half the smaller side", fallback: "0 mm", starter: true);
    private static readonly KeyOf<Length> Diameter = Key.Must("diameter", Forms.Extent, "diameter of a round section", "220 mm");

    private static readonly TableForm<Section> SectionTable = new("a section", [Width, Height, Rounding, Diameter],
        bound => bound.Stands(Diameter)
            ? new RoundSection(bound.Get(Diameter))
            : new RectangularSection(bound.Get(Width), bound.Get(Height), bound.Get(Rounding)),
        bound =>
        {
            if (bound.Has(Width, out Length width) && bound.Has(Height, out Length height))
            {
                Rules.FitsHalf(bound, Rounding, Math.Min(width.Metres, height.Metres));
            }
        },
        [Way.By(Width, Height, Rounding), Way.By(Diameter)]);

    private static readonly KeyOf<string> Name = Key.Must("name", Forms.Name, "name for people, unique among the openings");

    private static readonly KeyOf<Axis> Along =
        Key.Must("along", new WordForm<Axis>(("x", Axis.X), ("y", Axis.Y), ("z", Axis.Z)), "axis it runs along, right through the box");

    private static readonly KeyOf<Across> At =
        Key.Must("at", AcrossTable.Table, "where its centre line runs, by the two coordinates across it", "{y: 450 mm, z: 270 mm}");

    private static readonly KeyOf<IReadOnlyList<Point3>> Path = Key.Must("path",
        new ListForm<Point3>(Forms.Point, 2, "points [x, y, z]",
            "[[0 mm, 450 mm, 300 mm], [450 mm, 450 mm, 300 mm], [450 mm, 900 mm, 300 mm]]"),
        "corners of its centre line");

    private static readonly KeyOf<Section> Cut =
        Key.Must("section", SectionTable, "cross-section; along a path a rectangle keeps its width level",
            "{width: 340 mm, height: 300 mm, rounding: 40 mm}");

    private static readonly KeyOf<Length> Clear =
        Key.May("clear", Forms.Extent, "least ball that must still pass once set", "200 mm", starter: true);

    /// <summary>A tunnel.</summary>
    public static readonly TableForm<Tunnel> Table = new("a tunnel", [Name, Along, At, Path, Cut, Clear], Make, Check,
        [Way.By(Along, At), Way.By(Path)]);

    private static Tunnel Make(Bound bound) => bound.Stands(Path)
        ? new PathTunnel { Name = bound.Get(Name), Path = bound.Get(Path), Section = bound.Get(Cut), Clear = bound.Maybe(Clear) }
        : new AxisTunnel
        {
            Name = bound.Get(Name),
            Along = bound.Get(Along),
            At = bound.Get(At).ToPoint(),
            Section = bound.Get(Cut),
            Clear = bound.Maybe(Clear),
        };

    private static void Check(Bound bound)
    {
        if (bound.Has(Along, out Axis along) && bound.Has(At, out Across? at))
        {
            AcrossTable.Check(bound, At.Name, along, at);
        }
    }
}
