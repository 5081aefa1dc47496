using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Reading.Job;

/// <summary>Reads a reef unit from a job core.</summary>
internal static class UnitJsonReader
{
    private static readonly (string Word, Axis Value)[] Axes = [("x", Axis.X), ("y", Axis.Y), ("z", Axis.Z)];

    public static ReefUnit Unit(JsonPlace json) => new()
    {
        Name = json.Text("name"),
        OuterBox = json.Size("outer_box_m"),
        Rounding = json.Length("rounding_m"),
        Blend = json.Length("blend_m"),
        Relief = json.Optional("relief", relief => new Relief
        {
            Amplitude = relief.Length("amplitude_m"),
            ShortestLength = relief.Length("shortest_length_m"),
            LongestLength = relief.Length("longest_length_m"),
            Faces = Faces(relief),
            Seed = relief.Seed("seed"),
        }),
        Tunnels = json.Items("tunnels", Tunnel),
        Cavities = json.Items("cavities", Cavity),
        Keep = json.Items("keep", zone => new KeepZone { Name = zone.Text("name"), Form = Form(zone) }),
        Lifting = json.Optional("lifting", Lifting),
        Require = Require(json["require"]),
        Place = Place(json["place"]),
    };

    private static Tunnel Tunnel(JsonPlace json)
    {
        Length? clear = json.OptionalLength("clear_m");
        return json.Has("path_m")
            ? new PathTunnel { Name = json.Text("name"), Path = json.Items("path_m", point => point.AsPoint()), Section = Section(json["section"]), Clear = clear }
            : new AxisTunnel
            {
                Name = json.Text("name"),
                Along = json.Word("along", Axes),
                At = json.Point("at_m"),
                Section = Section(json["section"]),
                Clear = clear,
            };
    }

    private static Section Section(JsonPlace json) => json.Has("diameter_m")
        ? new RoundSection(json.Length("diameter_m"))
        : new RectangularSection(json.Length("width_m"), json.Length("height_m"), json.Length("rounding_m"));

    private static Cavity Cavity(JsonPlace json)
    {
        Length? clear = json.OptionalLength("clear_m");
        if (!json.Has("scatter"))
        {
            return new FormedCavity { Name = json.Text("name"), Form = Form(json), Clear = clear };
        }

        JsonPlace scatter = json["scatter"];
        return new ScatteredCavities
        {
            Name = json.Text("name"),
            Clear = clear,
            Count = scatter.Whole("count"),
            LeastDiameter = scatter.Length("least_diameter_m"),
            GreatestDiameter = scatter.Length("greatest_diameter_m"),
            Gap = scatter.Length("gap_m"),
            Faces = Faces(scatter),
            Inside = scatter.Flag("inside"),
            BandX = Band(scatter, "between_x_m"),
            BandY = Band(scatter, "between_y_m"),
            BandZ = Band(scatter, "between_z_m"),
            Seed = scatter.Seed("seed"),
        };
    }

    private static SolidForm Form(JsonPlace json)
    {
        if (json.Has("sphere"))
        {
            return new SphereForm { Centre = json["sphere"].Point("centre_m"), Diameter = json["sphere"].Length("diameter_m") };
        }

        if (json.Has("ellipsoid"))
        {
            return new EllipsoidForm { Centre = json["ellipsoid"].Point("centre_m"), Size = json["ellipsoid"].Size("size_m") };
        }

        JsonPlace block = json["block"];
        return new BlockForm { Centre = block.Point("centre_m"), Size = block.Size("size_m"), Rounding = block.Length("rounding_m") };
    }

    private static Lifting Lifting(JsonPlace json)
    {
        Angle sling = new(json.Number("sling_angle_deg"));
        double dynamic = json.Number("dynamic");
        return json.Word("by", ("straps", true), ("inserts", false))
            ? new StrapLifting
            {
                Lines = json.Items("lines", line => new StrapLine(line.Word("along", Axes), line.Length("at_m"))),
                SlingAngle = sling,
                DynamicFactor = dynamic,
            }
            : new InsertLifting
            {
                Points = json.Items("points", point => point.Point("at_m")),
                Embedment = json.Length("embedment_m"),
                TestedCapacity = json.OptionalNumber("tested_capacity_n") is { } newtons ? new Force(newtons) : null,
                Test = json.Text("test"),
                SlingAngle = sling,
                DynamicFactor = dynamic,
            };
    }

    private static Requirements Require(JsonPlace json) => new()
    {
        MaxMass = Mass(json, "max_mass_kg"),
        MinWall = json.OptionalLength("min_wall_m"),
        WaterCement = json.Optional("water_cement", band => new WaterCementBand(band.Number("min"), band.Number("max"), band.Number("share"))),
        MinShapeMatch = json.OptionalNumber("min_shape_match"),
        MaxLoosePieces = json.Has("max_loose_pieces") ? json.Whole("max_loose_pieces") : null,
        MaxTrappedMix = Mass(json, "max_trapped_mix_kg"),
    };

    private static PlacementWish Place(JsonPlace json) => new()
    {
        QuarterTurns = json.Has("quarter_turns") ? json.Whole("quarter_turns") : null,
        Shift = json.Has("shift_m") ? json.Point("shift_m") : null,
        ShiftedLayers = json.Has("shifted_layers") ? json.Flag("shifted_layers") : null,
    };

    private static Mass? Mass(JsonPlace json, string name) => json.OptionalNumber(name) is { } kilograms ? new Mass(kilograms) : null;

    private static Band? Band(JsonPlace json, string name) =>
        json.Has(name) && json.Numbers(name, 2) is var ends ? new Band(new Length(ends[0]), new Length(ends[1])) : null;

    private static FaceSet Faces(JsonPlace json)
    {
        FaceSet faces = FaceSet.None;
        foreach (FaceSet face in json.Items("faces", face => face.AsText() switch
        {
            "east" => FaceSet.East,
            "west" => FaceSet.West,
            "north" => FaceSet.North,
            "south" => FaceSet.South,
            "top" => FaceSet.Top,
            "bottom" => FaceSet.Bottom,
            _ => throw new InvalidDataException($"{face.Path} is not a face"),
        }))
        {
            faces |= face;
        }

        return faces;
    }
}
