namespace Dewstone.Cli.Tests.Faults;

/// <summary>Locale, time zone, the clock, names in other scripts and of the greatest length.</summary>
public sealed class SurroundingsTests : IDisposable
{
    private readonly SmallYard yard = new();

    public void Dispose() => yard.Dispose();

    [Fact]
    public async Task Locale_and_time_zone_change_no_byte_and_no_word()
    {
        string[] words = ["compile", yard.UnitFile, "--cells", "4", "--quiet", "-o"];
        Words.Answer plain = await RealProgram.RunAsync([], [.. words, yard.In("out")]);
        Words.Answer abroad = await RealProgram.RunAsync(
            [("LANG", "de_DE.UTF-8"), ("LC_ALL", "ar_SA.UTF-8"), ("LC_NUMERIC", "fr_FR"), ("TZ", "Asia/Kathmandu"), ("DOTNET_SYSTEM_GLOBALIZATION_INVARIANT", "0")], [.. words, yard.In("abroad")]);
        Assert.Equal((ExitCode.Done, ExitCode.Done), (plain.Code, abroad.Code));
        Assert.Equal(SmallYard.Hashes(yard.In("out")), SmallYard.Hashes(yard.In("abroad")));
        Assert.Equal(plain.Output, abroad.Output.Replace(yard.In("abroad"), yard.In("out"), StringComparison.Ordinal));
    }

    // The heap of a machine with little memory, by the runtime's own variable: want of it shows in loops on several threads, whose faults come bundled.
    [Theory]
    [InlineData("0x5000000")]
    [InlineData("0x9000000")]
    public async Task Too_little_memory_is_another_try_and_leaves_nothing(string bytes)
    {
        string block = Repository.Path("examples", "wrackline-bay", "units", "wrack-block.unit.yaml");
        Words.Answer answer = await RealProgram.RunAsync([("DOTNET_GCHeapHardLimit", bytes)], "compile", block, "--quiet", "-o", yard.In("out"));
        Assert.True(answer.Code == ExitCode.TryAgain, $"{answer.Code}: {answer.Output}{answer.Error}");
        Assert.Contains("error DW0092: out of memory", answer.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(yard.In("out")));
    }

    // A clock that was set back leaves files of the future.
    [Fact]
    public async Task Files_of_the_future_are_replaced_and_put_back_as_any_others()
    {
        await Compile("out");
        SortedDictionary<string, string> first = SmallYard.Hashes(yard.In("out"));
        Directory.CreateDirectory(yard.In("out", ".small.job.tmp-00-1-1"));
        Directory.Move(yard.In("out", "small.job"), yard.In("out", ".small.job.old-00-1-1"));
        foreach (string path in Directory.EnumerateFileSystemEntries(yard.Folder, "*", new EnumerationOptions { RecurseSubdirectories = true, AttributesToSkip = FileAttributes.None }))
        {
            Directory.SetLastWriteTimeUtc(path, new DateTime(2107, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        }

        Words.Answer verified = await Words.Run("verify", yard.In("out", "small.job"), "--quiet");
        Assert.True(verified.Code == ExitCode.Done, verified.Output + verified.Error);
        await Compile("out");
        Assert.Equal(first, SmallYard.Hashes(yard.In("out", "small.job")).ToDictionary(file => "small.job/" + file.Key, file => file.Value));
    }

    [Theory]
    [InlineData("\u5ca9\u7901 \u00dcn\u00efc\u00f6de '$x' #1")]
    [InlineData("a b\nc\td")]
    [InlineData("-o")]
    public async Task Names_of_any_script_and_sign_do(string name)
    {
        string file = yard.Write(name + ".unit.yaml", SmallYard.Unit);
        Words.Answer answer = await Words.Run("check", file, "--drawing", "--cells", "4", "--quiet");
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        Words.Answer broken = await Words.Run("check", yard.Write(name + "2.unit.yaml", SmallYard.Unit + "\nx: 1\n"), "--drawing");
        Assert.Equal(ExitCode.InputAtFault, broken.Code);
        Assert.Contains("error DW1011: ", broken.Output, StringComparison.Ordinal);
    }

    // 255 bytes are the longest name of a file on Linux; the job folder's hidden name while it is built is longer than the unit's.
    [Fact]
    public async Task Names_and_paths_too_long_are_refused_and_nothing_is_left()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "lengths as Linux has them");
        string file = yard.Write(new string('x', 255 - ".unit.yaml".Length) + ".unit.yaml", SmallYard.Unit);
        Words.Answer longest = await Words.Run("compile", file, "-o", yard.In("out"), "--cells", "4", "--quiet");
        Assert.True(longest.Code == ExitCode.CannotCreate, $"{longest.Code} {longest.Output}{longest.Error}");
        Assert.Contains("error DW8", longest.Output, StringComparison.Ordinal);
        Assert.False(Directory.Exists(yard.In("out")));
        foreach (string path in new[] { new string('y', 256) + ".unit.yaml", string.Concat(Enumerable.Repeat("deep/", 1000)) + "z.unit.yaml" })
        {
            Words.Answer read = await Words.Run("check", yard.In(path), "--drawing");
            Assert.Equal(ExitCode.InputAtFault, read.Code);
            Assert.Matches("error DW800[12]: ", read.Output);
            Words.Answer written = await Words.Run("compile", yard.UnitFile, "-o", yard.In(path), "--cells", "4", "--quiet");
            Assert.True(written.Code == ExitCode.CannotCreate, $"{written.Code} {written.Output}{written.Error}");
            Assert.Equal(ExitCode.CannotCreate, (await Words.Run("new", "unit", yard.In(path))).Code);
        }

        Assert.Equal(4, Directory.EnumerateFileSystemEntries(yard.Folder).Count());
    }

    private async Task Compile(string folder)
    {
        Words.Answer answer = await Words.Run("compile", yard.UnitFile, "-o", yard.In(folder), "--cells", "4", "--quiet");
        Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
    }
}
