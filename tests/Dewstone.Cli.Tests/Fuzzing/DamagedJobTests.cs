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
    private const string Survey = "survey ../yard/out/plain.job --quiet";
    private const string Unmeasured = Survey + " --gauges " + FuzzSubject.Missing;
    private const string Unsupplied = Resume + " --needles " + FuzzSubject.Missing;

    private static readonly FuzzSubject[] Subjects =
    [
        new(Job + "/job.json", 40, Verify, Verify, Verify, Verify, Diff, Diff, Diff, Like, Like, Like, Like, Like, Unmeasured, Unsupplied) { Job = Job },
        new(Job + "/manifest.json", 20, Verify, Verify, Verify, Verify, Verify, Verify, Diff, Diff, Diff, Unmeasured),
        new(Job + "/doses/layer-002.csv", 12, Verify, Like, Diff) { Job = Job },
        new(Job + "/sequence.csv", 4, Verify) { Job = Job },
        new(Job + "/predicted.vti", 8, Diff, Verify) { Job = Job },
        new(Job + "/findings.sarif", 6, Diff, Verify) { Job = Job },
        new(Job + "/estimate.json", 6, Diff, Verify) { Job = Job },
        new("approved.txt", 4, Verify + " --approved ../yard/approved.txt"),
        Measured("weights", "weights.csv", 8),
        Measured("run-log", "log.csv", 9),
        Measured("scan", "scan.stl", 6),
        Measured("scan", "scan.xyz", 5),
        new("gauges.csv", 7, Repeated(Survey + " --gauges ../yard/gauges.csv", Survey + " --gauges ../yard/gauges.csv --weights " + FuzzSubject.Missing)),
        new("rest.csv", 6, Repeated(Resume + " --run-log ../yard/rest.csv", Unsupplied + " --run-log ../yard/rest.csv")),
    ];

    private static FuzzSubject Measured(string option, string file, int weight) => new(file, weight, Repeated($"{Survey} --{option} ../yard/{file}", $"{Unmeasured} --{option} ../yard/{file}"));

    // Once in so many the whole command; else it ends once all is read.
    private static string[] Repeated(string whole, string reading) => [whole, .. Enumerable.Repeat(reading, 11)];

    [Fact]
    public async Task Sound_files_are_taken()
    {
        using FuzzYard yard = await JobFuzzYard.Make();
        await FuzzSubject.AssertSound(yard, Subjects);
    }

    [Fact]
    public Task One_thousand_end_well() => Run((1000, 0));

    [Fact]
    [Trait("Category", "Soak")]
    public Task Very_many_end_well() => Run(Soak.Cases(150_000), Soak.Seed);

    private async Task Run((uint Count, uint First) cases, ulong seed = 2)
    {
        using FuzzYard yard = await JobFuzzYard.Make();
        FuzzRun run = new(yard);
        IReadOnlyList<string> failures = await run.All(cases.Count, cases.First, seed, dice => FuzzSubject.Make(dice, yard, Subjects));
        output.WriteLine($"{cases.Count} cases, seed {seed}; {run.Ends}");
        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }
}
