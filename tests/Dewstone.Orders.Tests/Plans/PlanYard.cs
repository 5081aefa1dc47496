using Dewstone.Model.Results;
using Dewstone.Orders.Plans;
using Dewstone.Reading;
using Dewstone.Tests;

namespace Dewstone.Orders.Tests.Plans;

/// <summary>A folder with small units, a mix and two printers to plan orders of. Invented figures.</summary>
internal sealed class PlanYard : IDisposable
{
    public const string Stone = """
        kind: unit
        version: 1
        name: Stone
        mix: small.mix.yaml
        printer: small.printer.yaml
        box: [200 mm, 150 mm, 100 mm]
        rounding: 20 mm
        place: {turn: 0 deg, shift: [0 mm, 0 mm, 0 mm], layers: straight}
        """;

    public const string Mix = TinyOrder.Mix + "strength: {measured: [[28 d, 20 degC, 25 MPa]]}\n";

    public const string Printer = """
        kind: printer
        version: 1
        name: Small printer
        bin: {size: [0.7 m, 0.6 m], height: 0.3 m}
        grid: {pitch: 50 mm, layer: 50 mm, origin: [25 mm, 25 mm], under: 1 layer}
        head: {columns: 14, rows: 6, layer_shift: half pitch}
        needle: {tip_depth: 25 mm, flow: 4 mL/s, least: 2 mL, most: 44 mL, step: 0.1 mL}
        supply: {flow: 0.5 L/s, tank: 50 L}
        timing: {setup: 10 min, spreading: 50 s, move: 6 s, plunge: 4 s, hold: 1 s, withdraw: 4 s}
        flush: {time: 2 s, every: 2 layers}
        loose_mix: {lost_in_bin: 1 kg, reusable: 92 %}
        """;

    /// <summary>Thirty-one small pieces on two printers with everything an order can tell of the yard.</summary>
    public const string Order = """
        kind: order
        version: 1
        name: Two kinds
        start: 2027-03-01
        due: 2027-04-15
        units:
          - {file: stone.unit.yaml, quantity: 20, mark: ST}
          - {file: slab.unit.yaml, quantity: 11, mark: SL}
        printers: [small.printer.yaml, other.printer.yaml]
        shifts: {days: [mon, tue, wed, thu, fri], from: "18:00", to: "20:00"}
        crew: {hours: 4 h, dig_out: 30 min}
        bins: {count: 5, change: 10 min, curing_places: 4, handling: 400 kg, set_before_dig: 36 h}
        curing: {temperature: 12 degC}
        gap: 80 mm
        mix_stock: {on_hand: 500 kg, silo: 600 kg, deliveries: [{on: 2027-03-03, mass: 150 kg}, {on: 2027-03-10, mass: 150 kg}]}
        """;

    public PlanYard()
    {
        Folder = Directory.CreateTempSubdirectory("dewstone-").FullName;
        Write("stone.unit.yaml", Stone);
        Write("slab.unit.yaml", Stone.Replace("Stone", "Slab", StringComparison.Ordinal).Replace("[200 mm, 150 mm, 100 mm]", "[400 mm, 100 mm, 100 mm]", StringComparison.Ordinal));
        Write("small.mix.yaml", Mix);
        Write("small.printer.yaml", Printer);
        Write("other.printer.yaml", Printer.Replace("Small", "Other", StringComparison.Ordinal).Replace("[0.7 m, 0.6 m]", "[0.4 m, 0.6 m]", StringComparison.Ordinal)
            .Replace("columns: 14, rows: 6", "columns: 8, rows: 12", StringComparison.Ordinal));
    }

    /// <summary>Where it stands.</summary>
    public string Folder { get; }

    public string Write(string name, string text)
    {
        string path = Path.Combine(Folder, name);
        File.WriteAllText(path, text);
        return path;
    }

    /// <summary>Reads an order.</summary>
    /// <param name="text">Its text; a change made to <see cref="Order"/> must have found its place.</param>
    /// <returns>The reading.</returns>
    public OrderReading Read(string text) => DescriptionReader.ReadOrderFiles(Write("some.order.yaml", text));

    /// <summary>Plans an order with little effort.</summary>
    /// <param name="text">Its text.</param>
    /// <returns>Reading and plan.</returns>
    public (OrderReading Reading, PlanningResult Result) Plan(string text, int threads = 2, double effort = 0.5)
    {
        OrderReading reading = Read(text);
        return (reading, OrderPlanner.Plan(reading, new Parallelism(threads), null, CancellationToken.None, effort));
    }

    /// <summary>The order with one thing written otherwise.</summary>
    /// <param name="was">As it stands.</param>
    /// <param name="becomes">As it shall be.</param>
    /// <param name="text">The text; null for <see cref="Order"/>.</param>
    /// <returns>The changed text.</returns>
    public static string With(string was, string becomes, string? text = null)
    {
        string from = text ?? Order;
        Assert.Contains(was, from, StringComparison.Ordinal);
        return from.Replace(was, becomes, StringComparison.Ordinal);
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
