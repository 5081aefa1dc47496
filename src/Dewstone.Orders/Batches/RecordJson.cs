using System.Text.Json;
using Dewstone.Jobs.Emission.Json;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Orders.Batches;

/// <summary>The small JSON files of an order's folder: written in one form, read back without trust.</summary>
public static class RecordJson
{
    private const int Version = 1;

    /// <summary>The pin as bytes.</summary>
    public static byte[] Of(OrderPin pin) => Bytes("dewstone-order", json =>
    {
        json.WriteString("name", pin.Name);
        json.WriteString("order_sha256", pin.OrderSha256);
        json.WriteNumber("cells", pin.Cells);
        json.WriteString("tool", pin.ToolVersion);
        json.Objects("inputs", pin.Inputs, input =>
        {
            json.WriteString("role", input.Role);
            json.WriteString("name", input.FileName);
            json.WriteString("sha256", input.Sha256);
        });
        json.Strings("marks", pin.Marks);
    });

    /// <summary>Reads a pin.</summary>
    /// <param name="bytes">The file; null when there is none.</param>
    /// <returns>The pin; null when there is none that can be read.</returns>
    public static OrderPin? ReadPin(byte[]? bytes) => Read(bytes, "dewstone-order", item => new OrderPin
    {
        Name = item.Text("name"),
        OrderSha256 = item.Text("order_sha256"),
        Cells = item.GetProperty("cells").GetInt32(),
        ToolVersion = item.Text("tool"),
        Inputs = [.. item.GetProperty("inputs").EnumerateArray().Select(input => new InputFile(input.Text("role"), input.Text("name"), input.Text("sha256")))],
        Marks = Texts(item, "marks"),
    });

    /// <summary>A unit's record as bytes.</summary>
    /// <param name="unit">The record.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it.</param>
    public static byte[] Of(UnitRecord unit, Func<string, string> nameOfFile) => Bytes("dewstone-order-unit", json =>
    {
        json.WriteString("mark", unit.Mark);
        json.WriteString("name", unit.Name);
        json.WriteString("file", nameOfFile(unit.File));
        json.WriteString("bin", unit.Bin);
        json.WriteString("state", unit.State == UnitState.Solved ? "solved" : "failed");
        json.WriteNumber("exit_code", unit.ExitCode);
        json.WriteString("key", unit.Key);
        json.WriteString("design_fingerprint", unit.DesignFingerprint);
        json.Objects("draws", unit.Draws, draw =>
        {
            json.WriteNumber("draw", draw.Draw);
            json.WriteBoolean("passed", draw.Passed);
            json.Objects("seeds", draw.Seeds, seed =>
            {
                json.WriteString("feature", seed.Feature);
                json.WriteNumber("seed", seed.Seed);
            });
            FindingRecord.Write(json, "errors", draw.Errors, nameOfFile);
        });
        json.ObjectOrNull("figures", unit.Figures, figures => Write(json, figures));
        FindingRecord.Write(json, "requirements", unit.Requirements, nameOfFile, exact: false);
        FindingRecord.Write(json, "findings", unit.Findings, nameOfFile);
    });

    /// <summary>Reads a unit's record.</summary>
    /// <param name="bytes">The file; null when there is none.</param>
    /// <returns>The record; null when there is none that can be read.</returns>
    public static UnitRecord? ReadUnit(byte[]? bytes) => Read(bytes, "dewstone-order-unit", item => new UnitRecord
    {
        Mark = item.Text("mark"),
        Name = item.Text("name"),
        File = item.Text("file"),
        Bin = item.Text("bin"),
        State = item.Text("state") == "solved" ? UnitState.Solved : UnitState.Failed,
        ExitCode = item.GetProperty("exit_code").GetInt32(),
        Key = item.Text("key"),
        DesignFingerprint = item.Text("design_fingerprint"),
        Draws =
        [
            .. item.GetProperty("draws").EnumerateArray().Select(draw => new DrawRecord(
                draw.GetProperty("draw").GetInt32(),
                [.. draw.GetProperty("seeds").EnumerateArray().Select(seed => new DrawnSeed(seed.Text("feature"), seed.GetProperty("seed").GetUInt64()))],
                draw.GetProperty("passed").GetBoolean(),
                FindingRecord.Read(draw.GetProperty("errors")))),
        ],
        Figures = item.GetProperty("figures") is { ValueKind: JsonValueKind.Object } figures ? ReadFigures(figures) : null,
        Requirements = FindingRecord.ReadRequirements(item.GetProperty("requirements")),
        Findings = FindingRecord.Read(item.GetProperty("findings")),
    });

