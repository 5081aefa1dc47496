using System.Text.Json;
using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>A placement as JSON in SI.</summary>
internal static class PlacementJson
{
    /// <summary>Writes the members of a placement into the object that is open.</summary>
    public static void Write(Utf8JsonWriter json, UnitPlacement placement)
    {
        json.WriteNumber("quarter_turns", placement.QuarterTurns);
        json.Point("corner_m", placement.Corner);
        json.Size("unit_box_m", placement.UnitBox);
        json.WriteBoolean("shifted_layers", placement.ShiftedLayers);
    }
}
