using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Reading.Binding;

namespace Dewstone.Reading.Schema;

/// <summary>Key table of a cavity: one body, or many balls scattered by a seed.</summary>
internal static class CavityTable
{
    private static readonly FormOf<Band> BandForm = Forms.Band(Forms.Coordinate, "[500 mm, 900 mm]");
    private static readonly KeyOf<Band> BandX = Key.May("x", BandForm, "range of their centres along x");
    private static readonly KeyOf<Band> BandY = Key.May("y", BandForm, "range of their centres along y");
    private static readonly KeyOf<Band> BandZ = Key.May("z", BandForm, "range of their centres along z");

    private static readonly TableForm<Bands> BandTable = new("a band", [BandX, BandY, BandZ],
        bound => new Bands(bound.MaybeOf(BandX), bound.MaybeOf(BandY), bound.MaybeOf(BandZ)),
        bound =>
        {
            Rules.InOrder(bound, BandX);
            Rules.InOrder(bound, BandY);
            Rules.InOrder(bound, BandZ);
        });

    private static readonly KeyOf<int> Count = Key.Must("count", Forms.Whole(1, 10_000, "18"), "how many hollows");
    private static readonly KeyOf<Band> Diameter =
        Key.Must("diameter", Forms.Band(Forms.Extent, "[110 mm, 160 mm]"), "least and greatest diameter");

    private static readonly KeyOf<Length> Gap =
        Key.Must("gap", Forms.Length("0 mm", "20 m", "100 mm"),
            "least distance between the surfaces of two hollows, and to tunnels and other cavities");

    private static readonly KeyOf<FaceSet> Faces = Key.Must("faces", FaceForms.Faces, "faces they open to");
    private static readonly KeyOf<bool> Inside =
        Key.Must("inside", Forms.Flag, "true for hollows inside that break no face and so keep their loose mix");
    private static readonly KeyOf<Bands> Between = Key.May("between", BandTable, "bands their centres keep to", "{z: [500 mm, 900 mm]}");
    private static readonly KeyOf<ulong> Seed = Key.Must("seed", Forms.Seed, "seed of the random numbers", "11");

    private static readonly TableForm<Scatter> ScatterTable = new("a scatter", [Count, Diameter, Gap, Faces, Inside, Between, Seed],
        bound => new Scatter(bound.Get(Count), bound.Get(Diameter), bound.Get(Gap), bound.Stands(Faces) ? bound.Get(Faces) : FaceSet.None,
            bound.Stands(Inside) && bound.Get(Inside), bound.MaybeOf(Between) ?? new Bands(null, null, null), bound.Get(Seed)),
        Check,
        [Way.By(Faces), Way.By(Inside)]);

    private static readonly KeyOf<string> Name = Key.Must("name", Forms.Name, "name for people, unique among the openings", "niches");
    private static readonly KeyOf<Length> Clear = Key.May("clear", Forms.Extent, "least ball that must still get in once set", "100 mm");

    private static readonly KeyOf<Scatter> Scattered = Key.Must("scatter", ScatterTable, "many balls scattered by a seed",
        "{count: 18, diameter: [110 mm, 160 mm], gap: 100 mm, faces: [sides, top], seed: 11}");

    /// <summary>A cavity.</summary>
    public static readonly TableForm<Cavity> Table = new("a cavity",
        [Name, Scattered, ShapeTables.Sphere, ShapeTables.Ellipsoid, ShapeTables.Block, Clear], Make,
        ways: [Way.By(Scattered), Way.By(ShapeTables.Sphere), Way.By(ShapeTables.Ellipsoid), Way.By(ShapeTables.Block)]);

    private static Cavity Make(Bound bound)
    {
        string name = bound.Get(Name);
        Length? clear = bound.Maybe(Clear);
        if (ShapeTables.Find(bound) is { } form)
        {
            return new FormedCavity { Name = name, Clear = clear, Form = form };
        }

        Scatter scatter = bound.Get(Scattered);
        return new ScatteredCavities
        {
            Name = name,
            Clear = clear,
            Count = scatter.Count,
            LeastDiameter = scatter.Diameter.From,
            GreatestDiameter = scatter.Diameter.To,
            Gap = scatter.Gap,
            Faces = scatter.Faces,
            Inside = scatter.Inside,
            BandX = scatter.Between.X,
            BandY = scatter.Between.Y,
            BandZ = scatter.Between.Z,
            Seed = scatter.Seed,
        };
    }

    private static void Check(Bound bound)
    {
        Rules.InOrder(bound, Diameter);
        if (!bound.Stands(Inside) || bound.Stands(Faces) || !bound.Has(Inside, out bool inside))
        {
            return;
        }

        if (inside)
        {
            bound.Report(DescriptionFindings.KeepsLooseMix, Inside.Name, "hollows inside keep their loose mix, which cannot be dug out",
                "let them open to faces with `faces:`, or accept the mass");
        }
        else
        {
            bound.Report(DescriptionFindings.NoWayChosen, Inside.Name, "hollows that are not inside need faces to open to",
                $"write `faces: {Faces.Example}` instead");
        }
    }

    /// <summary>Bands along the axes; null for the whole box.</summary>
    /// <param name="X">Along x.</param>
    /// <param name="Y">Along y.</param>
    /// <param name="Z">Along z.</param>
    private sealed record Bands(Band? X, Band? Y, Band? Z);

    /// <summary>A scatter as written.</summary>
    private sealed record Scatter(int Count, Band Diameter, Length Gap, FaceSet Faces, bool Inside, Bands Between, ulong Seed);
}
