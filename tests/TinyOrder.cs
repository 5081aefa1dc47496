using System.Globalization;
using System.Security.Cryptography;
using System.Text;

namespace Dewstone.Tests;

/// <summary>
/// An order of units two or three pitches long, two to a bin, with a plan laid by hand, so that a whole order compiles in seconds. Invented figures.
/// </summary>
internal sealed class TinyOrder : IDisposable
{
    private const string Unit = """
        kind: unit
        version: 1
        name: Tiny step
        mix: small.mix.yaml
        printer: small.printer.yaml
        box: [150 mm, 100 mm, 100 mm]
        relief: {amplitude: 12 mm, length: [100 mm, 200 mm], faces: [sides, top], seed: 3}
        require:
          shape_match: {min: 0.20}

        """;

    /// <summary>The mix of all small orders and yards; values invented.</summary>
    public const string Mix = """
        kind: mix
        version: 1
        name: Small mix
        from: assumed
        currency: EUR
        solids:
          - {name: cement, share: 25 %, density: 3150 kg/m3, binder: true, co2: 0.86 kg/kg, price: 0.16 /kg}
          - {name: sand, share: 75 %, density: 2650 kg/m3, co2: 0.005 kg/kg, price: 0.03 /kg}
        loose_density: 1700 kg/m3
        liquid: {density: 1000 kg/m3, price: 0.003 /L}
        wetting: {law: power, diffusivity: 3.2e-6 m2/s, exponent: 4, residual: 0}
        hardening: {water_cement: 0.22, window: 600 s, at: 20 degC, activation: 5000 K}

        """;

    private const string Printer = """
        kind: printer
        version: 1
        name: Small printer
        bin: {size: [0.5 m, 0.5 m], height: 0.4 m}
        grid: {pitch: 50 mm, layer: 50 mm, origin: [25 mm, 25 mm], under: 1 layer}
        head: {columns: 10, rows: 10, layer_shift: half pitch}
        needle: {tip_depth: 25 mm, flow: 4 mL/s, least: 2 mL, most: 44 mL, step: 0.01 mL}
        supply: {flow: 0.3 L/s, tank: 50 L}
        timing: {setup: 10 min, spreading: 50 s, move: 6 s, plunge: 4 s, hold: 1 s, withdraw: 4 s}
        flush: {time: 2 s, every: 2 layers}
        loose_mix: {lost_in_bin: 1 kg, reusable: 92 %}

        """;

    /// <summary>An order of so many units: the first line's vary, those of the second, half as many, are alike.</summary>
    /// <param name="units">Units in all, 3 or more.</param>
    public TinyOrder(int units)
    {
        Folder = Directory.CreateTempSubdirectory("dewstone-").FullName;
        Write("tiny.unit.yaml", Unit);
        Write("small.mix.yaml", Mix);
        Write("small.printer.yaml", Printer);
        int alike = units / 3;
        WriteOrder(units - alike, alike, redraw: 3);
    }

    /// <summary>Where it stands.</summary>
    public string Folder { get; }

    /// <summary>The order's file.</summary>
    public string File => In("tiny.order.yaml");

    public string In(params string[] parts) => Path.Combine([Folder, .. parts]);

    public void Write(string name, string text) => System.IO.File.WriteAllText(In(name), text);

    /// <summary>Replaces text in one of its files.</summary>
    public void Edit(string name, string from, string to)
    {
        string text = System.IO.File.ReadAllText(In(name));
        Write(name, text.Contains(from, StringComparison.Ordinal) ? text.Replace(from, to, StringComparison.Ordinal) : throw new ArgumentException($"{name} holds no '{from}'.", nameof(from)));
    }

    /// <summary>Lays the plan into the order's folder below an output folder: two units a bin, the second one turned.</summary>
    /// <param name="output">Output folder.</param>
    /// <returns>The order's folder.</returns>
    public string Plan(string output)
    {
        string folder = Path.Combine(output, "tiny");
        Directory.CreateDirectory(folder);
        string[] marks = [.. Marks()];
        StringBuilder bins = new();
        foreach ((int index, string[] own) in marks.Chunk(2).Index())
        {
            string units = string.Join(", ", own.Select((mark, place) => $$"""{"mark": "{{mark}}", "turn_deg": {{place * 90}}, "column": {{2 + 4 * place}}, "row": 3}"""));
            bins.Append(CultureInfo.InvariantCulture, $$"""
                {{(index == 0 ? "" : ",")}}{"name": "small-{{index + 1:D3}}", "printer": 1, "layers": "straight", "shift_z_m": 0,
                "start": "2027-03-01T18:00", "print_end": "2027-03-01T19:00", "dig_not_before": "2027-03-03T07:00", "dig_start": "2027-03-03T08:00",
                "dig_end": "2027-03-03T09:00", "mix_kg": 64, "units": [{{units}}]}
                """);
        }

        string footings = string.Join(", ", Enumerable.Range(1, 2).Select(line =>
            $$"""{"line": {{line}}, "printer": 1, "turn_deg": 0, "shift_m": [0, 0, 0], "layers": "straight", "columns": 3, "rows": 2, "layer_count": 3}"""));
        System.IO.File.WriteAllText(Path.Combine(folder, "plan.json"), $$"""
            {"format": "dewstone-plan", "version": 1, "order": "Tiny order", "order_sha256": "{{Convert.ToHexStringLower(SHA256.HashData(System.IO.File.ReadAllBytes(File)))}}",
            "footings": [{{footings}}], "bins": [{{bins}}]}
            """);
        return folder;
    }

    /// <summary>Writes the order anew.</summary>
    public void WriteOrder(int varied, int alike, int redraw)
    {
        quantities = (varied, alike);
        Write("tiny.order.yaml", $$"""
            kind: order
            version: 1
            name: Tiny order
            start: 2027-03-01
            due: 2027-06-30
            units:
              - {file: tiny.unit.yaml, quantity: {{varied}}, vary: {seed: 1, redraw: {{redraw}}}, mark: TA}
              - {file: tiny.unit.yaml, quantity: {{alike}}, mark: TB}
            gap: 50 mm

            """);
    }

    /// <summary>Marks of all units, in the order of the listing.</summary>
    public IEnumerable<string> Marks()
    {
        static IEnumerable<string> Of(string letters, int count) =>
            Enumerable.Range(1, count).Select(unit => string.Create(CultureInfo.InvariantCulture, $"{letters}-{unit.ToString(CultureInfo.InvariantCulture).PadLeft(Math.Max(3, count.ToString(CultureInfo.InvariantCulture).Length), '0')}"));
        return Of("TA", quantities.Varied).Concat(Of("TB", quantities.Alike));
    }

    /// <summary>Every file below a folder with a hash of its bytes, by path.</summary>
    public static SortedDictionary<string, string> Hashes(string folder) => new(
        Directory.EnumerateFiles(folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }).ToDictionary(
            file => Path.GetRelativePath(folder, file).Replace('\\', '/'), file => Convert.ToHexStringLower(SHA256.HashData(System.IO.File.ReadAllBytes(file)))),
        StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Folder, recursive: true);

    private (int Varied, int Alike) quantities;
}
