using System.Text.Json;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>Files of a job folder before the judges of their formats; each judge is also shown a bad file.</summary>
public sealed class JudgedFilesTests
{
    // A held job with errors, warnings with a second place and notes, one of the errors released.
    private static readonly Lazy<Task<(string Log, byte[] Surface)>> Job = new(async () =>
    {
        using SmallYard yard = new();
        yard.Write("small.unit.yaml", SmallYard.Unit.Replace("mass: {max: 40 kg}", "mass: {max: 5 kg}\n  wall: {min: 80 mm}"));
        Words.Answer answer = await Words.Run("compile", yard.UnitFile, "-o", yard.In("out"), "--cells", "4", "--accept", "DW5001=the crane was hired");
        string folder = Directory.EnumerateDirectories(yard.In("out")).Single();
        Assert.EndsWith("small.held.job", folder, StringComparison.Ordinal);
        Assert.Equal(ExitCode.No, answer.Code);
        return (await File.ReadAllTextAsync(Path.Combine(folder, "findings.sarif")), await File.ReadAllBytesAsync(Path.Combine(folder, "predicted.glb")));
    });

    [Fact]
    public async Task Surface_has_no_fault_for_the_gltf_validator()
    {
        byte[] surface = (await Job.Value).Surface;
        using JsonDocument report = await ReportAsync(surface);
        JsonElement issues = report.RootElement.GetProperty("issues");

        Assert.True(issues.GetProperty("numErrors").GetInt32() == 0, issues.GetRawText());
        Assert.True(issues.GetProperty("numWarnings").GetInt32() == 0, issues.GetRawText());
        Assert.InRange(report.RootElement.GetProperty("info").GetProperty("totalTriangleCount").GetInt32(), 1000, 1_000_000);

        // The last numbers of the file are corners of triangles.
        surface = [.. surface];
        surface.AsSpan(surface.Length - 8).Fill(0xFE);
        using JsonDocument bad = await ReportAsync(surface);
        Assert.True(bad.RootElement.GetProperty("issues").GetProperty("numErrors").GetInt32() > 0);
    }

    [Fact]
    public async Task Log_is_valid_by_the_published_schema()
    {
        string log = (await Job.Value).Log;

        Assert.Contains("\"suppressions\"", log, StringComparison.Ordinal);
        Assert.Empty(Judges.Sarif(log));
        Assert.NotEmpty(Judges.Sarif(log.Replace("\"level\": \"warning\"", "\"level\": \"caution\"", StringComparison.Ordinal).Replace("\"level\":\"warning\"", "\"level\":\"caution\"", StringComparison.Ordinal)));
    }

    private static async Task<JsonDocument> ReportAsync(byte[] surface)
    {
        string file = Path.GetTempFileName();
        try
        {
            await File.WriteAllBytesAsync(file, surface);
            return await Judges.GltfAsync(file);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
