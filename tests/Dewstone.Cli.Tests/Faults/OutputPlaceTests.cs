using System.Diagnostics;

namespace Dewstone.Cli.Tests.Faults;

/// <summary>Places that cannot be written: read-only, full, a device, a pipe, a link.</summary>
public sealed class OutputPlaceTests : IDisposable
{
    private const string NoMount = "a small file system can only be mounted by root on Linux";

    private readonly SmallYard yard = new();

    public void Dispose() => yard.Dispose();

    [Fact]
    public async Task Read_only_place_cannot_be_created_in()
    {
        using TinyDisk? disk = TinyDisk.TryMount(yard.In("disk"), "1m");
        Assert.SkipWhen(disk is null || !disk.TryMakeReadOnly(), NoMount);
        string measured = Repository.Path("examples", "wrackline-bay", "calibration", "needles.csv");
        await AssertCannot("compile", yard.UnitFile, "-o", yard.In("disk"), "--cells", "4", "--quiet");
        await AssertCannot("compile", yard.UnitFile, "-o", yard.In("disk", "new"), "--cells", "4", "--quiet");
        await AssertCannot("new", "unit", yard.In("disk", "a.unit.yaml"));
        await AssertCannot("calibrate", "needles", measured, "-o", yard.In("disk", "a.csv"), "--quiet");
        await AssertCannot("check", yard.UnitFile, "--drawing", "--cells", "4", "--sarif", yard.In("disk", "a.sarif"));
        await AssertCannot("order", "compile", yard.Write("small.order.yaml", Order), "-o", yard.In("disk"), "--cells", "4", "--quiet");
        Assert.Empty(Directory.EnumerateFileSystemEntries(yard.In("disk")));
    }

    [Fact]
    public async Task Full_place_is_told_from_one_that_cannot_be_written_and_holds_nothing_half_written()
    {
        using TinyDisk? disk = TinyDisk.TryMount(yard.In("disk"), "64k");
        Assert.SkipWhen(disk is null, NoMount);
        await File.WriteAllTextAsync(yard.In("disk", "a.csv"), "an older one\n", TestContext.Current.CancellationToken);
        await File.WriteAllBytesAsync(yard.In("disk", "ballast"), new byte[disk!.FreeBytes], TestContext.Current.CancellationToken);
        string measured = Repository.Path("examples", "wrackline-bay", "calibration", "needles.csv");
        foreach (string[] words in (string[][])
        [
            ["calibrate", "needles", measured, "-o", yard.In("disk", "a.csv"), "--quiet"], ["new", "unit", yard.In("disk", "a.unit.yaml")],
            ["check", yard.UnitFile, "--drawing", "--cells", "4", "--sarif", yard.In("disk", "a.sarif")],
        ])
        {
            Words.Answer answer = await Words.Run(words);
            Assert.True(answer.Code == ExitCode.TryAgain, $"{words[0]}: {answer.Code} {answer.Error}{answer.Output}");
            Assert.Matches("error DW[0-9]{4}: ", answer.Error + answer.Output);
        }

        Assert.Equal(["a.csv", "ballast"], Directory.EnumerateFileSystemEntries(yard.In("disk")).Select(Path.GetFileName).Order());
        Assert.Equal("an older one\n", await File.ReadAllTextAsync(yard.In("disk", "a.csv"), TestContext.Current.CancellationToken));
    }

    // A file that is renamed over a device or a link would take its place: once `-o /dev/null` as root took /dev/null away.
    [Fact]
    public async Task Device_and_link_stay_what_they_are()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux() && Environment.UserName == "root", "devices can only be made by root on Linux");
        using (Process made = Process.Start("mknod", [yard.In("null"), "c", "1", "3"]))
        {
            await made.WaitForExitAsync(TestContext.Current.CancellationToken);
            Assert.SkipWhen(made.ExitCode != 0, "devices cannot be made here");
        }

        string measured = Repository.Path("examples", "wrackline-bay", "calibration", "needles.csv");
        yard.Write("real.csv", "an older one\n");
        File.CreateSymbolicLink(yard.In("link.csv"), yard.In("real.csv"));
        foreach (string target in new[] { "null", "link.csv" })
        {
            Words.Answer answer = await Words.Run("calibrate", "needles", measured, "-o", yard.In(target), "--quiet");
            Assert.True(answer.Code == ExitCode.Done, answer.Output + answer.Error);
        }

        Assert.Equal(0, new FileInfo(yard.In("null")).Length);
        Assert.Equal(yard.In("real.csv"), new FileInfo(yard.In("link.csv")).LinkTarget);
        Assert.StartsWith("column,row,", await File.ReadAllTextAsync(yard.In("real.csv"), TestContext.Current.CancellationToken), StringComparison.Ordinal);
        Words.Answer sarif = await Words.Run("check", yard.UnitFile, "--drawing", "--cells", "4", "--sarif", yard.In("null"), "--quiet");
        Assert.Equal((ExitCode.Done, 0L), (sarif.Code, new FileInfo(yard.In("null")).Length));
    }

    private const string Order = """
        kind: order
        version: 1
        name: Small order
        start: 2027-03-01
        due: 2027-03-31
        units:
          - {file: small.unit.yaml, quantity: 1, mark: SM}
        printers: [small.printer.yaml]

        """;

    private static async Task AssertCannot(params string[] words)
    {
        Words.Answer answer = await Words.Run(words);
        Assert.True(answer.Code == ExitCode.CannotCreate, $"{words[0]}: {answer.Code} {answer.Error}{answer.Output}");
        Assert.Matches("error DW[0-9]{4}: ", answer.Error + answer.Output);
    }
}
