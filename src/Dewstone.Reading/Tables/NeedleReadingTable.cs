using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;

namespace Dewstone.Reading.Tables;

/// <summary>Table of weighings of needles.</summary>
internal static class NeedleReadingTable
{
    private static readonly DataColumn[] Columns =
    [
        new("column", 1, 2000, IsWhole: true), new("row", 1, 2000, IsWhole: true), new("asked_ml", 0.05, 10_000), new("weighed_g", 0, 100_000),
        new("water_temperature_c", 0, 40), new("air_pressure_hpa", 500, 1100),
        new("board", IsText: true, IsOptional: true), new("channel", IsText: true, IsOptional: true), new("run", IsText: true, IsOptional: true),
    ];

    /// <summary>Reads the table.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="file">File as shown in findings.</param>
    /// <param name="findings">Takes the findings.</param>
    /// <returns>Readings in the order of the file.</returns>
    public static IReadOnlyList<NeedleReading> Read(string text, string file, DiagnosticBag findings) =>
    [
        .. new DataTableReader(file, findings).Read(text, [Columns]).Rows.Select(row => new NeedleReading
        {
            Column = (int)row["column"],
            Row = (int)row["row"],
            AskedMillilitres = row["asked_ml"],
            WeighedGrams = row["weighed_g"],
            WaterCelsius = row["water_temperature_c"],
            AirHectopascals = row["air_pressure_hpa"],
            Board = row.Text("board"),
            Channel = row.Text("channel"),
            Line = row.Line,
        }),
    ];
}
