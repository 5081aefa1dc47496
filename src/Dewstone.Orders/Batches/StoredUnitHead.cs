using System.Buffers.Binary;
using System.Text.Json;
using Dewstone.Jobs.Bins;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;

namespace Dewstone.Orders.Batches;

/// <summary>The JSON head of an entry of the store: all of a solved unit but its doses, its cells and what this run knows itself.</summary>
internal static class StoredUnitHead
{
    /// <summary>Writes its members.</summary>
    public static void Write(Utf8JsonWriter json, StoredUnit unit)
    {
        json.WriteBoolean("input_at_fault", unit.InputAtFault);
        FindingRecord.Write(json, "findings", unit.Findings, file => file);
        FindingRecord.Write(json, "requirements", unit.Requirements, file => file, exact: true);
        json.ObjectOrNull("solved", unit.Solved, solved =>
        {
            json.WriteBoolean("covered", solved.Covered);
            json.Number("dig_out_days", solved.DigOutDays);
            json.Number("lift_days", solved.LiftDays);
            json.Number("mean_pa", solved.MeanPascals);
            json.WriteNumber("quarter_turns", solved.Placement.QuarterTurns);
            json.Point("corner_m", solved.Placement.Corner);
            json.Size("box_m", solved.Placement.UnitBox);
            json.Object("lattice", () => Write(json, solved.Lattice));
            json.WriteNumber("cells_per_pitch", solved.Cells.CellsPerPitch);
            json.Object("solid", () => StoredFigures.Write(json, solved.Solid));
            json.Object("estimate", () => StoredFigures.Write(json, solved.Estimate));
        });
    }

    /// <summary>Reads them back.</summary>
    /// <param name="head">The head.</param>
    /// <param name="arrays">Doses, then cells.</param>
    /// <param name="unit">The unit as this run describes it.</param>
    public static StoredUnit Read(JsonElement head, ReadOnlyMemory<byte> arrays, ReefUnit unit)
    {
        StoredUnit entry = new(
            null, FindingRecord.ReadRequirements(head.GetProperty("requirements")), FindingRecord.Read(head.GetProperty("findings")),
            head.GetProperty("input_at_fault").GetBoolean());
        JsonElement solved = head.GetProperty("solved");
        return solved.ValueKind == JsonValueKind.Null ? entry : entry with { Solved = Read(solved, arrays, unit, entry) };
    }

    private static SolvedUnit Read(JsonElement head, ReadOnlyMemory<byte> arrays, ReefUnit unit, StoredUnit entry)
    {
        Lattice lattice = ReadLattice(head.GetProperty("lattice"));
        CellGrid cells = CellGrid.Over(lattice, head.GetProperty("cells_per_pitch").GetInt32());
        int[] doses = new int[lattice.Count];
        for (int i = 0; i < doses.Length; i++)
        {
            doses[i] = BinaryPrimitives.ReadInt32LittleEndian(arrays.Span[(i * sizeof(int))..]);
        }

        double[] corner = Numbers(head, "corner_m"), box = Numbers(head, "box_m");
        return new SolvedUnit
        {
            Unit = unit,
            Placement = new UnitPlacement
            {
                QuarterTurns = head.GetProperty("quarter_turns").GetInt32(),
                Corner = new Point3(corner[0], corner[1], corner[2]),
                UnitBox = new Size3(box[0], box[1], box[2]),
                ShiftedLayers = lattice.ShiftedLayers,
            },
            Lattice = lattice,
            Cells = cells,
            CentiMillilitres = doses,
            Hardened = new CellBits(arrays[(doses.Length * sizeof(int))..].ToArray(), cells.Count),
            Covered = head.GetProperty("covered").GetBoolean(),
            Solid = StoredFigures.ReadSolid(head.GetProperty("solid")),
            Estimate = StoredFigures.ReadEstimate(head.GetProperty("estimate")),
            DigOutDays = StoredFigures.Number(head, "dig_out_days"),
            LiftDays = StoredFigures.Number(head, "lift_days"),
            MeanPascals = StoredFigures.Number(head, "mean_pa"),
            Requirements = entry.Requirements,
            Findings = entry.Findings,
            Design = JobCoreEmitter.DesignOf(unit),
        };
    }

    private static void Write(Utf8JsonWriter json, Lattice lattice)
    {
        LatticeJson.WriteCounts(json, lattice);
        json.Numbers(
            "metres", lattice.PitchMetres, lattice.LayerMetres, lattice.OriginXMetres, lattice.OriginYMetres, lattice.TipDepthMetres, lattice.BinXMetres,
            lattice.BinYMetres);
    }

    private static Lattice ReadLattice(JsonElement item)
    {
        double[] metres = Numbers(item, "metres");
        return new Lattice
        {
            Columns = item.GetProperty("columns").GetInt32(),
            Rows = item.GetProperty("rows").GetInt32(),
            Layers = item.GetProperty("layers").GetInt32(),
            FirstColumn = item.GetProperty("first_column").GetInt32(),
            FirstRow = item.GetProperty("first_row").GetInt32(),
            UnderLayers = item.GetProperty("under_layers").GetInt32(),
            ShiftedLayers = item.GetProperty("shifted_layers").GetBoolean(),
            PitchMetres = metres[0],
            LayerMetres = metres[1],
            OriginXMetres = metres[2],
            OriginYMetres = metres[3],
            TipDepthMetres = metres[4],
            BinXMetres = metres[5],
            BinYMetres = metres[6],
        };
    }

    private static double[] Numbers(JsonElement item, string name) => [.. item.GetProperty(name).EnumerateArray().Select(value => value.GetDouble())];
}
