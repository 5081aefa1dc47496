using System.Text.Json;

namespace Dewstone.Orders.Tests.SitePlans;

/// <summary>The rules of RFC 7946 ("The GeoJSON Format", August 2016) for collections of points and polygons, by section.</summary>
internal static class GeoJsonRules
{
    public static IReadOnlyList<string> Broken(JsonElement root)
    {
        List<string> broken = [];
        Hold(broken, root.GetProperty("type").GetString() == "FeatureCollection", "1.4 type");
        Hold(broken, !root.TryGetProperty("crs", out _), "4 crs");
        if (!root.TryGetProperty("features", out JsonElement features) || features.ValueKind != JsonValueKind.Array)
        {
            return [.. broken, "3.3 features"];
        }

        foreach (JsonElement feature in features.EnumerateArray())
        {
            Hold(broken, feature.GetProperty("type").GetString() == "Feature", "3.2 type");
            Hold(broken, feature.TryGetProperty("properties", out JsonElement properties) && properties.ValueKind is JsonValueKind.Object or JsonValueKind.Null, "3.2 properties");
            JsonElement geometry = feature.GetProperty("geometry"), coordinates = geometry.GetProperty("coordinates");
            if (geometry.GetProperty("type").GetString() == "Point")
            {
                Position(broken, coordinates);
                continue;
            }

            Hold(broken, geometry.GetProperty("type").GetString() == "Polygon", "1.4 geometry");
            foreach ((int index, JsonElement ring) in coordinates.EnumerateArray().Index())
            {
                Ring(broken, ring, outer: index == 0);
            }
        }

        return broken;
    }

    private static void Ring(List<string> broken, JsonElement ring, bool outer)
    {
        double[][] positions = [.. ring.EnumerateArray().Select(position => (double[])[position[0].GetDouble(), position[1].GetDouble()])];
        ring.EnumerateArray().ToList().ForEach(position => Position(broken, position));
        Hold(broken, positions.Length >= 4, "3.1.6 four positions");
        if (!positions[0].AsSpan().SequenceEqual(positions[^1]))
        {
            broken.Add("3.1.6 not closed");
            return;
        }

        double twice = 0.0;
        for (int i = 0; i + 1 < positions.Length; i++)
        {
            twice += (positions[i][0] - positions[0][0]) * (positions[i + 1][1] - positions[0][1]) - (positions[i + 1][0] - positions[0][0]) * (positions[i][1] - positions[0][1]);
        }

        Hold(broken, outer ? twice > 0.0 : twice < 0.0, "3.1.6 clockwise");
        Hold(broken, positions.Max(at => at[0]) - positions.Min(at => at[0]) < 180.0, "3.1.9 antimeridian");
    }

    private static void Position(List<string> broken, JsonElement position)
    {
        Hold(broken, position.GetArrayLength() is 2 or 3, "3.1.1 position");
        Hold(broken, position[0].GetDouble() is >= -180.0 and <= 180.0, "4 longitude");
        Hold(broken, position[1].GetDouble() is >= -90.0 and <= 90.0, "4 latitude");
    }

    private static void Hold(List<string> broken, bool kept, string rule)
    {
        if (!kept)
        {
            broken.Add(rule);
        }
    }
}