    /// <summary>A bin's record as bytes.</summary>
    /// <param name="bin">The record.</param>
    /// <param name="nameOfFile">Name of a description file as the files hold it.</param>
    public static byte[] Of(BinRecord bin, Func<string, string> nameOfFile) => Bytes("dewstone-order-bin", json =>
    {
        json.WriteString("name", bin.Name);
        json.WriteString("key", bin.Key);
        json.WriteNumber("exit_code", bin.ExitCode);
        json.WriteString("folder", bin.Folder);
        json.WriteString("manifest_sha256", bin.ManifestSha256);
        json.Strings("units", bin.Units);
        json.Strings("left_out", bin.LeftOut);
        FindingRecord.Write(json, "findings", bin.Findings, nameOfFile);
    });

    /// <summary>Reads a bin's record.</summary>
    /// <param name="bytes">The file; null when there is none.</param>
    /// <returns>The record; null when there is none that can be read.</returns>
    public static BinRecord? ReadBin(byte[]? bytes) => Read(bytes, "dewstone-order-bin", item => new BinRecord
    {
        Name = item.Text("name"),
        Key = item.Text("key"),
        ExitCode = item.GetProperty("exit_code").GetInt32(),
        Folder = item.Text("folder"),
        ManifestSha256 = item.Text("manifest_sha256"),
        Units = Texts(item, "units"),
        LeftOut = Texts(item, "left_out"),
        Findings = FindingRecord.Read(item.GetProperty("findings")),
    });

    /// <summary>A task's report as bytes.</summary>
    /// <param name="report">The report.</param>
    public static byte[] Of(TaskReport report) => Bytes("dewstone-order-task", json =>
    {
        json.WriteNumber("task", report.Task);
        json.WriteNumber("tasks", report.Tasks);
        json.WriteString("order_sha256", report.OrderSha256);
        json.WriteNumber("exit_code", report.ExitCode);
        json.Strings("bins", report.Bins);
        json.Strings("failed", report.Failed);
    });

    /// <summary>Reads a task's report.</summary>
    /// <param name="bytes">The file; null when there is none.</param>
    /// <returns>The report; null when there is none that can be read.</returns>
    public static TaskReport? ReadTask(byte[]? bytes) => Read(bytes, "dewstone-order-task", item => new TaskReport(
        item.GetProperty("task").GetInt32(), item.GetProperty("tasks").GetInt32(), item.Text("order_sha256"), Texts(item, "bins"), Texts(item, "failed"),
        item.GetProperty("exit_code").GetInt32()));

    private static void Write(Utf8JsonWriter json, UnitFigures figures)
    {
        json.Size("box_m", figures.Box);
        json.Figure("hardened_m3", figures.HardenedCubicMetres);
        json.Figure("lift_kg", figures.LiftKilograms);
        json.Figure("dry_kg", figures.DryKilograms);
        json.Figure("saturated_kg", figures.SaturatedKilograms);
        json.Figure("submerged_kg", figures.SubmergedKilograms);
        json.Figure("strength_pa", figures.StrengthPascals);
        json.Figure("dig_out_days", figures.DigOutDays);
        json.Figure("lift_days", figures.LiftDays);
    }

    private static UnitFigures ReadFigures(JsonElement item)
    {
        double[] box = [.. item.GetProperty("box_m").EnumerateArray().Select(edge => edge.GetDouble())];
        return new UnitFigures
        {
            Box = new Size3(box[0], box[1], box[2]),
            HardenedCubicMetres = item.GetProperty("hardened_m3").GetDouble(),
            LiftKilograms = item.GetProperty("lift_kg").GetDouble(),
            DryKilograms = item.GetProperty("dry_kg").GetDouble(),
            SaturatedKilograms = item.GetProperty("saturated_kg").GetDouble(),
            SubmergedKilograms = item.GetProperty("submerged_kg").GetDouble(),
            StrengthPascals = StoredFigures.Number(item, "strength_pa"),
            DigOutDays = StoredFigures.Number(item, "dig_out_days"),
            LiftDays = StoredFigures.Number(item, "lift_days"),
        };
    }

    private static IReadOnlyList<string> Texts(JsonElement item, string name) => [.. item.GetProperty(name).EnumerateArray().Select(value => value.GetString() ?? "")];

    private static byte[] Bytes(string format, Action<Utf8JsonWriter> body) => CanonicalJson.Indented(json =>
    {
        json.WriteString("format", format);
        json.WriteNumber("version", Version);
        body(json);
    });

    private static T? Read<T>(byte[]? bytes, string format, Func<JsonElement, T> read)
        where T : class
    {
        if (bytes is null)
        {
            return null;
        }

        try
        {
            using JsonDocument document = JsonDocument.Parse(bytes);
            JsonElement item = document.RootElement;
            return item.Text("format") == format && item.GetProperty("version").GetInt32() == Version ? read(item) : null;
        }
        catch (Exception damage) when (damage is JsonException or InvalidOperationException or KeyNotFoundException or FormatException or ArgumentException or IndexOutOfRangeException)
        {
            return null;
        }
    }
}
