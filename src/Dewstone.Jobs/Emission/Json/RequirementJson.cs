using System.Text.Json;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>A requirement in the one form it has everywhere.</summary>
internal static class RequirementJson
{
    /// <summary>Writes the members of a requirement into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, RequirementResult requirement, FilePlaces places)
    {
        json.WriteString("id", requirement.Id);
        json.WriteString("feature", requirement.Feature);
        json.WriteString("file", requirement.Location is { } place ? places.NameOf(place.File) : "");
        json.WriteNumber("line", requirement.Location?.Line ?? 0);
        json.WriteString("quantity", requirement.Quantity);
        json.WriteString("op", requirement.Op);
        json.Figure("limit", requirement.Limit);
        json.Figure("value", requirement.Value);
        json.Figure("margin", requirement.Margin);
        json.WriteString("unit", requirement.Unit);
        json.WriteBoolean("met", requirement.Met);
        json.WriteBoolean("accepted", requirement.AcceptedBecause is not null);
    }
}
