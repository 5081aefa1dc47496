namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Damaged job folders, signed anew or not, and damaged logs, weights, gauges and scans, given to what reads them.</summary>
[Collection(nameof(FuzzAlone))]
public sealed class DamagedJobTests(ITestOutputHelper output)
{
    private const string Job = "out/plain.job";
    private const string Verify = "verify ../yard/out/plain.job --quiet";
    private const string Diff = "diff ../yard/out/plain.job ../yard/other/plain.job --quiet";
    private const string Like = "check ../yard/plain.unit.yaml --drawing --cells 4 --quiet --like ../yard/out/plain.job";
    private const string Resume = "resume ../yard/out/plain.job --after 2 --pause 5min -o out --quiet";
    private const string Weights = "survey ../yard/out/plain.job --weights ../yard/weights.csv --quiet";

    private static readonly FuzzSubject[] Subjects =
    [
        new(Job + "/job.json", 40, Verify, Verify, Verify, Verify, Diff, Diff, Diff, Like, Like, Like, Like, Like, Weights, Resume) { Job = Job },
        new(Job + "/manifest.json", 20, Verify, Verify, Verify, Verify, Verify, Verify, Diff, Diff, Diff, Weights),
        new(Job + "/doses/layer-002.csv", 12, Verify, Like, Diff) { Job = Job },
        new(Job + "/sequence.csv", 4, Verify) { Job = Job },
        new(Job + "/predicted.vti", 8, Diff, Verify) { Job = Job },
        new(Job + "/findings.sarif", 6, Diff, Verify) { Job = Job },
        new(Job + "/estimate.json", 6, Diff, Verify) { Job = Job },
        new("approved.txt", 4, Verify + " --approved ../yard/approved.txt"),
        new("weights.csv", 6, Weights, Weights + " -o out"),
        new("gauges.csv", 5, "survey ../yard/out/plain.job --gauges ../yard/gauges.csv --quiet"),
        new("log.csv", 8, "survey ../yard/out/plain.job --run-log ../yard/log.csv --quiet"),
        new("rest.csv", 4, Resume + " --run-log ../yard/rest.csv"),
        new("scan.stl", 6, "survey ../yard/out/plain.job --scan ../yard/scan.stl --quiet"),
        new("scan.xyz", 5, "survey ../yard/out/plain.job --scan ../yard/scan.xyz --quiet"),
    ];

    [Fact]
    public async Task Sound_files_are_taken()
    {
        using FuzzYard yard = await JobFuzzYard.Make();
        await FuzzSubject.AssertSound(yard, Subjects);
    }

    [Fact]
    public Task One_thousand_five_hundred_end_well() => Run(1500);

    [Fact]
    [Trait("Category", "Soak")]
    public Task Very_many_end_well() => Run(Soak.Cases(150_000), Soak.Seed);

    private async Task Run(uint cases, ulong seed = 2)
    {
        using FuzzYard yard = await JobFuzzYard.Make();
        FuzzRun run = new(yard);
        IReadOnlyList<string> failures = await run.All(cases, 0, seed, dice => FuzzSubject.Make(dice, yard, Subjects));
        output.WriteLine($"{cases} cases, seed {seed}; {run.Ends}");
        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }
}
