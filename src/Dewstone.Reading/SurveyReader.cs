using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading.Scans;
using Dewstone.Reading.Tables;

namespace Dewstone.Reading;

/// <summary>Reads the tables of measurements that <c>survey</c> takes. Every fault is a finding with its line and column; the files are never touched.</summary>
public static class SurveyReader
{
    private const double MostCount = 100_000.0;
    private const double MostSeconds = 1e7;
    private const double MetresPerMillimetre = 1e-3;

    private static readonly string[] States = ["ok", "fault", "stopped"];

    private static readonly MeasuredColumn[] RunLogColumns =
    [
        new("layer", 1.0, MostCount) { IsWhole = true },
        new("station", 1.0, MostCount) { IsWhole = true },
        new("column", 1.0, MostCount) { IsWhole = true },
        new("row", 1.0, MostCount) { IsWhole = true },
        new("delivered", 0.0, 10_000.0) { Units = [("ml", 1.0)] },
        new("seconds", 0.0, MostSeconds) { IsRequired = false },
        new("state") { Words = States, IsRequired = false },
        new("started", 0.0, 1e10) { Units = [("s", 1.0)], IsRequired = false },
    ];

    private static readonly MeasuredColumn[] WeightColumns =
    [
        new("mark") { Words = [] },
        new("weighed", 0.1, 100_000.0) { Units = [("kg", 1.0), ("lb", 0.45359237), ("t", 1000.0)] },
        new("date") { Words = [], IsRequired = false },
    ];

    private static readonly MeasuredColumn[] GaugeColumns =
    [
        new("name") { Words = [], IsRequired = false },
        new("kind") { Words = ["opening", "wall"] },
        new("reading", 0.0, 10.0) { Units = [("mm", MetresPerMillimetre), ("cm", 0.01), ("in", 0.0254)] },
    ];

    /// <summary>Reads a machine's full run log.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading; its source map is empty, since a table has no keys.</returns>
    public static FileReading<IReadOnlyList<LoggedDose>> ReadRunLog(string path) => Read(path, RunLogColumns, row => new LoggedDose(
        (int)row.Numbers[0], (int)row.Numbers[1], (int)row.Numbers[2], (int)row.Numbers[3],
        (int)decimal.Round((decimal)row.Numbers[4] * 100m, 0, MidpointRounding.AwayFromZero), row.Number(5),
        (RunState)Math.Max(0, Array.IndexOf(States, row.Texts[6])), row.Number(7), row.Line));

    /// <summary>Reads scale weights, in the order in which the units were printed.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading; its source map is empty.</returns>
    public static FileReading<IReadOnlyList<WeighedUnit>> ReadWeights(string path) =>
        Read(path, WeightColumns, row => new WeighedUnit(row.Texts[2].Length == 0 ? row.Texts[0] : $"{row.Texts[0]} ({row.Texts[2]})", row.Numbers[1], row.Line));

    /// <summary>Reads gauge-ball and caliper readings.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading; its source map is empty.</returns>
    public static FileReading<IReadOnlyList<GaugeReading>> ReadGauges(string path) =>
        Read(path, GaugeColumns, row => new GaugeReading(row.Texts[0], row.Texts[1] == "opening" ? GaugeKind.Opening : GaugeKind.Wall, row.Numbers[2], row.Line));

    /// <summary>Reads a scan of a unit, in millimetres: STL, binary or text, or a table of points.</summary>
    /// <param name="path">Path, relative to the current folder.</param>
    /// <returns>The reading; its source map is empty.</returns>
    public static FileReading<UnitScan> ReadScan(string path)
    {
        DiagnosticBag findings = new();
        UnitScan? scan = ScanFileReader.Read(path, findings);
        return new FileReading<UnitScan>(scan, findings.Items, new SourceMap(path));
    }

    private static FileReading<IReadOnlyList<T>> Read<T>(string path, MeasuredColumn[] columns, Func<MeasuredRow, T> make) =>
        JobReader.ReadFile(path, (text, file) =>
        {
            DiagnosticBag findings = new();
            IReadOnlyList<MeasuredRow> rows = new MeasuredTableReader(columns, file, findings).Read(text);
            return new FileReading<IReadOnlyList<T>>(findings.HasErrors ? null : [.. rows.Select(make)], findings.Items, new SourceMap(file));
        });
}
