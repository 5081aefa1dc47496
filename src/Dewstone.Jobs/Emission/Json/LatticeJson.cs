using System.Text.Json;
using Dewstone.Model.Lattices;

namespace Dewstone.Jobs.Emission.Json;

/// <summary>A lattice as JSON.</summary>
internal static class LatticeJson
{
    /// <summary>Writes what counts its positions into the object that is open; its lengths each format writes in its own way.</summary>
    public static void WriteCounts(Utf8JsonWriter json, Lattice lattice)
    {
        json.WriteNumber("columns", lattice.Columns);
        json.WriteNumber("rows", lattice.Rows);
        json.WriteNumber("layers", lattice.Layers);
        json.WriteNumber("first_column", lattice.FirstColumn);
        json.WriteNumber("first_row", lattice.FirstRow);
        json.WriteNumber("under_layers", lattice.UnderLayers);
        json.WriteBoolean("shifted_layers", lattice.ShiftedLayers);
    }
}
