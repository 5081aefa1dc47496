using Dewstone.Model.Diagnostics;
using Dewstone.Model.Measurements;

namespace Dewstone.Reading.Tables;

/// <summary>Tables of measurements of a mix; the names in the first line tell which of four it is.</summary>
internal static class MixReadingTable
{
    private const double MostUneven = 1.5;

    private static readonly DataColumn Dose = new("dose_ml", 0.1, 200);
    private static readonly DataColumn Bed = new("bed_temperature_c", -5, 50);

    private static readonly IReadOnlyList<IReadOnlyList<DataColumn>> Kinds =
    [
        [new("specimen", IsText: true), new("time_s", 0.1, 1e7), new("uptake_g", 0, 1e5), new("area_cm2", 0.1, 1e4)],
        [
            Dose, new("diameter_x_mm", 3, 500), new("diameter_y_mm", 3, 500), new("diameter_z_mm", 3, 500), new("wet_mass_g", 0.1, 1e5),
            new("dry_mass_g", 0.1, 1e5), Bed,
        ],
        [Dose, new("spacing_mm", 5, 300), new("length_mm", 5, 1000), new("waist_mm", 1, 500), Bed],
        [new("container_ml", 10, 1e6), new("mass_g", 1, 5e6)],
    ];

    /// <summary>Reads a table.</summary>
    /// <param name="text">Whole text.</param>
    /// <param name="file">File as shown in findings.</param>
    /// <param name="findings">Takes the findings.</param>
    /// <returns>The readings, in the order of the file.</returns>
    public static MixReadings Read(string text, string file, DiagnosticBag findings)
    {
        (int? kind, IReadOnlyList<DataRow> rows) = new DataTableReader(file, findings).Read(text, Kinds);
        MixReadings none = new() { File = file };
        return kind switch
        {
            0 => none with { Absorption = [.. rows.Select(r => new AbsorptionReading(r.Text("specimen"), r["time_s"], r["uptake_g"], r["area_cm2"], r.Line))] },
            1 => none with { Balls = [.. rows.Select(row => Ball(row, findings))] },
            2 => none with { Pairs = [.. rows.Select(row => Pair(row, findings))] },
            3 => none with { Densities = [.. rows.Select(r => new DensityReading(r["container_ml"], r["mass_g"], r.Line))] },
            _ => none,
        };
    }

    private static BallReading Ball(DataRow row, DiagnosticBag findings)
    {
        BallReading ball = new(
            row["dose_ml"], [row["diameter_x_mm"], row["diameter_y_mm"], row["diameter_z_mm"]], row["wet_mass_g"], row["dry_mass_g"], row["bed_temperature_c"], row.Line);
        if (ball.DryGrams >= ball.WetGrams)
        {
            findings.Add(row.Contradiction($"the ball is not lighter dry ({ball.DryGrams} g) than wet ({ball.WetGrams} g)"));
        }

        if (ball.DiametersMillimetres.Max() > MostUneven * ball.DiametersMillimetres.Min())
        {
            findings.Add(row.Contradiction($"diameters from {ball.DiametersMillimetres.Min()} to {ball.DiametersMillimetres.Max()} mm are not those of a ball"));
        }

        return ball;
    }

    private static PairReading Pair(DataRow row, DiagnosticBag findings)
    {
        PairReading pair = new(row["dose_ml"], row["spacing_mm"], row["length_mm"], row["waist_mm"], row["bed_temperature_c"], row.Line);
        if (pair.LengthMillimetres <= pair.SpacingMillimetres || pair.WaistMillimetres >= pair.LengthMillimetres)
        {
            findings.Add(row.Contradiction(
                $"a pair {pair.LengthMillimetres} mm long with a waist of {pair.WaistMillimetres} mm cannot come from needles {pair.SpacingMillimetres} mm apart"));
        }

        return pair;
    }
}
