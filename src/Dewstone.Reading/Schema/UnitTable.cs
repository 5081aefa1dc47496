using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of a reef unit.</summary>
internal static class UnitTable
{
    private static readonly KeyOf<Length> Amplitude =
        Key.Must("amplitude", Forms.Length("0 mm", "500 mm", "12 mm"), "largest depth removed");

    private static readonly KeyOf<Band> Wavelength =
        Key.Must("length", Forms.Band(Forms.Extent, "[80 mm, 250 mm]"), "shortest and longest length of the bumps");

    private static readonly KeyOf<FaceSet> Faces = Key.Must("faces", FaceForms.Faces, "faces it works on");
    private static readonly KeyOf<ulong> Seed = Key.Must("seed", Forms.Seed, "seed of the random numbers");

    private static readonly TableForm<Relief> ReliefTable = new("a relief", [Amplitude, Wavelength, Faces, Seed],
        bound => new Relief
        {
            Amplitude = bound.Get(Amplitude),
            ShortestLength = bound.Get(Wavelength).From,
            LongestLength = bound.Get(Wavelength).To,
            Faces = bound.Get(Faces),
            Seed = bound.Get(Seed),
        },
        bound => Rules.InOrder(bound, Wavelength));

    private static readonly KeyOf<string> ZoneName = Key.Must("name", Forms.Name, "name for people, unique", "foot");

    private static readonly TableForm<KeepZone> KeepTable = new("a keep zone",
        [ZoneName, ShapeTables.Block, ShapeTables.Sphere, ShapeTables.Ellipsoid],
        bound => new KeepZone { Name = bound.Get(ZoneName), Form = ShapeTables.Find(bound)! },
        ways: [Way.By(ShapeTables.Block), Way.By(ShapeTables.Sphere), Way.By(ShapeTables.Ellipsoid)]);

    private static readonly KeyOf<int> Turn =
        Key.May("turn", new WordForm<int>(("0 deg", 0), ("90 deg", 1), ("180 deg", 2), ("270 deg", 3)),
            "quarter turns, counter-clockwise from above");

    private static readonly KeyOf<Point3> Shift =
        Key.May("shift", Forms.Point, "shift from the centred whole-pitch position, after turning", "[0 mm, 0 mm, 0 mm]");

    private static readonly KeyOf<bool> Layers =
        Key.May("layers", new WordForm<bool>(("straight", false), ("shifted", true)),
            "whether every other layer is shifted by half a pitch");

    private static readonly TableForm<PlacementWish> PlaceTable = new("a placement", [Turn, Shift, Layers],
        bound => new PlacementWish { QuarterTurns = bound.Maybe(Turn), Shift = bound.Maybe(Shift), ShiftedLayers = bound.Maybe(Layers) });

    private static readonly KeyOf<string> Name = Key.Must("name", Forms.Name, "name for people", "Wrack block");

    private static readonly KeyOf<string> Mix =
        Key.May("mix", Forms.File, "file of the dry mix; the command line, tonight or the order may override it", starter: true);

    private static readonly KeyOf<string> Printer =
        Key.May("printer", Forms.File, "file of the printer, likewise", "../printers/yard.printer.yaml", starter: true);
    private static readonly KeyOf<string> Site =
        Key.May("site", Forms.File, "file of the site, likewise", "../sites/wrackline-shoal.site.yaml");

    private static readonly KeyOf<Size3> Box = Key.Must("box",
        new RowForm<Size3>("the edges [x, y, z], each from 20 mm to 20 m", "[900 mm, 900 mm, 900 mm]",
            v => new Size3(((Length)v[0]).Metres, ((Length)v[1]).Metres, ((Length)v[2]).Metres), BoxEdge(), BoxEdge(), BoxEdge()),
        "edges of the outer box");

    private static readonly KeyOf<Length> Rounding =
        Key.May("rounding", Forms.Radius, "radius of the outer edges and corners, at most half the smallest edge", "50 mm", "0 mm",
            starter: true);

    private static readonly KeyOf<Length> Blend =
        Key.May("blend", Forms.Radius, "radius where openings meet each other and the outer faces", "25 mm", "0 mm", starter: true);

    private static readonly KeyOf<Relief> Bumps = Key.May("relief", ReliefTable, "nature's bumpiness; it only removes");

    private static readonly KeyOf<IReadOnlyList<Tunnel>> Tunnels =
        Key.May("tunnels", new ListForm<Tunnel>(TunnelTable.Table, 0, "tunnels"), "openings that run right through the box", starter: true);

    private static readonly KeyOf<IReadOnlyList<Cavity>> Cavities =
        Key.May("cavities", new ListForm<Cavity>(CavityTable.Table, 0, "cavities"), "hollows; may be closed, may open to a face");

    private static readonly KeyOf<IReadOnlyList<KeepZone>> Keep =
        Key.May("keep", new ListForm<KeepZone>(KeepTable, 0, "keep zones"), "zones that stay solid whatever openings say", starter: true);

    private static readonly KeyOf<Lifting> Lift = Key.May("lifting", LiftingTable.Table, "how the finished unit is lifted", starter: true);
    private static readonly KeyOf<Requirements> Require =
        Key.May("require", RequirementTable.Table, "what `check` holds the predicted solid against",
        "{mass: {max: 1150 kg}, wall: {min: 60 mm}, shape_match: {min: 0.80}, loose_pieces: {max: 0}}", starter: true);
    private static readonly KeyOf<PlacementWish> Place =
        Key.May("place", PlaceTable, "fixes the placement in the printer; left out, it is chosen", "{turn: 0 deg}");

    /// <summary>A reef unit's file.</summary>
    public static readonly TableForm<UnitFile> Table = new("a unit",
        [Name, Mix, Printer, Site, Box, Rounding, Blend, Bumps, Tunnels, Cavities, Keep, Lift, Require, Place], Make, Check);

    private static QuantityForm<Length> BoxEdge() => Forms.Length("20 mm", "20 m", "900 mm");

    private static UnitFile Make(Bound bound) => new()
    {
        Mix = bound.MaybeOf(Mix),
        Printer = bound.MaybeOf(Printer),
        Site = bound.MaybeOf(Site),
        Unit = new ReefUnit
        {
            Name = bound.Get(Name),
            OuterBox = bound.Get(Box),
            Rounding = bound.Get(Rounding),
            Blend = bound.Get(Blend),
            Relief = bound.MaybeOf(Bumps),
            Tunnels = bound.MaybeOf(Tunnels) ?? [],
            Cavities = bound.MaybeOf(Cavities) ?? [],
            Keep = bound.MaybeOf(Keep) ?? [],
            Lifting = bound.MaybeOf(Lift),
            Require = bound.MaybeOf(Require) ?? new Requirements(),
            Place = bound.MaybeOf(Place) ?? new PlacementWish(),
        },
    };

    private static void Check(Bound bound)
    {
        if (bound.Has(Box, out Size3 box))
        {
            Rules.FitsHalf(bound, Rounding, Math.Min(box.X, Math.Min(box.Y, box.Z)));
        }

        Rules.Unique(bound, ZoneName.Name, Tunnels.Name, Cavities.Name);
        Rules.Unique(bound, ZoneName.Name, Keep.Name);
    }
}
