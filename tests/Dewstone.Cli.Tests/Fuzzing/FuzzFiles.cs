using Dewstone.Tests;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>The sound files: as many keys as the kinds have, on a bin of a few pitches. Invented figures.</summary>
internal static class FuzzFiles
{
    private const string Unit = """
        kind: unit
        version: 1
        name: Fuzz step
        mix: fuzz.mix.yaml
        printer: fuzz.printer.yaml
        site: fuzz.site.yaml
        box: [300 mm, 200 mm, 150 mm]
        rounding: 20 mm
        blend: 10 mm
        relief: {amplitude: 6 mm, length: [80 mm, 150 mm], faces: [sides, top], seed: 7}
        tunnels:
          - name: drain
            along: y
            at: {x: 150 mm, z: 75 mm}
            section: {diameter: 50 mm}
            clear: 5 mm
          - name: bend
            path: [[60 mm, 0 mm, 80 mm], [70 mm, 40 mm, 90 mm], [60 mm, 80 mm, 160 mm]]
            section: {diameter: 30 mm}
        cavities:
          - name: niches
            scatter: {count: 2, diameter: [30 mm, 35 mm], gap: 10 mm, faces: [sides], between: {z: [60 mm, 140 mm]}, seed: 11}
          - name: pocket
            sphere: {centre: [240 mm, 150 mm, 140 mm], diameter: 50 mm}
          - name: notch
            block: {centre: [290 mm, 20 mm, 130 mm], size: [40 mm, 40 mm, 50 mm], rounding: 4 mm}
          - name: dent
            ellipsoid: {centre: [10 mm, 190 mm, 130 mm], size: [40 mm, 50 mm, 60 mm]}
        keep:
          - name: foot
            block: {centre: [150 mm, 100 mm, 15 mm], size: [300 mm, 200 mm, 30 mm]}
        lifting: {by: straps, lines: [{along: y, x: 90 mm}, {along: y, x: 220 mm}], sling_angle: 60 deg, dynamic: 1.2}
        require:
          mass: {max: 40 kg}
          wall: {min: 10 mm}
          water_cement: {min: 0.05, max: 2.00, share: 10 %}
          shape_match: {min: 0.10}
          loose_pieces: {max: 50}
          trapped_mix: {max: 20 kg}
        place: {turn: 180 deg, shift: [0 mm, 0 mm, 0 mm], layers: shifted}

        """;

    // No walls, no sling: a job that is cheap to judge again.
    private const string Plain = """
        kind: unit
        version: 1
        name: Plain step
        mix: plain.mix.yaml
        printer: fuzz.printer.yaml
        box: [100 mm, 75 mm, 75 mm]
        rounding: 10 mm
        require:
          mass: {max: 40 kg}
          wall: {min: 5 mm}

        """;

    private const string Printer = """
        kind: printer
        version: 1
        name: Fuzz printer
        bin: {size: [0.5 m, 0.4 m], height: 0.3 m}
        grid: {pitch: 25 mm, layer: 25 mm, origin: [12.5 mm, 12.5 mm], under: 1 layer}
        head: {columns: 20, rows: 8, layer_shift: half pitch}
        needle: {tip_depth: 12.5 mm, flow: 4 mL/s, least: 0.3 mL, most: 8 mL, step: 0.01 mL, repeatability: 2 %, drift: 5 %}
        supply: {flow: 0.3 L/s, tank: 50 L}
        timing: {setup: 10 min, spreading: 50 s, move: 6 s, plunge: 4 s, hold: 1 s, withdraw: 4 s}
        flush: {time: 2 s, every: 2 layers}
        loose_mix: {lost_in_bin: 1 kg, reusable: 92 %}
        lift: {max_mass: 2500 kg}
        needles: fuzz.needles.csv

        """;

