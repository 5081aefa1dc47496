namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Faults in reading words and files that damaged input brought to light, each by its own small case.</summary>
public sealed class FoundFaultTests : IDisposable
{
    private readonly FuzzYard yard = new();

    public FoundFaultTests()
    {
        FuzzFiles.Write(yard);
        yard.Settle();
    }

    public void Dispose() => yard.Dispose();

    // Opening a pipe waits for whoever writes into it: once for ever.
    [Theory]
    [InlineData("check", "PIPE", "--drawing")]
    [InlineData("check", "UNIT", "--drawing", "--mix", "PIPE")]
    [InlineData("check", "UNIT", "--drawing", "--needles", "PIPE")]
    [InlineData("order", "status", "PIPE", "-o", "OUT")]
    [InlineData("calibrate", "needles", "PIPE", "-o", "OUT/new.needles.csv")]
    public async Task Pipe_that_gives_nothing_is_refused(params string[] words)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "needs named pipes");
        Words.Answer answer = await Run(words);
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("pipe: error DW8002: ", answer.Output, StringComparison.Ordinal);
        Assert.Contains("nothing comes out of it", answer.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pipe_that_gives_a_description_is_read()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() || OperatingSystem.IsMacOS(), "needs named pipes");
        string text = await File.ReadAllTextAsync(yard.In("yard", "fuzz.mix.yaml"), TestContext.Current.CancellationToken);
        Task writing = Task.Run(() => File.WriteAllText(yard.In("yard", "pipe"), text), TestContext.Current.CancellationToken);
        Words.Answer answer = await Run("check", "UNIT", "--drawing", "--mix", "PIPE", "--cells", "4", "--quiet");
        await writing;
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
    }

    [Theory]
    [InlineData("/dev/zero", "error DW8004: ")]
    [InlineData("/dev/full", "error DW8004: ")]
    [InlineData("/dev/null", "error DW1008: ")]
    public async Task Device_in_place_of_a_description_is_refused(string device, string code)
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "needs /dev/full");
        Words.Answer answer = await Run("check", device, "--drawing");
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains(code, answer.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("check", "UNIT", "--drawing", "--site", "UNIT", "--site", "")]
    [InlineData("calibrate", "needles", "", "-o", "OUT/new.needles.csv")]
    [InlineData("calibrate", "mix", "", "--mix", "", "-o", "OUT/new.mix.yaml")]
    [InlineData("order", "status", "", "-o", "OUT")]
    [InlineData("verify", "OUT", "--approved", "")]
    [InlineData("verify", "")]
    [InlineData("compile", "UNIT", "-o", "")]
    [InlineData("survey", "OUT", "--weights", "UNIT", "-o", "")]
    [InlineData("check", "UNIT", "--drawing", "--root=")]
    [InlineData("check", "UNIT", "--sarif", "--drawing")]
    [InlineData("survey", "OUT", "--weights", "-o", "UNIT")]
    [InlineData("verify", "OUT\u001b[2J", "\r", "\u0085")]
    [InlineData("check", "UNIT", "OUT\u001b[31mred", "--drawing")]
    [InlineData("[suggest:3]", "[suggest:3]", "explain")]
    [InlineData("limits", "--mix", "", "--printer", "")]
    [InlineData("survey", "OUT", "--scan", "")]
    [InlineData("check", "UNIT", "--drawing", "--accept", "DW3012=seen\u001b[2J")]
    public async Task Empty_word_where_a_file_is_due_is_the_inputs_fault(params string[] words)
    {
        Words.Answer answer = await Run(words);
        Assert.True(answer.Code == ExitCode.InputAtFault, $"{answer.Code}: {answer.Error}");
        Assert.Matches("error DW[0-9]{4}: ", answer.Output + answer.Error);
        Assert.DoesNotContain(answer.Output + answer.Error, c => char.IsControl(c) && c is not ('\n' or '\t'));
    }

    [Theory]
    [InlineData("\u0007")]
    [InlineData("\u001b[2J")]
    [InlineData("TEXT")]
    public async Task Name_in_a_table_that_is_no_name_is_refused(string name)
    {
        string specimen = name == "TEXT" ? new string('x', 5000) : "C1" + name;
        yard.Write("data-absorption.csv", $"specimen,time_s,uptake_g,area_cm2\n{specimen},60,19.28,50\n");
        Words.Answer answer = await Run("calibrate", "mix", yard.In("yard", "data-absorption.csv"), "--mix", yard.In("yard", "fuzz.mix.yaml"), "-o", "OUT/new.mix.yaml");
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains("data-absorption.csv:2:1: error DW8322: ", answer.Output, StringComparison.Ordinal);
        Assert.DoesNotContain(answer.Output, c => char.IsControl(c) && c != '\n');
        Assert.True(answer.Output.Length < 1000, answer.Output);
    }

    [Fact]
    public async Task Words_with_control_characters_are_shown_without_them()
    {
        Words.Answer answer = await Run("explain", "\u001b[2Jx\u0007");
        Assert.Equal((ExitCode.InputAtFault, "dewstone: error DW0090: there is no finding '\u00b7[2Jx\u00b7'; 'dewstone explain' lists them all.\n"), (answer.Code, answer.Error));
    }

    private Task<Words.Answer> Run(params string[] words) => Words.Run([.. words.Select(word => word
        .Replace("PIPE", yard.In("yard", "pipe"), StringComparison.Ordinal).Replace("UNIT", yard.In("yard", "fuzz.unit.yaml"), StringComparison.Ordinal)
        .Replace("OUT", yard.In("work", "out"), StringComparison.Ordinal))]);
}
