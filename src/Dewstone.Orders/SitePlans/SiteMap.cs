using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;

namespace Dewstone.Orders.SitePlans;

/// <summary>Writes <c>site-plan.geojson</c> (RFC 7946): the footprint of each unit, and the anchor.</summary>
public static class SiteMap
{
    /// <summary>Path in the order's folder.</summary>
    public const string Path = "site-plan.geojson";

    /// <summary>The map.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="standing">Where the units stand.</param>
    /// <returns>The file: a FeatureCollection, longitude before latitude, outer rings counter-clockwise.</returns>
    public static EmittedFile Emit(SitePlan plan, IReadOnlyList<StandingUnit> standing)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(standing);
        return new EmittedFile(Path, CanonicalJson.Indented(json =>
        {
            json.WriteString("type", "FeatureCollection");
            json.WriteStartArray("features");
            Feature(json, "Point", () => Position(json, "coordinates", new GeographicPosition(plan.AnchorLatitudeDegrees, plan.AnchorLongitudeDegrees)), () => json.WriteString("mark", "anchor"));
            foreach (StandingUnit at in standing)
            {
                Feature(json, "Polygon", () => Ring(json, at.Corners), () => Properties(json, at));
            }

            json.WriteEndArray();
        }));
    }

    private static void Feature(Utf8JsonWriter json, string type, Action coordinates, Action properties)
    {
        json.WriteStartObject();
        json.WriteString("type", "Feature");
        json.Object("geometry", () =>
        {
            json.WriteString("type", type);
            coordinates();
        });
        json.Object("properties", properties);
        json.WriteEndObject();
    }

    private static void Ring(Utf8JsonWriter json, IReadOnlyList<GeographicPosition> corners)
    {
        json.WriteStartArray("coordinates");
        json.WriteStartArray();
        foreach (GeographicPosition corner in corners.Append(corners[0]))
        {
            json.WriteStartArray();
            json.WriteNumberValue(corner.LongitudeDegrees);
            json.WriteNumberValue(corner.LatitudeDegrees);
            json.WriteEndArray();
        }

        json.WriteEndArray();
        json.WriteEndArray();
    }

    private static void Position(Utf8JsonWriter json, string name, GeographicPosition position) => json.Numbers(name, position.LongitudeDegrees, position.LatitudeDegrees);

    private static void Properties(Utf8JsonWriter json, StandingUnit at)
    {
        json.WriteString("mark", at.Unit.Mark);
        json.WriteString("unit", at.Unit.Name);
        json.WriteNumber("row", at.Row);
        json.WriteNumber("place", at.Place);
        json.Figure("heading_deg", at.HeadingDegrees);
        json.Figure("lift_kg", at.Unit.LiftKilograms);
        json.Figure("submerged_kg", at.Unit.SubmergedKilograms);
        json.Figure("height_m", at.Unit.Size.Z);
        json.Figure("water_over_m", SiteCheck.WaterOver(at));
    }
}
