namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Damaged folders of orders: the plan, the pin, the records of units and bins, the store; and orders that are planned.</summary>
[Collection(nameof(FuzzAlone))]
public sealed class DamagedOrderTests(ITestOutputHelper output)
{
    private const string Order = "../yard/tiny.order.yaml -o ../yard/out --quiet";
    private const string Folder = "out/tiny";

    [Fact]
    public Task Three_hundred_end_well() => Run((300, 0));

    [Fact]
    [Trait("Category", "Soak")]
    public Task Very_many_end_well() => Run(Soak.Cases(20_000), Soak.Seed);

    private static async Task<FuzzYard> Make()
    {
        FuzzYard yard = new();
        FuzzFiles.WriteTinyOrder(yard);
        Words.Answer made = await Words.Run("order", "compile", yard.In("yard", "tiny.order.yaml"), "-o", yard.In("yard", "out"), "--cells", "4", "--quiet");
        Assert.True(made.Code == ExitCode.Done, made.Output + made.Error);
        yard.Settle();
        return yard;
    }

    private static FuzzSubject[] Subjects(FuzzYard yard) =>
    [
        .. yard.Below(Folder).Where(file => Path.GetExtension(file) is ".json" or ".unit" or ".csv" && !file.Contains("/layers/", StringComparison.Ordinal))
            .Select(file => new FuzzSubject(file, 2, $"order status {Order}", $"order gather {Order}") { Output = Folder }),
        new("tiny.order.yaml", 20, "order plan ../yard/tiny.order.yaml -o out --quiet", $"order status {Order}") { Output = Folder },
    ];

    private async Task Run((uint Count, uint First) cases, ulong seed = 3)
    {
        using FuzzYard yard = await Make();
        FuzzSubject[] subjects = Subjects(yard);
        FuzzRun run = new(yard);
        await FuzzSubject.AssertSound(yard, subjects);
        IReadOnlyList<string> failures = await run.All(cases.Count, cases.First, seed, dice => FuzzSubject.Make(dice, yard, subjects));
        output.WriteLine($"{cases.Count} cases, seed {seed}; {run.Ends}");
        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }
}
