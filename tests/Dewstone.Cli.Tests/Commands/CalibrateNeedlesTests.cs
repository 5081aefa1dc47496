using System.Text.Json;
using Dewstone.Model.Description;
using Dewstone.Reading;

namespace Dewstone.Cli.Tests.Commands;

public sealed class CalibrateNeedlesTests : IDisposable
{
    private const string Header = "column,row,asked_ml,weighed_g,water_temperature_c,air_pressure_hpa\n";

    private readonly string folder = Directory.CreateTempSubdirectory("dewstone-calibrate-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    // 2 x 2 needles, 6 weighings each at 20 degC, 1013 hPa (Z = 1.0028 mL/g); column 2, row 2 gives almost nothing.
    [Fact]
    public async Task Needles_file_is_written_and_read_back_by_the_job_reader()
    {
        string data = Write("checks.csv", Checks()), target = In("new.needles.csv");
        byte[] before = await File.ReadAllBytesAsync(data);
        Words.Answer answer = await Words.Run("calibrate", "needles", data, "-o", target, "--pictures", In("charts"));

        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        NeedleTable table = DescriptionReader.ReadNeedles(target, new Head { Columns = 2, Rows = 2 }).Value!;
        Assert.Equal([NeedleCondition.Ok, NeedleCondition.Ok, NeedleCondition.Ok, NeedleCondition.Blocked], table.Needles.Select(needle => needle.Condition));
        Assert.All(table.Needles.Take(3), needle => Assert.InRange(needle.Gain, 0.97, 0.99));
        Assert.Contains("4 needles weighed: 3 ok, 0 limited, 1 blocked", answer.Output, StringComparison.Ordinal);
        Assert.Contains("clean column 2, row 2", answer.Output, StringComparison.Ordinal);
        Assert.Contains("4 weighed, 1 blocked (crossed out), 0 limited (framed)", await File.ReadAllTextAsync(In("charts", "needles.svg")), StringComparison.Ordinal);
        Assert.Equal(before, await File.ReadAllBytesAsync(data));
        Assert.Equal(["charts", "checks.csv", "new.needles.csv"], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName).Order());
    }

    [Fact]
    public async Task Json_fits_the_stored_schema()
    {
        string data = Write("checks.csv", Checks());
        Words.Answer first = await Words.Run("calibrate", "needles", data, "-o", In("old.csv"), "--json", "--quiet");
        Words.Answer second = await Words.Run("calibrate", "needles", data, "-o", In("new.csv"), "--previous", In("old.csv"), "--json");
        foreach (Words.Answer answer in new[] { first, second })
        {
            Assert.Equal((ExitCode.Done, ""), (answer.Code, answer.Error));
            Repository.AssertValid("calibrate-needles.schema.json", answer.Output);
        }

        using JsonDocument told = JsonDocument.Parse(second.Output);
        Assert.Equal(0.0, told.RootElement.GetProperty("needles")[0].GetProperty("drift").GetDouble(), 1e-4);
    }

    [Theory]
    [InlineData("DW8320", "1:12", "column,row,asked,weighed_g,water_temperature_c,air_pressure_hpa\n1,1,20,19.9,20,1013\n")]
    [InlineData("DW8321", "2:1", Header + "1,1,20,19,9,20,1013\n")]
    [InlineData("DW8323", "2:8", Header + "1,1,20,,20,1013\n")]
    public async Task Bad_data_end_with_2_and_write_nothing(string code, string place, string text)
    {
        string data = Write("checks.csv", text);
        Words.Answer answer = await Words.Run("calibrate", "needles", data, "-o", In("new.csv"));
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains(code, answer.Output, StringComparison.Ordinal);
        Assert.Contains($"checks.csv:{place}", answer.Output, StringComparison.Ordinal);
        Assert.Equal(["checks.csv"], Directory.EnumerateFileSystemEntries(folder).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Input_is_never_overwritten()
    {
        string data = Write("checks.csv", Checks());
        foreach (string target in new[] { data, In("charts", "..", "checks.csv") })
        {
            Words.Answer answer = await Words.Run("calibrate", "needles", data, "-o", target);
            Assert.Equal(ExitCode.InputAtFault, answer.Code);
            Assert.Contains("DW8327", answer.Output, StringComparison.Ordinal);
        }

        Assert.Equal(Checks(), await File.ReadAllTextAsync(data));
    }

    [Fact]
    public async Task Missing_files_and_folders_are_told()
    {
        Words.Answer missing = await Words.Run("calibrate", "needles", In("no.csv"), "-o", In("new.csv"));
        Assert.Equal(ExitCode.InputAtFault, missing.Code);
        Assert.Contains("DW8001", missing.Output, StringComparison.Ordinal);
        Words.Answer nowhere = await Words.Run("calibrate", "needles", Write("checks.csv", Checks()), "-o", In("no", "such", "new.csv"));
        Assert.Equal(ExitCode.CannotCreate, nowhere.Code);
        Assert.Contains("DW8328", nowhere.Output, StringComparison.Ordinal);
    }

    private static string Checks() => Header + string.Concat(
        from row in new[] { 1, 2 }
        from column in new[] { 1, 2 }
        from reading in Enumerable.Range(0, 6)
        let asked = new[] { 10.0, 20.0, 40.0 }[reading % 3]
        let gain = (column, row) == (2, 2) ? 0.02 : 0.98 + 0.002 * ((reading * 3 % 5) - 2)
        select $"{column},{row},{asked:0},{asked * gain / 1.0028:0.000},20,1013\n");

    private string In(params string[] parts) => Path.Combine([folder, .. parts]);

    private string Write(string name, string text)
    {
        File.WriteAllText(In(name), text);
        return In(name);
    }
}
