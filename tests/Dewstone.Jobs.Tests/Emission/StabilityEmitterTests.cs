using System.Globalization;
using System.Text;
using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission;

/// <summary>Works every row of the table out again from its own columns, the manifest's <c>sea</c> and the site's file.</summary>
public sealed class StabilityEmitterTests
{
    private const double Degree = Math.PI / 180.0;

    private static readonly CompiledJob Job = SeaJobs.At(Samples.Job(), SeaJobs.Site);

    [Fact]
    public void Every_row_can_be_recomputed_by_hand()
    {
        JobData data = JobDataEmitter.Emit(Job, Samples.Settings);
        JsonElement sea = JsonDocument.Parse(ManifestEmitter.Emit(Job, data, data.Files, Samples.Settings.NameOfFile).Bytes).RootElement.GetProperty("sea");
        JsonElement body = sea.GetProperty("body");
        double density = Figure(sea, "water_kg_m3"), volume = Figure(body, "volume_m3"), plan = Figure(body, "plan_m2"), centre = Figure(body, "centre_z_m");
        Site site = SeaJobs.Site;
        double cos = Math.Cos(site.Seabed.Slope.Radians), sin = Math.Sin(site.Seabed.Slope.Radians);
        double wave = site.Wave.Direction.Degrees + 180.0, current = site.Current!.Direction.Degrees;
        Dictionary<string, double>[] rows = [.. Rows(data)];

        Assert.Equal(2 * 36 * 36, rows.Length);
        foreach (Dictionary<string, double> row in rows)
        {
            double phase = row["phase_deg"] * Degree;
            JsonElement level = sea.GetProperty("levels").EnumerateArray().First(item => Figure(item, "depth_m") == row["depth_m"]);
            Near(Figure(level, "speed_m_s") * Math.Cos(phase), row["u_m_s"], 1.0);
            Near(-Figure(level, "acceleration_m_s2") * Math.Sin(phase), row["a_m_s2"], 1.0);
            double east = row["u_m_s"] * Math.Sin(wave * Degree) + 0.6 * Math.Sin(current * Degree);
            double north = row["u_m_s"] * Math.Cos(wave * Degree) + 0.6 * Math.Cos(current * Degree);
            Near(Math.Sqrt(east * east + north * north), row["flow_m_s"], 1.0);
            double pressure = 0.5 * density * row["flow_m_s"] * row["flow_m_s"];
            Near(pressure * 1.05 * row["area_m2"], row["drag_n"], 10.0);
            Near(density * 1.67 * volume * row["a_m_s2"], row["inertia_n"], 10.0);
            Near(pressure * 0.8 * plan, row["lift_n"], 10.0);
            double flow = row["flow_deg"] * Degree, edge = row["edge_deg"] * Degree;
            double pushEast = row["drag_n"] * Math.Sin(flow) + row["inertia_n"] * Math.Sin(wave * Degree);
            double pushNorth = row["drag_n"] * Math.Cos(flow) + row["inertia_n"] * Math.Cos(wave * Degree);
            Near(Math.Sqrt(pushEast * pushEast + pushNorth * pushNorth), row["horizontal_n"], 10.0);
            double weight = row["submerged_n"];
            double sliding = 0.55 * Math.Max(0.0, weight * cos - row["lift_n"]) / (row["horizontal_n"] + weight * sin);
            Near(Math.Min(100.0, sliding), row["sliding"], 10.0);
            double turning = row["drag_n"] * row["drag_height_m"] * Math.Cos(flow - edge) + row["inertia_n"] * centre * Math.Cos(wave * Degree - edge)
                + row["lift_n"] * row["lift_arm_m"] + weight * sin * centre;
            Near(turning <= 0.0 ? 100.0 : Math.Min(100.0, weight * cos * row["weight_arm_m"] / turning), row["overturning"], 100.0);
        }

        Near(rows.Min(row => row["sliding"]), Figure(sea, "sliding"), 1.0);
        Near(rows.Min(row => row["overturning"]), Figure(sea, "overturning"), 1.0);
    }

    [Fact]
    public void Job_without_a_site_has_no_table() =>
        Assert.DoesNotContain(JobDataEmitter.Emit(Samples.Job(), Samples.Settings).Files, file => file.RelativePath == StabilityEmitter.Path);

    // Six digits are written: what is left is their rounding, some of it carried on.
    private static void Near(double expected, double found, double scale) =>
        Assert.True(Math.Abs(expected - found) <= 1e-5 * scale * Math.Max(Math.Abs(expected), 1e-2), $"{expected} and {found}");

    private static double Figure(JsonElement element, string name) => element.GetProperty(name).GetDouble();

    private static IEnumerable<Dictionary<string, double>> Rows(JobData data)
    {
        string[] lines = Encoding.UTF8.GetString(data.Files.Single(file => file.RelativePath == StabilityEmitter.Path).Bytes.Span).TrimEnd('\n').Split('\n');
        string[] heads = lines[0].Split(',');
        return lines.Skip(1).Select(line => line.Split(',')).Select(cells => heads.Zip(cells).Skip(1)
            .ToDictionary(pair => pair.First, pair => double.Parse(pair.Second, CultureInfo.InvariantCulture)));
    }
}
