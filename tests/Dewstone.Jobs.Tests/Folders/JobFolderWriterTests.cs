using System.Text;
using Dewstone.Jobs.Emission;
using Dewstone.Jobs.Folders;

namespace Dewstone.Jobs.Tests.Folders;

public sealed class JobFolderWriterTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void New_job_stands_complete_in_a_new_output_folder()
    {
        JobFolderOutcome outcome = Write("one", output: folder["deep/out"]);

        Assert.Equal(JobFolderStatus.Written, outcome.Status);
        Assert.Equal(Path.Combine(folder["deep/out"], "wrack-block.job"), outcome.Path);
        Assert.Empty(outcome.Findings);
        Assert.Equal("one", Content(folder["deep/out/wrack-block.job"]));
        Assert.True(JobFolder.IsJobFolder(outcome.Path));
        Assert.Equal(["wrack-block.job"], Directory.EnumerateFileSystemEntries(folder["deep/out"]).Select(Path.GetFileName));
    }

    [Fact]
    public void Older_job_is_replaced_whole()
    {
        Write("one");
        File.WriteAllText(folder["wrack-block.job/note.txt"], "left by hand");

        Assert.Equal(JobFolderStatus.Written, Write("two").Status);
        Assert.Equal("two", Content(folder["wrack-block.job"]));
        Assert.False(File.Exists(folder["wrack-block.job/note.txt"]));
        Assert.Equal(["wrack-block.job"], folder.Names);
    }

    [Fact]
    public void Held_job_puts_the_older_job_aside_and_says_so()
    {
        Write("one");
        JobFolderOutcome outcome = Write("two", held: true);

        Assert.Equal(["DW8105"], outcome.Findings.Select(finding => finding.Code));
        Assert.Equal(["wrack-block.held.job", "wrack-block.superseded.job"], folder.Names);
        Assert.Equal("two", Content(folder["wrack-block.held.job"]));
        Assert.Equal("one", Content(folder["wrack-block.superseded.job"]));
    }

    [Fact]
    public void Held_job_after_held_job_replaces_it_and_keeps_what_was_put_aside()
    {
        Write("one");
        Write("two", held: true);
        JobFolderOutcome outcome = Write("three", held: true);

        Assert.Empty(outcome.Findings);
        Assert.Equal("three", Content(folder["wrack-block.held.job"]));
        Assert.Equal("one", Content(folder["wrack-block.superseded.job"]));
    }

    [Fact]
    public void Printable_job_removes_the_held_one_and_says_so()
    {
        Write("one", held: true);
        JobFolderOutcome outcome = Write("two");

        Assert.Equal(["DW8108"], outcome.Findings.Select(finding => finding.Code));
        Assert.Equal(["wrack-block.job"], folder.Names);
    }

    [Fact]
    public void Second_job_put_aside_replaces_the_first()
    {
        Write("one");
        Write("two", held: true);
        Write("three");
        Write("four", held: true);

        Assert.Equal(["wrack-block.held.job", "wrack-block.superseded.job"], folder.Names);
        Assert.Equal("three", Content(folder["wrack-block.superseded.job"]));
    }

    [Theory]
    [InlineData("file")]
    [InlineData("folder of another kind")]
    [InlineData("folder with a foreign manifest")]
    [InlineData("folder with a broken manifest")]
    [InlineData("link to a job folder")]
    [InlineData("dangling link")]
    public void What_is_not_ours_is_never_replaced(string what)
    {
        string place = folder["wrack-block.job"];
        switch (what)
        {
            case "file": File.WriteAllText(place, "mine"); break;
            case "link to a job folder": Write("other", name: "other"); Directory.CreateSymbolicLink(place, folder["other.job"]); break;
            case "dangling link": File.CreateSymbolicLink(place, folder["nowhere"]); break;
            default:
                Directory.CreateDirectory(place);
                File.WriteAllText(Path.Combine(place, "mine.txt"), "mine");
                if (what.EndsWith("manifest", StringComparison.Ordinal))
                {
                    File.WriteAllText(Path.Combine(place, "manifest.json"), what.Contains("broken", StringComparison.Ordinal) ? "{" : """{"format":"another"}""");
                }

                break;
        }

        string[] before = folder.Names;
        JobFolderOutcome outcome = Write("two");

        Assert.Equal(JobFolderStatus.CannotCreate, outcome.Status);
        Assert.Equal("DW8102", Assert.Single(outcome.Findings).Code);
        Assert.Equal("DW8102", JobFolderWriter.Examine(folder.Path, "wrack-block")?.Code);
        Assert.Equal(before, folder.Names);
    }

    [Theory]
    [InlineData("notes.txt")]
    [InlineData("notes.txt/deeper/out")]
    public void Output_path_through_a_file_cannot_be_created(string output)
    {
        File.WriteAllText(folder["notes.txt"], "mine");
        JobFolderOutcome outcome = Write("one", output: folder[output]);

        Assert.Equal(JobFolderStatus.CannotCreate, outcome.Status);
        Assert.Equal("DW8101", Assert.Single(outcome.Findings).Code);
        Assert.Equal("DW8101", JobFolderWriter.Examine(folder[output], "wrack-block")?.Code);
        Assert.Equal("mine", File.ReadAllText(folder["notes.txt"]));
    }

    [Fact]
    public void Output_folder_that_may_not_be_written_cannot_be_created()
    {
        // The kernel's own file system refuses new folders to everyone, the superuser included.
        const string Forbidden = "/proc/dewstone";
        Assert.SkipUnless(Directory.Exists("/proc/self"), "no /proc on this system");

        JobFolderOutcome outcome = Write("one", output: Forbidden);

        Assert.Equal(JobFolderStatus.CannotCreate, outcome.Status);
        Assert.Equal("DW8101", Assert.Single(outcome.Findings).Code);
    }

    [Fact]
    public void Nothing_to_see_to_is_no_finding() => Assert.Null(JobFolderWriter.Examine(folder["new/out"], "wrack-block"));

    [Fact]
    public void Stopped_run_leaves_nothing_and_keeps_the_older_job()
    {
        Write("one");
        Assert.Throws<OperationCanceledException>(() => JobFolderWriter.Write(Order("two"), new CancellationToken(canceled: true)));
        Assert.Throws<OperationCanceledException>(() => JobFolderWriter.Write(Order("two") with { OutputFolder = folder["new/out"] }, new CancellationToken(canceled: true)));

        Assert.Equal("one", Content(folder["wrack-block.job"]));
        Assert.Equal(["wrack-block.job"], folder.Names);
    }

    [Fact]
    public void Full_disk_is_told_from_other_faults()
    {
        // /dev/full answers every write with "no space left on device".
        Assert.SkipUnless(File.Exists("/dev/full"), "no /dev/full on this system");
        Exception full = Assert.ThrowsAny<IOException>(() =>
        {
            using FileStream stream = new("/dev/full", FileMode.Open, FileAccess.Write, FileShare.None, bufferSize: 0);
            stream.Write("x"u8);
        });

        Assert.Equal(JobFolderStatus.TryAgain, DiskFaults.StatusOf(full));
        Assert.Equal("DW8103", DiskFaults.FindingOf(full, "out/x.job").Code);
        Assert.Equal("DW8104", DiskFaults.FindingOf(new IOException("store gone"), "out/x.job").Code);
        Assert.Equal("DW8101", DiskFaults.FindingOf(new UnauthorizedAccessException("no"), "out/x.job").Code);
    }

    [Fact]
    public void Temporaries_older_than_a_day_are_swept_and_nothing_else()
    {
        string[] kept = [".wrack-block.job.tmp-abc-1-2", ".wrack-block.job.tmp-notes", ".git", "wrack-block.job.tmp-1-2-3", ".x.tmp-1-2-3"];
        foreach (string name in (string[])[.. kept, ".other.job.tmp-abc-1-1", ".b.held.job.tmp-0-1-1"])
        {
            Directory.CreateDirectory(folder[name]);
            File.WriteAllText(folder[name + "/file"], "");
            if (name != ".wrack-block.job.tmp-abc-1-2")
            {
                File.SetLastWriteTimeUtc(folder[name + "/file"], DateTime.UtcNow.AddHours(-25));
                Directory.SetLastWriteTimeUtc(folder[name], DateTime.UtcNow.AddHours(-25));
            }
        }

        Write("one");

        Assert.Equal([.. ((string[])[.. kept, "wrack-block.job"]).Order(StringComparer.Ordinal)], folder.Names);
    }

    [Theory]
    [InlineData("units/wrack-block.unit.yaml", "wrack-block")]
    [InlineData("wrack.v2.unit.yaml", "wrack.v2")]
    [InlineData("WRACK.UNIT.YAML", "WRACK")]
    [InlineData("plain.yaml", "plain")]
    [InlineData(".unit.yaml", "unit")]
    public void Name_of_a_job_is_that_of_its_unit_file(string file, string expected) => Assert.Equal(expected, JobFolder.NameOf(file));

    [Fact]
    public void Files_that_cannot_all_be_made_leave_nothing()
    {
        Assert.Throws<InvalidOperationException>(() => JobFolderWriter.Write(Order("one") with { Files = Half() }));

        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.Path));

        IEnumerable<EmittedFile> Half()
        {
            foreach (EmittedFile file in Order("one").Files)
            {
                yield return file;
            }

            throw new InvalidOperationException("half-way");
        }
    }

    [Fact]
    public void Folder_without_a_manifest_is_a_fault_of_the_program_and_leaves_nothing()
    {
        Assert.Throws<InvalidOperationException>(
            () => JobFolderWriter.Write(Order("one") with { Files = [.. Order("one").Files.Where(file => file.RelativePath != "manifest.json")] }));

        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.Path));
    }

    [Theory]
    [InlineData("../out.txt")]
    [InlineData("/etc/x")]
    [InlineData("a//b")]
    [InlineData("a\\b")]
    public void Files_outside_the_job_folder_are_a_fault_of_the_program(string path) =>
        Assert.Throws<ArgumentException>(() => JobFolderWriter.Write(Order("one") with { Files = [.. Order("one").Files, new EmittedFile(path, new byte[1])] }));

    private JobFolderOutcome Write(string content, bool held = false, string? output = null, string name = "wrack-block") =>
        JobFolderWriter.Write(Order(content, held) with { OutputFolder = output ?? folder.Path, Name = name });

    private JobFolderOrder Order(string content, bool held = false) => SmallOrder(folder.Path, content, held);

    internal static JobFolderOrder SmallOrder(string output, string content, bool held) => new()
    {
        OutputFolder = output,
        Name = "wrack-block",
        Held = held,
        Files =
        [
            new EmittedFile("manifest.json", Encoding.UTF8.GetBytes("""{"format":"dewstone-manifest","version":1}""")),
            new EmittedFile("job.json", Encoding.UTF8.GetBytes(content)),
            new EmittedFile("doses/layer-001.csv", Encoding.UTF8.GetBytes(content)),
        ],
    };

    /// <summary>What a whole job folder holds; null when it is none or any part is missing or of another job.</summary>
    internal static string? Content(string path)
    {
        if (!JobFolder.IsJobFolder(path))
        {
            return null;
        }

        string job = File.ReadAllText(Path.Combine(path, "job.json")), doses = File.ReadAllText(Path.Combine(path, "doses/layer-001.csv"));
        return job == doses ? job : null;
    }
}
