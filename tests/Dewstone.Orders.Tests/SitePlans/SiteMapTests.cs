using System.Text.Json;
using Dewstone.Orders.SitePlans;

namespace Dewstone.Orders.Tests.SitePlans;

public sealed class SiteMapTests
{
    [Fact]
    public void Map_keeps_the_rules_of_the_standard()
    {
        IReadOnlyList<StandingUnit> standing = SiteLayout.Arrange(SeaSamples.Plan(), SeaSamples.Units(10));
        using JsonDocument map = JsonDocument.Parse(SiteMap.Emit(SeaSamples.Plan(), standing).Bytes);

        Assert.Empty(GeoJsonRules.Broken(map.RootElement));
        JsonElement[] features = [.. map.RootElement.GetProperty("features").EnumerateArray()];
        Assert.Equal(["anchor", .. standing.Select(at => at.Unit.Mark)], features.Select(feature => feature.GetProperty("properties").GetProperty("mark").GetString()));
        Assert.Equal(40.0, features[1].GetProperty("properties").GetProperty("heading_deg").GetDouble());
        Assert.Equal(501.0, features[1].GetProperty("properties").GetProperty("lift_kg").GetDouble());
        JsonElement anchor = features[0].GetProperty("geometry").GetProperty("coordinates");
        Assert.Equal((-30.2, 41.5), (anchor[0].GetDouble(), anchor[1].GetDouble()));
    }

    // What the rules are worth: each breach is told.
    [Theory]
    [InlineData("""{"type":"FeatureCollection","features":[{"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[[0,0],[0,1],[1,1],[0,0]]]}}]}""", "3.1.6 clockwise")]
    [InlineData("""{"type":"FeatureCollection","features":[{"type":"Feature","properties":{},"geometry":{"type":"Polygon","coordinates":[[[0,0],[1,0],[1,1],[0,1]]]}}]}""", "3.1.6 not closed")]
    [InlineData("""{"type":"FeatureCollection","features":[{"type":"Feature","properties":{},"geometry":{"type":"Point","coordinates":[41.5,-130.2]}}]}""", "4 latitude")]
    [InlineData("""{"type":"FeatureCollection","features":[{"type":"Feature","geometry":{"type":"Point","coordinates":[0,0]}}]}""", "3.2 properties")]
    [InlineData("""{"type":"FeatureCollection"}""", "3.3 features")]
    public void Breach_of_a_rule_is_told(string map, string broken)
    {
        using JsonDocument document = JsonDocument.Parse(map);

        Assert.Equal([broken], GeoJsonRules.Broken(document.RootElement));
    }
}
