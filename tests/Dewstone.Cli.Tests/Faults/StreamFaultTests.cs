namespace Dewstone.Cli.Tests.Faults;

/// <summary>Streams that take no more, are closed, or are read no further. Nothing half-done is taken for done, and a job folder is never written into by mistake.</summary>
public sealed class StreamFaultTests : IDisposable
{
    private readonly SmallYard yard = new();

    public StreamFaultTests() => Assert.SkipUnless(OperatingSystem.IsLinux(), "needs a shell and /dev/full");

    public void Dispose() => yard.Dispose();

    [Theory]
    [InlineData("--version > /dev/full", ExitCode.TryAgain)]
    [InlineData("explain > /dev/full", ExitCode.TryAgain)]
    [InlineData("check --drawing --json --cells 4 small.unit.yaml > /dev/full", ExitCode.TryAgain)]
    [InlineData("explain >&-", ExitCode.CannotCreate)]
    public async Task Output_that_cannot_be_written_is_said_with_its_code(string words, int code)
    {
        Words.Answer answer = await Shell.RunAsync(yard.Folder, "dotnet \"$DEWSTONE\" " + words);
        Assert.Equal(code, answer.Code);
        Assert.Contains("dewstone: error DW0091: standard output cannot be written: ", answer.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", answer.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("bake 2> /dev/full", ExitCode.InputAtFault)]
    [InlineData("bake 2>&-", ExitCode.InputAtFault)]
    [InlineData("explain <&-", ExitCode.Done)]
    [InlineData("explain | head -1 > /dev/null; exit ${PIPESTATUS[0]}", ExitCode.Done)]
    [InlineData("check --drawing --cells 4 small.unit.yaml 2>&1 | true; exit ${PIPESTATUS[0]}", ExitCode.Done)]
    public async Task Stream_that_nobody_reads_changes_no_exit_code(string words, int code) =>
        Assert.Equal(code, (await Shell.RunAsync(yard.Folder, "dotnet \"$DEWSTONE\" " + words)).Code);

    // With streams closed the next file that is opened may get their number: what is said must not land in the job.
    [Fact]
    public async Task Job_compiled_with_closed_streams_is_the_same_job()
    {
        Words.Answer closed = await Shell.RunAsync(yard.Folder, "dotnet \"$DEWSTONE\" compile small.unit.yaml -o closed --cells 4 <&- >&- 2>&-");
        Assert.True(closed.Code is ExitCode.CannotCreate or ExitCode.Done, $"{closed.Code}");
        Words.Answer plain = await Words.Run("compile", yard.UnitFile, "-o", yard.In("plain"), "--cells", "4", "--quiet");
        Assert.Equal(ExitCode.Done, plain.Code);
        Assert.Equal(SmallYard.Hashes(yard.In("plain")), SmallYard.Hashes(yard.In("closed")));
    }
}
