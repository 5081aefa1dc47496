using Dewstone.Jobs.Folders;

namespace Dewstone.Jobs.Tests.Folders;

/// <summary>
/// Makes each change of the disk fail in turn, or kills the program there, and looks what is left. Whatever happens, an older job is there
/// whole, or the new one is, and the next run finds its way.
/// </summary>
public sealed class InterruptedReplacementTests
{
    private const int Never = int.MaxValue;

    public static TheoryData<string> Histories => ["new", "ready over ready", "held over ready", "held over ready and superseded", "ready over held"];

    [Theory]
    [MemberData(nameof(Histories))]
    public void Failing_change_leaves_nothing_half_written_and_loses_no_job(string history)
    {
        int changes = CountChanges(history);
        Assert.InRange(changes, 6, 40);
        for (int at = 1; at <= changes; at++)
        {
            using TemporaryFolder folder = Prepared(history);
            Dictionary<string, string?> before = Jobs(folder);
            FailingDisk disk = new(() => new IOException("No space left on device", 28), at);

            JobFolderOutcome outcome = JobFolderWriter.Write(Next(folder, history), disk, CancellationToken.None);

            string where = $"{history}, change {at}: {disk.Log[at - 1]}";
            if (outcome.Status == JobFolderStatus.Written)
            {
                // Only tidying up may fail without failing the job.
                AssertNewStands(folder, history, where);
                continue;
            }

            Assert.Equal(JobFolderStatus.TryAgain, outcome.Status);
            Assert.True(outcome.Findings.Count == 1 && outcome.Findings[0].Code == "DW8103", where);
            Assert.True(before.SequenceEqual(Jobs(folder)), $"{where}: {string.Join(' ', folder.Names)}");
            AssertNoHidden(folder, where);
        }
    }

    [Theory]
    [MemberData(nameof(Histories))]
    public void Killed_program_loses_no_job_and_the_next_run_succeeds(string history)
    {
        int changes = CountChanges(history);
        for (int at = 1; at <= changes; at++)
        {
            using TemporaryFolder folder = Prepared(history);
            string[] older = [.. Jobs(folder).Where(job => job.Key != "wrack-block.held.job" && job.Key != Replaced(history)).Select(job => job.Value!)];
            FailingDisk disk = new(fault: null, at);
            try
            {
                JobFolderWriter.Write(Next(folder, history), disk, CancellationToken.None);
            }
            catch (Killed)
            {
                // As intended.
            }

            string where = $"{history}, killed at change {at}: {disk.Log[at - 1]}";

            // A command that only reads puts back what was being replaced.
            foreach (string job in (string[])["wrack-block.job", "wrack-block.held.job", "wrack-block.superseded.job"])
            {
                JobFolderRecovery.PutBack(folder[job]);
            }

            Dictionary<string, string?> jobs = Jobs(folder);
            Assert.True(jobs.Values.All(content => content is not null), $"{where}: a half-written job stands under a job's name");
            Assert.True(older.All(content => jobs.ContainsValue(content)), $"{where}: lost one of {string.Join(' ', older)}, left {string.Join(' ', jobs)}");
            if (Replaced(history) is { Length: > 0 } name)
            {
                Assert.True(jobs.GetValueOrDefault(name) is not null, $"{where}: {name} is gone");
            }

            Assert.Equal(JobFolderStatus.Written, JobFolderWriter.Write(Next(folder, history)).Status);
            AssertNewStands(folder, history, where);
        }
    }

    [Fact]
    public void Older_job_that_cannot_be_removed_is_said_and_the_new_one_stands()
    {
        using TemporaryFolder folder = Prepared("ready over ready");
        FailingDisk disk = new(() => new IOException("busy", 16), CountChanges("ready over ready"));

        JobFolderOutcome outcome = JobFolderWriter.Write(Next(folder, "ready over ready"), disk, CancellationToken.None);

        Assert.StartsWith("delete ", disk.Log[^1], StringComparison.Ordinal);
        Assert.Equal(JobFolderStatus.Written, outcome.Status);
        Assert.Equal(["DW8107"], outcome.Findings.Select(finding => finding.Code));
        Assert.Equal("new", JobFolderWriterTests.Content(folder["wrack-block.job"]));
    }

