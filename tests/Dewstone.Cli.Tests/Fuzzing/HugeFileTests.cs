using System.Text;

namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Files that are large where descriptions are small, given to the real program under a bound of 512 MiB: refused with a code, neither out of memory nor out of stack.</summary>
public sealed class HugeFileTests : IDisposable
{
    private const int Mebibytes = 1024 * 1024;

    private readonly SmallYard yard = new();

    public void Dispose() => yard.Dispose();

    [Theory]
    [InlineData("a million keys", "DW8004")]
    [InlineData("as many keys as are read", "DW1005")]
    [InlineData("brackets", "DW1004")]
    [InlineData("dashes", "DW1004")]
    [InlineData("tables in tables", "DW1004")]
    [InlineData("aliases", "DW1003")]
    [InlineData("one long word", "DW1")]
    [InlineData("zeros", "DW1001")]
    public async Task Huge_description_is_refused(string kind, string code)
    {
        string text = kind switch
        {
            "a million keys" => Many(1_000_000, i => $"k{i}: {i}\n"),
            "as many keys as are read" => Many(300_000, i => $"k{i}: 1\n"),
            "brackets" => "box: " + new string('[', 4 * Mebibytes - 100),
            "dashes" => "box:\n  " + Many(2 * Mebibytes - 100, _ => "- "),
            "tables in tables" => "box: " + Many(Mebibytes - 100, _ => "{a: "),
            "aliases" => Many(40, i => i == 0 ? "a0: &a0 [x, x]\n" : $"a{i}: &a{i} [*a{i - 1}, *a{i - 1}, *a{i - 1}]\n"),
            "one long word" => "name: " + new string('x', 4 * Mebibytes - 100),
            _ => new string('\0', 4 * Mebibytes - 100),
        };
        Words.Answer answer = await RealProgram.RunAsync([("DOTNET_GCHeapHardLimit", "0x20000000")], "check", yard.Write("huge.unit.yaml", text), "--drawing", "--quiet");
        Assert.True(answer.Code == ExitCode.InputAtFault, $"{answer.Code} {answer.Error}");
        Assert.Contains("error " + code, answer.Output, StringComparison.Ordinal);
        Assert.True(answer.Output.Length < 100_000, $"{answer.Output.Length} characters said");
    }

    [Fact]
    public async Task Huge_table_is_refused()
    {
        string table = yard.Write("huge.csv", Many(1_000_000, i => $"{i},1,1,1\n"));
        Words.Answer needles = await RealProgram.RunAsync([("DOTNET_GCHeapHardLimit", "0x20000000")], "calibrate", "needles", table, "-o", yard.In("new.csv"), "--quiet");
        Assert.Equal(ExitCode.InputAtFault, needles.Code);
        Assert.Contains("error DW8004", needles.Output, StringComparison.Ordinal);
    }

    private static string Many(int count, Func<int, string> part)
    {
        StringBuilder text = new();
        for (int i = 0; i < count; i++)
        {
            text.Append(part(i));
        }

        return text.ToString();
    }
}