    private const string Site = """
        kind: site
        version: 1
        name: Fuzz shoal
        water: {depth: 6 m, datum: chart, low: -0.3 m, high: 1.4 m, salinity: 30, temperature: 12 degC}
        wave: {significant_height: 0.2 m, peak_period: 3 s, direction: 270 deg, return_period: 50 yr, design_height: H1/10}
        current: {speed: 0.1 m/s, direction: 90 deg}
        seabed: {soil: sand, friction: 0.55, friction_angle: 30 deg, effective_weight: 8.5 kN/m3, grain: 0.3 mm, slope: 0 deg}
        forces: {drag: 1.05, inertia: 1.67, lift: 0.8}
        safety: {sliding: 1.3, overturning: 1.5, bearing: 2.5}
        clearance: 1.83 m
        animals: {sheltered: {body_depth: 30 mm}, predator: {body_depth: 90 mm}}

        """;

    private const string Tonight = """
        kind: tonight
        version: 1
        mix_batch: WB-2027-09
        loose_density: 1690 kg/m3
        bed_temperature: 14 degC
        liquid_temperature: 12 degC
        curing_temperature: 12 degC

        """;

    private const string Order = """
        kind: order
        version: 1
        name: Fuzz order
        start: 2027-03-01
        due: 2027-06-30
        units:
          - {file: plain.unit.yaml, quantity: 2, vary: {seed: 1, redraw: 2}, mark: FA}
          - {file: fuzz.unit.yaml, quantity: 1, mark: FB}
        printers: [fuzz.printer.yaml]
        shifts: {days: [mon, tue, wed, thu, fri], from: "18:00", to: "06:00"}
        crew: {hours: 8 h, dig_out: 45 min}
        bins: {count: 5, change: 10 min, curing_places: 5, handling: 500 kg, set_before_dig: 36 h}
        curing: {temperature: 10 degC}
        gap: 50 mm
        mix_stock: {on_hand: 3 t, silo: 4 t, deliveries: [{on: 2027-03-08, mass: 1 t}]}
        transport: {payload: 20 t, deck: 40 places, stack: 1}
        site_plan: {anchor: [41.5 N, 30.2 W], heading: 40 deg, spacing: 3 m, rows: 1}

        """;

    /// <summary>Writes an order of three tiny units.</summary>
    public static void WriteTinyOrder(FuzzYard yard)
    {
        using TinyOrder order = new(3);
        foreach (string file in Directory.GetFiles(order.Folder))
        {
            yard.Write(Path.GetFileName(file), File.ReadAllText(file));
        }

        yard.Write("tiny.order.yaml", File.ReadAllText(order.File) + """
            printers: [small.printer.yaml]
            bins: {count: 5, change: 10 min, curing_places: 5, handling: 500 kg, set_before_dig: 36 h}
            transport: {payload: 20 t, deck: 40 places, stack: 1}
            site_plan: {anchor: [41.5 N, 30.2 W], heading: 40 deg, spacing: 3 m, rows: 1}

            """);
    }

    /// <summary>Writes all descriptions and tables of measurements.</summary>
    public static void Write(FuzzYard yard)
    {
        yard.Write("fuzz.unit.yaml", Unit);
        yard.Write("plain.unit.yaml", Plain);
        yard.Write("fuzz.mix.yaml", TinyOrder.Mix + "strength: {law: gel_space_with_air, class: N}\nuncertainty: {diffusivity: 20 %, threshold: 5 %, loose_density: 2 %}\nreuse_limit: 5\n");
        yard.Write("plain.mix.yaml", TinyOrder.Mix);
        yard.Write("fuzz.printer.yaml", Printer);
        yard.Write("fuzz.site.yaml", Site);
        yard.Write("fuzz.tonight.yaml", Tonight);
        yard.Write("fuzz.order.yaml", Order);
        yard.Write("fuzz.needles.csv", "column,row,board,channel,state,gain,offset_ml,flow_ml_s,repeatability_percent\n" + string.Concat(
            Enumerable.Range(0, 160).Select(i => $"{i % 20 + 1},{i / 20 + 1},B{i / 20 + 1},{i % 20 + 1},ok,1,0,4,2\n")));
        foreach (string table in new[] { "absorption", "balls", "pairs", "density", "needles" })
        {
            string[] lines = File.ReadAllLines(Repository.Path("examples", "wrackline-bay", "calibration", table + ".csv"));
            yard.Write($"data-{table}.csv", string.Join('\n', lines.Take(table == "needles" ? 25 : lines.Length)) + "\n");
        }
    }
}
