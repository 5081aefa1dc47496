using Dewstone.Model.Diagnostics;

namespace Dewstone.Cli.Tests.Commands;

public sealed class UsageTests
{
    [Theory]
    [InlineData("Required argument 'UNIT'", "check")]
    [InlineData("Option '--output' is required", "compile", "a.unit.yaml")]
    [InlineData("--cells takes a whole number from 4 to 16, not '1,5'", "check", "a.unit.yaml", "--cells", "1,5")]
    [InlineData("--cells takes a whole number from 4 to 16, not '3'", "check", "a.unit.yaml", "--cells", "3")]
    [InlineData("--cells takes a whole number from 4 to 16, not '8.0'", "check", "a.unit.yaml", "--cells", "8.0")]
    [InlineData("--trials takes a whole number from 1 to 10000, not '0'", "check", "a.unit.yaml", "--trials", "0")]
    [InlineData("--trials takes a whole number from 1 to 10000, not '10001'", "compile", "a.unit.yaml", "-o", "out", "--trials", "10001")]
    [InlineData("--drawing stops before wetting", "check", "a.unit.yaml", "--drawing", "--trials", "5")]
    [InlineData("--threads takes a whole number from 1 to 256, not '0'", "check", "a.unit.yaml", "--threads", "0")]
    [InlineData("--threads takes a whole number from 1 to 256, not '-2'", "check", "a.unit.yaml", "--threads=-2")]
    [InlineData("unknown option '--celsl'; did you mean '--cells'?", "check", "--celsl")]
    [InlineData("unknown option '-x'; put ./ before", "calibrate", "mix", "-x", "--mix", "a", "-o", "b")]
    [InlineData("--accept takes a code and a reason", "check", "a.unit.yaml", "--accept", "DW3012")]
    [InlineData("--accept takes a code and a reason", "check", "a.unit.yaml", "--accept", "DW3012=  ")]
    [InlineData("there is no finding 'DW9999'", "check", "a.unit.yaml", "--accept", "DW9999=why not")]
    [InlineData("stops before wetting and cannot be released", "check", "a.unit.yaml", "--accept", "DW1001=why not")]
    [InlineData("there is no kind 'reef'", "schema", "reef")]
    [InlineData("there is no finding 'DW0001'", "explain", "DW0001")]
    [InlineData("both be written to small.job", "compile", "a/small.unit.yaml", "b/small.unit.yaml", "-o", "out")]
    [InlineData("Option '--printer' is required", "limits", "--mix", "a.mix.yaml")]
    [InlineData("Option '--mix' is required", "limits", "--printer", "a.printer.yaml")]
    [InlineData("--water-cement takes a number from 0.1 to 2, such as 0.55, not '0,6'", "limits", "--mix", "a", "--printer", "b", "--water-cement", "0,6")]
    [InlineData("try: dewstone calibrate needles --help", "calibrate", "needles", "a.csv")]
    [InlineData("Option '--mix' is required", "calibrate", "mix", "a.csv", "-o", "b.mix.yaml")]
    [InlineData("--exponent takes a whole number from 1 to 12 or scan, not '0'", "calibrate", "mix", "a.csv", "--mix", "a", "-o", "b", "--exponent", "0")]
    [InlineData("there is no command 'bake'; the commands are compile, check,", "bake")]
    [InlineData("there is no command 'compil'; did you mean 'compile'?", "compil", "a.unit.yaml")]
    [InlineData("a command is missing; the commands are needles, mix.", "calibrate")]
    [InlineData("a command is missing; the commands are compile,")]
    public async Task Words_that_cannot_be_carried_out_end_with_2_and_one_message(string message, params string[] words)
    {
        Words.Answer answer = await Words.Run(words);
        Assert.Equal(ExitCode.InputAtFault, answer.Code);
        Assert.Contains(message, answer.Error, StringComparison.Ordinal);
        Assert.Equal("", answer.Output);
        Assert.DoesNotContain("   at ", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("compile")]
    [InlineData("check")]
    [InlineData("limits")]
    [InlineData("resume")]
    [InlineData("calibrate")]
    [InlineData("survey")]
    [InlineData("explain")]
    [InlineData("new")]
    [InlineData("schema")]
    public async Task Help_of_each_command_says_what_it_is_for(string command)
    {
        Words.Answer all = await Words.Run("--help");
        Words.Answer one = await Words.Run(command, "--help");
        Assert.Equal((ExitCode.Done, ExitCode.Done), (all.Code, one.Code));
        Assert.Contains($"\n  {command} ", all.Output, StringComparison.Ordinal);
        Assert.Contains("Usage:", one.Output, StringComparison.Ordinal);
        Assert.All(all.Output.Split('\n'), line => Assert.True(line.Length < 140, line));
    }

    [Fact]
    public async Task Version_is_the_programs()
    {
        Words.Answer answer = await Words.Run("--version");
        Assert.Equal(ToolVersion.Text, answer.Output.Trim());
        Assert.Matches("^[0-9]+\\.[0-9]+\\.[0-9]+", ToolVersion.Text);
    }

    [Fact]
    public async Task Completion_suggests_commands_options_and_codes()
    {
        Words.Answer commands = await Words.Run("[suggest:11]", "dewstone ch");
        Assert.Contains("check", commands.Output.Split('\n'));
        Words.Answer options = await Words.Run("[suggest:20]", "dewstone check --dra");
        Assert.Contains("--drawing", options.Output.Split('\n'));
        Words.Answer codes = await Words.Run("[suggest:20]", "dewstone explain DW1");
        Assert.Contains("DW1001", codes.Output.Split('\n'));
    }

    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(1, 0, 1)]
    [InlineData(2, 1, 2)]
    [InlineData(75, 2, 75)]
    [InlineData(73, 75, 73)]
    [InlineData(73, 70, 70)]
    public void Combine_takes_the_first_of_70_73_75_2_1_0(int first, int second, int expected)
    {
        Assert.Equal(expected, ExitCode.Combine([first, second]));
        Assert.Equal(expected, ExitCode.Combine([second, first]));
    }

    [Fact]
    public async Task Explain_has_a_page_for_every_code()
    {
        Words.Answer list = await Words.Run("explain");
        foreach (FindingKind kind in DiagnosticCatalogue.All)
        {
            Words.Answer page = await Words.Run("explain", kind.Code);
            Assert.Equal(ExitCode.Done, page.Code);
            Assert.StartsWith($"{kind.Code} ", page.Output, StringComparison.Ordinal);
            foreach (string heading in new[] { "What it means", "Why it matters", "What to do" })
            {
                Assert.Contains($"\n{heading}\n  ", page.Output, StringComparison.Ordinal);
            }

            Assert.Contains(kind.Code, list.Output, StringComparison.Ordinal);
        }
    }
}
