using System.Text.Json;

namespace Dewstone.Cli.Tests.Commands;

/// <summary>Many units in one run: folders, one summary, the right exit code.</summary>
public sealed class SeveralUnitsTests : IDisposable
{
    private readonly SmallYard yard = new();

    public SeveralUnitsTests()
    {
        Directory.CreateDirectory(yard.In("more", "deeper"));
        Directory.CreateDirectory(yard.In(".hidden"));
        string here = SmallYard.Unit.Replace("mix: ", "mix: ../../").Replace("printer: ", "printer: ../../");
        yard.Write(".dewstone-root", "");
        yard.Write(Path.Combine("more", "deeper", "heavy.unit.yaml"), here.Replace("max: 40 kg", "max: 5 kg").Replace("Small step", "Heavy step"));
        yard.Write(Path.Combine(".hidden", "old.unit.yaml"), "kind: unit\n");
    }

    public void Dispose() => yard.Dispose();

    [Fact]
    public async Task Folder_means_all_units_below_it_with_one_summary_and_the_worst_exit_code()
    {
        Words.Answer answer = await Words.Run("check", yard.Folder, "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.No, answer.Code);
        Assert.Contains("Small step: fit to print", answer.Output, StringComparison.Ordinal);
        Assert.Contains("Heavy step: would be held", answer.Output, StringComparison.Ordinal);
        Assert.EndsWith("2 units: 1 good, 1 held (1 error, ", answer.Output[..(answer.Output.LastIndexOf("error, ", StringComparison.Ordinal) + 7)], StringComparison.Ordinal);
        yard.Write("broken.unit.yaml", "kind: unit\nversion: 1\n");
        Words.Answer broken = await Words.Run("check", yard.Folder, "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.InputAtFault, broken.Code);
        Assert.Contains("3 units: 1 good, 1 held, 1 with input at fault or not written", broken.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Units_come_in_the_same_order_and_with_the_same_figures_for_any_threads()
    {
        Words.Answer one = await Words.Run("check", yard.Folder, "--cells", "4", "--quiet", "--json", "--threads", "1");
        Words.Answer three = await Words.Run("check", yard.Folder, "--cells", "4", "--quiet", "--json", "--threads", "3");
        Assert.Equal(one.Output, three.Output);
        using JsonDocument document = JsonDocument.Parse(one.Output);
        Assert.Equal(["Heavy step", "Small step"], document.RootElement.GetProperty("units").EnumerateArray().Select(u => u.GetProperty("name").GetString()));
    }

    [Fact]
    public async Task Folder_without_units_is_a_usage_error()
    {
        Directory.CreateDirectory(yard.In("empty"));
        Words.Answer answer = await Words.Run("check", yard.In("empty"));
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("there is no *.unit.yaml in the folder", answer.Error, StringComparison.Ordinal);
    }
}