    [Fact]
    public void Older_job_under_its_hidden_name_is_put_back_and_said()
    {
        using TemporaryFolder folder = Prepared("ready over ready");
        Directory.Move(folder["wrack-block.job"], folder[".wrack-block.job.old-abc-1-1"]);

        Assert.Equal(["DW8106"], JobFolderRecovery.PutBack(folder["wrack-block.job"]).Select(finding => finding.Code));
        Assert.Equal("one", JobFolderWriterTests.Content(folder["wrack-block.job"]));
        Assert.Empty(JobFolderRecovery.PutBack(folder["wrack-block.job"]));
        Assert.Empty(JobFolderRecovery.PutBack(folder["nowhere/wrack-block.job"]));
    }

    [Fact]
    public void Two_runs_at_once_end_with_one_whole_job()
    {
        using TemporaryFolder folder = new();
        Parallel.For(0, 60, new ParallelOptions { MaxDegreeOfParallelism = 4 }, run =>
        {
            JobFolderOutcome outcome = JobFolderWriter.Write(JobFolderWriterTests.SmallOrder(folder.Path, $"run {run}", held: false));
            Assert.True(outcome.Status is JobFolderStatus.Written or JobFolderStatus.TryAgain, string.Join(" ", outcome.Findings.Select(finding => $"{finding.Code} {finding.Message}")));
        });

        JobFolderRecovery.PutBack(folder["wrack-block.job"]);
        Assert.StartsWith("run ", JobFolderWriterTests.Content(folder["wrack-block.job"]), StringComparison.Ordinal);
    }

    private static string Replaced(string history) => history switch
    {
        "ready over ready" => "wrack-block.job",
        "held over ready and superseded" => "wrack-block.superseded.job",
        _ => "",
    };

    private static JobFolderOrder Next(TemporaryFolder folder, string history) =>
        JobFolderWriterTests.SmallOrder(folder.Path, "new", held: history.StartsWith("held", StringComparison.Ordinal));

    private static int CountChanges(string history)
    {
        using TemporaryFolder folder = Prepared(history);
        FailingDisk disk = new(fault: null, Never);
        Assert.Equal(JobFolderStatus.Written, JobFolderWriter.Write(Next(folder, history), disk, CancellationToken.None).Status);
        return disk.Changes;
    }

    private static TemporaryFolder Prepared(string history)
    {
        TemporaryFolder folder = new();
        void Write(string content, bool held = false) => JobFolderWriter.Write(JobFolderWriterTests.SmallOrder(folder.Path, content, held));
        switch (history)
        {
            case "ready over ready" or "held over ready":
                Write("one");
                break;
            case "held over ready and superseded":
                Write("one");
                Write("two", held: true);
                Write("three");
                break;
            case "ready over held":
                Write("one");
                Write("two", held: true);
                break;
        }

        return folder;
    }

    /// <summary>Job folders by name; null for one that is not whole.</summary>
    private static Dictionary<string, string?> Jobs(TemporaryFolder folder) =>
        folder.Names.Where(name => name[0] != '.').ToDictionary(name => name, name => JobFolderWriterTests.Content(folder[name]));

    private static void AssertNewStands(TemporaryFolder folder, string history, string where)
    {
        string name = history.StartsWith("held", StringComparison.Ordinal) ? "wrack-block.held.job" : "wrack-block.job";
        Assert.True(JobFolderWriterTests.Content(folder[name]) == "new", where);
    }

    private static void AssertNoHidden(TemporaryFolder folder, string where) =>
        Assert.True(!folder.Names.Any(name => name[0] == '.'), $"{where}: {string.Join(' ', folder.Names)}");
}
