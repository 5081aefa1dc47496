using System.Security.Cryptography;
using System.Text.Json;
using Dewstone.Jobs.Emission;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Tests.Emission;

public sealed class ManifestTests
{
    [Fact]
    public void Manifest_hashes_hold_and_are_sorted_by_path()
    {
        CompiledJob job = Samples.Job();
        JobData data = JobDataEmitter.Emit(job, Samples.Settings);
        EmittedFile picture = new("unit.png", new byte[] { 1, 2, 3 });
        IReadOnlyList<EmittedFile> files = [picture, .. data.Files];

        JsonElement[] listed = [.. Manifest(job, data, files).GetProperty("files").EnumerateArray()];

        Assert.Equal(
            files.OrderBy(file => file.RelativePath, StringComparer.Ordinal).Select(file => (file.RelativePath, file.Bytes.Length, Convert.ToHexStringLower(SHA256.HashData(file.Bytes.Span)))),
            listed.Select(file => (file.GetProperty("path").GetString()!, file.GetProperty("bytes").GetInt32(), file.GetProperty("sha256").GetString()!)));
    }

    [Fact]
    public void Manifest_water_is_the_sum_of_the_dose_tables()
    {
        CompiledJob job = Samples.Job();
        JobData data = JobDataEmitter.Emit(job, Samples.Settings);
        decimal tables = data.Files.Where(file => file.RelativePath.StartsWith("doses/", StringComparison.Ordinal))
            .SelectMany(file => System.Text.Encoding.UTF8.GetString(file.Bytes.Span).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1))
            .Sum(line => decimal.Parse(line.Split(',')[9]));

        JsonElement totals = Manifest(job, data, data.Files).GetProperty("totals");

        Assert.Equal(112.66m, tables);
        Assert.Equal(tables, totals.GetProperty("water_ml").GetDecimal());
        Assert.Equal(4, totals.GetProperty("doses").GetInt32());
        Assert.Equal(2, totals.GetProperty("layers_with_water").GetInt32());
        Assert.Equal(768m, totals.GetProperty("flush_ml").GetDecimal());
        Assert.Equal(196.11m, totals.GetProperty("printing_s").GetDecimal());
        Assert.Equal(0.000381235m, totals.GetProperty("hardened_m3").GetDecimal());
    }

    [Fact]
    public void Requirement_has_the_one_form()
    {
        CompiledJob job = Samples.Job();
        JobData data = JobDataEmitter.Emit(job, Samples.Settings);

        string[] names = [.. Manifest(job, data, data.Files).GetProperty("requirements")[0].EnumerateObject().Select(member => $"{member.Name}={member.Value}")];

        Assert.Equal(
            [
                "id=mass.max", "feature=", "file=units/pebble.unit.yaml", "line=30", "quantity=mass on the hook", "op=<=", "limit=2", "value=0.765432",
                "margin=1.23457", "unit=kg", "met=True", "accepted=False",
            ],
            names);
    }

    [Fact]
    public void Accepted_finding_stands_with_reason_and_place_and_the_job_is_ready()
    {
        CompiledJob job = Samples.Build(needles: null, tonight: null, [Samples.SolidError with { AcceptedBecause = "trial piece" }]);
        JsonElement manifest = Manifest(job, JobDataEmitter.Emit(job, Samples.Settings), []);
        JsonElement accepted = manifest.GetProperty("accepted")[0];

        Assert.Equal("ready", manifest.GetProperty("state").GetString());
        Assert.Equal("DW3999", accepted.GetProperty("code").GetString());
        Assert.Equal("trial piece", accepted.GetProperty("reason").GetString());
        Assert.Equal("units/pebble.unit.yaml", accepted.GetProperty("place").GetProperty("file").GetString());
        Assert.Equal("held", Manifest(Samples.HeldJob(), JobDataEmitter.Emit(Samples.HeldJob(), Samples.Settings), []).GetProperty("state").GetString());
    }

    [Fact]
    public void Conditions_list_only_what_differs()
    {
        Tonight tonight = new() { MixBatch = "B17", LooseDensity = new Density(1700.0), BedTemperature = new Temperature(12.0), CuringTemperature = new Temperature(15.0) };
        NeedleTable needles = new() { Needles = [new NeedleState { Column = 1, Row = 1, Condition = NeedleCondition.Blocked }, new NeedleState { Column = 2, Row = 1 }] };
        CompiledJob job = Samples.Build(needles, tonight, findings: []);

        JsonElement conditions = Manifest(job, JobDataEmitter.Emit(job, Samples.Settings), []).GetProperty("conditions");

        Assert.Equal(
            ["mix_batch B17 ", "bed_temperature 12 20", "needles_not_ok 1 0"],
            conditions.EnumerateArray().Select(item => $"{item.GetProperty("what")} {item.GetProperty("value")} {item.GetProperty("usual")}"));
        Assert.Empty(Manifest(Samples.Job(), JobDataEmitter.Emit(Samples.Job(), Samples.Settings), []).GetProperty("conditions").EnumerateArray());
    }

    private static JsonElement Manifest(CompiledJob job, JobData data, IReadOnlyList<EmittedFile> files) =>
        JsonDocument.Parse(ManifestEmitter.Emit(job, data, files, Samples.Settings.NameOfFile).Bytes).RootElement;
}
