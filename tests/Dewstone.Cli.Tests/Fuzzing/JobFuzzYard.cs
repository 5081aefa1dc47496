using System.Globalization;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>A compiled job, a second one, and what was measured of a unit of it.</summary>
internal static class JobFuzzYard
{
    /// <summary>Makes it.</summary>
    public static async Task<FuzzYard> Make()
    {
        FuzzYard yard = new();
        FuzzFiles.Write(yard);
        foreach (string name in new[] { "out", "other" })
        {
            Words.Answer made = await Words.Run("compile", yard.In("yard", "plain.unit.yaml"), "-o", yard.In("yard", name), "--cells", "4", "--quiet");
            Assert.True(made.Code == ExitCode.Done, made.Output + made.Error);
        }

        // Of the other only what is compared stays: each file makes each case longer.
        foreach (string file in Directory.GetFiles(yard.In("yard", "other"), "*", SearchOption.AllDirectories).Where(file => Path.GetExtension(file) is ".png" or ".gif" or ".html" or ".stl" or ".glb"))
        {
            File.Delete(file);
        }

        string job = yard.In("yard", "out", "plain.job");
        yard.Write("weights.csv", "mark,weighed_kg\nU1,1.0\nU2,1.1\nU3,1.0\n");
        yard.Write("gauges.csv", "name,kind,reading_mm\nthinnest,wall,60\n");
        yard.Write("log.csv", "layer,station,column,row,delivered_ml,seconds,state,started_s\n" + string.Concat(Directory.GetFiles(Path.Combine(job, "doses")).Order(StringComparer.Ordinal)
            .SelectMany(file => File.ReadLines(file).Skip(1)).Select(line => line.Split(','))
            .Select((c, i) => string.Create(CultureInfo.InvariantCulture, $"{c[0]},{c[1]},{c[2]},{c[3]},{c[9]},{double.Parse(c[9], CultureInfo.InvariantCulture) / 4.0:0.000},ok,{1000 + 10 * i}\n"))));
        yard.Write("rest.csv", "layer,station,column,row,delivered_ml\n" + string.Concat(Directory.GetFiles(Path.Combine(job, "doses")).Order(StringComparer.Ordinal)
            .SelectMany(file => File.ReadLines(file).Skip(1)).Select(line => line.Split(',')).Where(c => c[0] == "2").Select(c => $"{c[0]},{c[1]},{c[2]},{c[3]},{c[9]}\n")));
        byte[] scan = await File.ReadAllBytesAsync(Path.Combine(job, "predicted.stl"));
        await File.WriteAllBytesAsync(yard.In("yard", "scan.stl"), scan);
        yard.Write("scan.xyz", string.Concat(Enumerable.Range(0, (scan.Length - 84) / 50).Select(t => string.Create(
            CultureInfo.InvariantCulture, $"{BitConverter.ToSingle(scan, 96 + 50 * t)} {BitConverter.ToSingle(scan, 100 + 50 * t)} {BitConverter.ToSingle(scan, 104 + 50 * t)}\n"))));
        string manifest = await File.ReadAllTextAsync(Path.Combine(job, "manifest.json"));
        yard.Write("approved.txt", $"# invented\n{System.Text.Json.Nodes.JsonNode.Parse(manifest)!["design_fingerprint"]}\n");
        yard.Settle();
        return yard;
    }
}
