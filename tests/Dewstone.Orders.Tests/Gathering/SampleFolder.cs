using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;
using Dewstone.Orders.Batches;
using Dewstone.Orders.Listing;
using Dewstone.Orders.Plans;
using Dewstone.Reading;

namespace Dewstone.Orders.Tests.Gathering;

/// <summary>The folder of a compiled order as the commands leave it, made by hand: small, invented, and with figures that can be added up in the head.</summary>
internal sealed class SampleFolder : IDisposable
{
    public const string Version = "0.1.0";

    private static readonly string Key = new('0', 64);

    private readonly string parent = Directory.CreateTempSubdirectory("gather-").FullName;

    public SampleFolder(int blocks = 6, int steps = 2, int perBin = 2, int tasks = 4, string keys = "")
    {
        string bay = Path.Combine(parent, "bay");
        foreach (string file in (string[])["units/wrack-block.unit.yaml", "units/oyster-step.unit.yaml", "mixes/estuary.mix.yaml", "printers/yard.printer.yaml", "printers/yard.needles.csv", "sites/wrackline-shoal.site.yaml", "sites/inner-flat.site.yaml", ".dewstone-root"])
        {
            Directory.CreateDirectory(Path.GetDirectoryName(Path.Combine(bay, file))!);
            File.Copy(Path.Combine(Repository, "examples", "wrackline-bay", file), Path.Combine(bay, file));
        }

        string order = Path.Combine(bay, "spring.order.yaml");
        File.WriteAllText(order, $$"""
            kind: order
            version: 1
            name: Spring order
            start: 2027-03-01
            due: 2027-06-30
            mix: mixes/estuary.mix.yaml
            units:
              - {file: units/wrack-block.unit.yaml, quantity: {{blocks}}, vary: {seed: 1, redraw: 5}, mark: WB}
              - {file: units/oyster-step.unit.yaml, quantity: {{steps}}, mark: OS}
            printers: [printers/yard.printer.yaml]
            shifts: {days: [mon, tue, wed, thu, fri], from: "18:00", to: "06:00"}
            {{keys}}
            """);
        Reading = DescriptionReader.ReadOrderFiles(order);
        Assert.DoesNotContain(Reading.Diagnostics, finding => finding.Severity == Severity.Error);
        Folder = OrderFolder.Of(parent, order);
        Write(perBin, tasks);
    }

    public Order Order => Reading.Order!;

    public OrderReading Reading { get; }

    public OrderFolder Folder { get; }

    private static string Repository { get; } = FindRepository();

    public string In(string path) => Path.Combine(Folder.Root, path);

