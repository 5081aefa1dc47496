using System.Text.Json;
using Dewstone.Model.Description;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>A reef unit as JSON in SI.</summary>
internal static class UnitJson
{
    /// <summary>Writes the members of a unit into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, ReefUnit unit)
    {
        json.WriteString("name", unit.Name);
        json.Size("outer_box_m", unit.OuterBox);
        json.Number("rounding_m", unit.Rounding.Metres);
        json.Number("blend_m", unit.Blend.Metres);
        json.ObjectOrNull("relief", unit.Relief, relief =>
        {
            json.Number("amplitude_m", relief.Amplitude.Metres);
            json.Number("shortest_length_m", relief.ShortestLength.Metres);
            json.Number("longest_length_m", relief.LongestLength.Metres);
            Faces(json, relief.Faces);
            json.WriteNumber("seed", relief.Seed);
        });
        json.Objects("tunnels", unit.Tunnels, tunnel => Write(json, tunnel));
        json.Objects("cavities", unit.Cavities, cavity => Write(json, cavity));
        json.Objects("keep", unit.Keep, zone =>
        {
            json.WriteString("name", zone.Name);
            Form(json, zone.Form);
        });
        json.ObjectOrNull("lifting", unit.Lifting, lifting => Write(json, lifting));
        json.Object("require", () => Write(json, unit.Require));
        json.Object("place", () => Write(json, unit.Place));
    }

    private static void Write(Utf8JsonWriter json, Tunnel tunnel)
    {
        json.WriteString("name", tunnel.Name);
        switch (tunnel)
        {
            case AxisTunnel straight:
                json.WriteString("along", Letter(straight.Along));
                json.Point("at_m", straight.At);
                break;
            case PathTunnel path:
                json.WriteStartArray("path_m");
                foreach (Model.Quantities.Point3 point in path.Path)
                {
                    json.WriteStartArray();
                    json.WriteNumberValue(point.X);
                    json.WriteNumberValue(point.Y);
                    json.WriteNumberValue(point.Z);
                    json.WriteEndArray();
                }

                json.WriteEndArray();
                break;
            default:
                throw Unknown(tunnel);
        }

        json.Object("section", () =>
        {
            switch (tunnel.Section)
            {
                case RectangularSection box:
                    json.Number("width_m", box.Width.Metres);
                    json.Number("height_m", box.Height.Metres);
                    json.Number("rounding_m", box.Rounding.Metres);
                    break;
                case RoundSection round:
                    json.Number("diameter_m", round.Diameter.Metres);
                    break;
                default:
                    throw Unknown(tunnel.Section);
            }
        });
        json.Number("clear_m", tunnel.Clear?.Metres);
    }

    private static void Write(Utf8JsonWriter json, Cavity cavity)
    {
        json.WriteString("name", cavity.Name);
        switch (cavity)
        {
            case FormedCavity formed:
                Form(json, formed.Form);
                break;
            case ScatteredCavities scatter:
                json.Object("scatter", () => Write(json, scatter));
                break;
            default:
                throw Unknown(cavity);
        }

        json.Number("clear_m", cavity.Clear?.Metres);
    }

    private static void Write(Utf8JsonWriter json, ScatteredCavities scatter)
    {
        json.WriteNumber("count", scatter.Count);
        json.Number("least_diameter_m", scatter.LeastDiameter.Metres);
        json.Number("greatest_diameter_m", scatter.GreatestDiameter.Metres);
        json.Number("gap_m", scatter.Gap.Metres);
        Faces(json, scatter.Faces);
        json.WriteBoolean("inside", scatter.Inside);
        Band(json, "between_x_m", scatter.BandX);
        Band(json, "between_y_m", scatter.BandY);
        Band(json, "between_z_m", scatter.BandZ);
        json.WriteNumber("seed", scatter.Seed);
    }

    private static void Form(Utf8JsonWriter json, SolidForm form)
    {
        string name = form switch
        {
            SphereForm => "sphere",
            EllipsoidForm => "ellipsoid",
            BlockForm => "block",
            _ => throw Unknown(form),
        };
        json.Object(name, () =>
        {
            json.Point("centre_m", form.Centre);
            switch (form)
            {
                case SphereForm sphere:
                    json.Number("diameter_m", sphere.Diameter.Metres);
                    break;
                case EllipsoidForm ellipsoid:
                    json.Size("size_m", ellipsoid.Size);
                    break;
                case BlockForm block:
                    json.Size("size_m", block.Size);
                    json.Number("rounding_m", block.Rounding.Metres);
                    break;
            }
        });
    }

    private static void Write(Utf8JsonWriter json, Lifting lifting)
    {
        switch (lifting)
        {
            case StrapLifting straps:
                json.WriteString("by", "straps");
                json.Objects("lines", straps.Lines, line =>
                {
                    json.WriteString("along", Letter(line.Along));
                    json.Number("at_m", line.At.Metres);
                });
                break;
            case InsertLifting inserts:
                json.WriteString("by", "inserts");
                json.Objects("points", inserts.Points, point => json.Point("at_m", point));
                json.Number("embedment_m", inserts.Embedment.Metres);
                json.Number("tested_capacity_n", inserts.TestedCapacity?.Newtons);
                json.WriteString("test", inserts.Test);
                break;
            default:
                throw Unknown(lifting);
        }

        json.Number("sling_angle_deg", lifting.SlingAngle.Degrees);
        json.Number("dynamic", lifting.DynamicFactor);
    }

    private static void Write(Utf8JsonWriter json, Requirements require)
    {
        json.Number("max_mass_kg", require.MaxMass?.Kilograms);
        json.Number("min_wall_m", require.MinWall?.Metres);
        json.ObjectOrNull("water_cement", require.WaterCement, band =>
        {
            json.Number("min", band.Min);
            json.Number("max", band.Max);
            json.Number("share", band.Share);
        });
        json.Number("min_shape_match", require.MinShapeMatch);
        json.Number("max_loose_pieces", require.MaxLoosePieces);
        json.Number("max_trapped_mix_kg", require.MaxTrappedMix?.Kilograms);
    }

    private static void Write(Utf8JsonWriter json, PlacementWish place)
    {
        json.Number("quarter_turns", place.QuarterTurns);
        if (place.Shift is { } shift)
        {
            json.Point("shift_m", shift);
        }
        else
        {
            json.WriteNull("shift_m");
        }

        if (place.ShiftedLayers is { } shifted)
        {
            json.WriteBoolean("shifted_layers", shifted);
        }
        else
        {
            json.WriteNull("shifted_layers");
        }
    }

    private static void Band(Utf8JsonWriter json, string name, Band? band)
    {
        if (band is null)
        {
            json.WriteNull(name);
            return;
        }

        json.Numbers(name, band.From.Metres, band.To.Metres);
    }

    private static void Faces(Utf8JsonWriter json, FaceSet faces) =>
        json.Strings("faces", new[]
        {
            (FaceSet.East, "east"), (FaceSet.West, "west"), (FaceSet.North, "north"),
            (FaceSet.South, "south"), (FaceSet.Top, "top"), (FaceSet.Bottom, "bottom"),
        }.Where(face => faces.HasFlag(face.Item1)).Select(face => face.Item2));

    private static string Letter(Axis axis) => axis switch { Axis.X => "x", Axis.Y => "y", _ => "z" };

    private static NotSupportedException Unknown(object form) => new($"The job core has no form for {form.GetType().Name}.");
}
