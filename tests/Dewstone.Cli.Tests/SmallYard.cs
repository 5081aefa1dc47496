using Dewstone.Tests;

namespace Dewstone.Cli.Tests;

/// <summary>A folder with one small unit, a mix and a printer, so that a whole compile takes a moment. Invented figures.</summary>
internal sealed class SmallYard : IDisposable
{
    public const string Unit = """
        kind: unit
        version: 1
        name: Small step
        mix: small.mix.yaml
        printer: small.printer.yaml
        box: [250 mm, 200 mm, 150 mm]
        rounding: 20 mm
        tunnels:
          - name: drain
            along: y
            at: {x: 125 mm, z: 75 mm}
            section: {diameter: 60 mm}
        require:
          mass: {max: 40 kg}
          shape_match: {min: 0.50}
        """;

    public const string Mix = TinyOrder.Mix;

    public const string Printer = """
        kind: printer
        version: 1
        name: Small printer
        bin: {size: [0.5 m, 0.5 m], height: 0.4 m}
        grid: {pitch: 50 mm, layer: 50 mm, origin: [25 mm, 25 mm], under: 1 layer}
        head: {columns: 10, rows: 5, layer_shift: half pitch}
        needle: {tip_depth: 25 mm, flow: 4 mL/s, least: 2 mL, most: 44 mL, step: 0.1 mL}
        supply: {flow: 0.3 L/s, tank: 50 L}
        timing: {setup: 10 min, spreading: 50 s, move: 6 s, plunge: 4 s, hold: 1 s, withdraw: 4 s}
        flush: {time: 2 s, every: 2 layers}
        loose_mix: {lost_in_bin: 1 kg, reusable: 92 %}
        """;

    public SmallYard()
    {
        Folder = Directory.CreateTempSubdirectory("dewstone-").FullName;
        Write("small.unit.yaml", Unit);
        Write("small.mix.yaml", Mix);
        Write("small.printer.yaml", Printer);
    }

    /// <summary>Where it stands.</summary>
    public string Folder { get; }

    /// <summary>The unit's file.</summary>
    public string UnitFile => In("small.unit.yaml");

    public string In(params string[] parts) => Path.Combine([Folder, .. parts]);

    public string Write(string name, string text)
    {
        File.WriteAllText(In(name), text);
        return In(name);
    }

    /// <summary>Every file below a folder with its bytes in hexadecimal hashes, sorted by path.</summary>
    public static SortedDictionary<string, string> Hashes(string folder) => new(
        Directory.EnumerateFiles(folder, "*", SearchOption.AllDirectories).ToDictionary(
            f => Path.GetRelativePath(folder, f).Replace('\\', '/'),
            f => Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f)))),
        StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