    public SortedDictionary<string, byte[]> Files() => new(
        Directory.EnumerateFiles(Folder.Root, "*", SearchOption.AllDirectories).ToDictionary(file => Path.GetRelativePath(Folder.Root, file), File.ReadAllBytes, StringComparer.Ordinal),
        StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(parent, recursive: true);

    public static UnitRecord Record(OrderedUnit unit, string bin, UnitState state = UnitState.Solved) => new()
    {
        Mark = unit.Mark,
        Name = unit.Line == 0 ? "Wrack block" : "Oyster step",
        File = "units/unit.yaml",
        Bin = bin,
        State = state,
        Key = Key,
        Draws = unit.Ordinal == 2 ? [new DrawRecord(0, [], false, []), new DrawRecord(1, [new DrawnSeed("relief", 5)], true, [])] : [new DrawRecord(0, [], true, [])],
        DesignFingerprint = "0123456789AB",
        Figures = state == UnitState.Failed ? null : new UnitFigures
        {
            Box = unit.Line == 0 ? new Size3(0.9, 0.9, 0.9) : new Size3(0.4, 0.5, 0.3),
            HardenedCubicMetres = 0.3,
            LiftKilograms = unit.Line == 0 ? 600.0 + unit.Ordinal : 60.0,
            DryKilograms = 500.0,
            SaturatedKilograms = 660.0,
            SubmergedKilograms = unit.Line == 0 ? 300.0 : 30.0,
            StrengthPascals = 12e6,
            DigOutDays = 2.5,
            LiftDays = 2.5,
        },
        Requirements = [],
        Findings = [],
        ExitCode = state == UnitState.Solved ? 0 : 1,
    };

    private void Write(int perBin, int tasks)
    {
        OrderedUnit[] units = [.. OrderListing.Of(Order)];
        PlannedBin[] bins = [.. units.Chunk(perBin).Select((inside, i) => Plan(i, inside))];
        OrderPlan plan = new() { Order = Order.Name, OrderHash = Reading.Hash, Footings = [.. Order.Units.Select((_, line) => new Footing { Line = line, Printer = 0, Wish = new PlacementWish { QuarterTurns = 0, Shift = default(Point3), ShiftedLayers = false }, Columns = 18, Rows = 18, Layers = 19 })], Bins = bins };
        Put("plan.json", PlanJson.Write(plan));
        Put("order.json", RecordJson.Of(OrderBegin.PinOf(Reading, 8, Version)));
        PlannedWork work = new(new BatchQuestion { Reading = Reading, Plan = plan, Folder = Folder, Cells = 8, Parallelism = new(1), ToolVersion = Version });
        foreach (PlannedBin bin in bins)
        {
            foreach (PlannedUnit inside in bin.Units)
            {
                Put($"units/{inside.Mark}.json", RecordJson.Of(Record(units.Single(unit => unit.Mark == inside.Mark), bin.Name), file => file));
            }

            string manifest = Job(bin.Name);
            Put($"bins/{bin.Name}.json", RecordJson.Of(
                new BinRecord { Name = bin.Name, Key = work.Key(bin), Units = [.. bin.Units.Select(unit => unit.Mark)], LeftOut = [], Folder = $"{bin.Name}.job", ManifestSha256 = manifest, Findings = [], ExitCode = 0 },
                file => file));
        }

        for (int task = 0; task < tasks; task++)
        {
            Put($"tasks/task-{task}-of-{tasks}.json", RecordJson.Of(new TaskReport(task, tasks, Reading.Hash, [.. TaskSlice.Of([.. bins.Select(work.Cost)], task, tasks).Select(bin => bins[bin].Name)], [], 0)));
        }
    }

    // Two bins a night; the second begins after midnight and still belongs to the evening before.
    private static PlannedBin Plan(int index, OrderedUnit[] inside)
    {
        DateTime start = new DateTime(2027, 3, 1, 18, 0, 0).AddDays(index / 2).AddHours(index % 2 == 0 ? 0 : 7);
        return new PlannedBin
        {
            Name = $"yard-{index + 1:000}",
            Printer = 0,
            ShiftedLayers = false,
            ShiftZ = new Length(0.0),
            Units = [.. inside.Select((unit, i) => new PlannedUnit(unit.Mark, 0, i * 6, 0))],
            Start = start,
            PrintEnd = start.AddHours(2),
            DigNotBefore = start.AddHours(40),
            DigStart = start.AddHours(62),
            DigEnd = start.AddHours(63),
            Mix = new Mass(1000.0),
        };
    }

    private string Job(string bin)
    {
        string estimate = """
            {"mix_kg":{"spread":1000,"hardened":600,"reusable":300,"lost":100,"binder":150},"water_l":{"injected":120,"flush":4},"co2_kg":130,"cost":{"amount":45.5,"currency":"EUR"},"time_s":{"setup":1200,"printing":6000}}
            """;
        JsonObject manifest = new()
        {
            ["format"] = "dewstone-manifest",
            ["version"] = 1,
            ["name"] = bin,
            ["state"] = "ready",
            ["job_fingerprint"] = "ABCDEFGH0123",
            ["design_fingerprint"] = "0123456789AB",
            ["tool"] = new JsonObject { ["name"] = "dewstone", ["version"] = Version },
            ["inputs"] = new JsonArray(),
            ["files"] = new JsonArray(Listed(bin, "estimate.json", estimate), Listed(bin, "labels.html", $"<html><body><main><article>{bin}</article></main></body></html>"), Listed(bin, "report.html", "<p>report</p>"), Listed(bin, "doses/layer-001.csv", "layer\n1\n")),
            ["requirements"] = new JsonArray(),
            ["totals"] = new JsonObject(),
            ["conditions"] = new JsonArray(),
            ["accepted"] = new JsonArray(),
        };
        byte[] bytes = Encoding.UTF8.GetBytes(manifest.ToJsonString());
        Put($"bins/{bin}.job/manifest.json", bytes);
        return Convert.ToHexStringLower(SHA256.HashData(bytes));
    }

    private JsonObject Listed(string bin, string path, string text)
    {
        byte[] bytes = Encoding.UTF8.GetBytes(text);
        Put($"bins/{bin}.job/{path}", bytes);
        return new JsonObject { ["path"] = path, ["bytes"] = bytes.Length, ["sha256"] = Convert.ToHexStringLower(SHA256.HashData(bytes)) };
    }

    private static string FindRepository()
    {
        DirectoryInfo? at = new(AppContext.BaseDirectory);
        while (at is not null && !Directory.Exists(Path.Combine(at.FullName, "examples")))
        {
            at = at.Parent;
        }

        return at?.FullName ?? throw new DirectoryNotFoundException("the repository");
    }

    private void Put(string path, byte[] bytes)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(In(path))!);
        File.WriteAllBytes(In(path), bytes);
    }
}
