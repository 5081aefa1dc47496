using System.Text;

namespace Dewstone.Cli.Tests;

/// <summary>A folder with one unit whose description plants five faults of the predicted solid, each in a corner of its own. Invented figures.</summary>
internal static class PlantedYard
{
    /// <summary>Pitch of its printer, millimetres.</summary>
    public const double PitchMillimetres = 50.0;

    private const string Unit = """
        kind: unit
        version: 1
        name: Planted faults
        mix: small.mix.yaml
        printer: planted.printer.yaml
        box: [1000 mm, 600 mm, 400 mm]
        rounding: 20 mm
        tunnels:
          - name: pinhole            # closes: hardly wider than a voxel, between two rows of needles
            along: y
            at: {x: 450 mm, z: 75 mm}
            section: {diameter: 52 mm}
            clear: 40 mm
        cavities:
          - name: hall
            block: {centre: [225 mm, 300 mm, 275 mm], size: [300 mm, 400 mm, 250 mm]}
          - name: walled in          # opens nowhere
            sphere: {centre: [575 mm, 425 mm, 200 mm], diameter: 160 mm}
          - name: west chamber       # and 30 mm beside it the east chamber: a wall too thin
            block: {centre: [750 mm, 300 mm, 275 mm], size: [100 mm, 300 mm, 250 mm]}
          - name: east chamber
            block: {centre: [880 mm, 300 mm, 275 mm], size: [100 mm, 300 mm, 250 mm]}
        keep:
          - name: lump               # floats in the hall
            block: {centre: [225 mm, 300 mm, 300 mm], size: [100 mm, 100 mm, 100 mm]}
          - name: corner post        # stays dry: its four needles are blocked
            block: {centre: [50 mm, 50 mm, 200 mm], size: [100 mm, 100 mm, 400 mm]}
        place: {turn: 0 deg, shift: [0 mm, 0 mm, 0 mm], layers: straight}
        require:
          wall: {min: 60 mm}
          loose_pieces: {max: 0}
          trapped_mix: {max: 1 kg}
        """;

    private const string Printer = """
        kind: printer
        version: 1
        name: Planted printer
        bin: {size: [1.2 m, 0.8 m], height: 0.6 m}
        grid: {pitch: 50 mm, layer: 50 mm, origin: [25 mm, 25 mm], under: 1 layer}
        head: {columns: 24, rows: 16, layer_shift: half pitch}
        needle: {tip_depth: 25 mm, flow: 4 mL/s, least: 2 mL, most: 44 mL, step: 0.1 mL}
        supply: {flow: 2.5 L/s, tank: 400 L}
        timing: {setup: 20 min, spreading: 50 s, move: 6 s, plunge: 4 s, hold: 1 s, withdraw: 4 s}
        flush: {time: 2 s, every: 6 layers}
        loose_mix: {lost_in_bin: 15 kg, reusable: 92 %}
        needles: planted.needles.csv
        """;

    /// <summary>Writes unit, printer and needles into a yard that has the mix.</summary>
    /// <param name="yard">The folder.</param>
    /// <returns>The unit's file.</returns>
    public static string Write(SmallYard yard)
    {
        yard.Write("planted.printer.yaml", Printer);
        yard.Write("planted.needles.csv", Needles());
        return yard.Write("planted.unit.yaml", Unit);
    }

    // The unit stands centred, its corner at 100, 100 mm: needles 3 and 4 of both rows and columns water its first 100 mm.
    private static string Needles()
    {
        StringBuilder table = new("column,row,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent\n");
        for (int row = 1; row <= 16; row++)
        {
            for (int column = 1; column <= 24; column++)
            {
                string state = column is 3 or 4 && row is 3 or 4 ? "blocked" : "ok";
                table.Append(null, $"{column},{row},B{row:00},{column},{state},1,0,4,2\n");
            }
        }

        return table.ToString();
    }
}
