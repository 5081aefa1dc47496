namespace Dewstone.Cli.Tests.Fuzzing;

/// <summary>Damaged descriptions and tables of measurements end as the table of exit codes says, with a message that has a code, and write nowhere but where they may.</summary>
[Collection(nameof(FuzzAlone))]
public sealed class DamagedDescriptionTests(ITestOutputHelper output)
{
    private const string Check = "check ../yard/fuzz.unit.yaml --drawing --cells 4 --quiet";

    private static readonly FuzzSubject[] Subjects =
    [
        new("fuzz.unit.yaml", 30, Check),
        new("fuzz.mix.yaml", 15, Check, "calibrate mix ../yard/data-density.csv --mix ../yard/fuzz.mix.yaml -o out/new.mix.yaml --quiet"),
        new("fuzz.printer.yaml", 15, Check),
        new("fuzz.site.yaml", 12, Check, Check + " --site ../yard/fuzz.site.yaml"),
        new("fuzz.needles.csv", 8, Check, Check + " --needles ../yard/fuzz.needles.csv"),
        new("fuzz.tonight.yaml", 6, Check + " --tonight ../yard/fuzz.tonight.yaml"),
        new("fuzz.order.yaml", 20, "order status ../yard/fuzz.order.yaml -o out --quiet"),
        new("data-absorption.csv", 4, "calibrate mix ../yard/data-absorption.csv --mix ../yard/fuzz.mix.yaml -o out/new.mix.yaml --quiet"),
        new("data-balls.csv", 4, "calibrate mix ../yard/data-balls.csv --mix ../yard/fuzz.mix.yaml -o out/new.mix.yaml --quiet"),
        new("data-pairs.csv", 2, "calibrate mix ../yard/data-pairs.csv --mix ../yard/fuzz.mix.yaml -o out/new.mix.yaml --quiet"),
        new("data-density.csv", 2, "calibrate mix ../yard/data-density.csv --mix ../yard/fuzz.mix.yaml -o out/new.mix.yaml --quiet"),
        new("data-needles.csv", 6, "calibrate needles ../yard/data-needles.csv -o out/new.needles.csv --quiet"),
        new("fuzz.needles.csv", 4, "calibrate needles ../yard/data-needles.csv --previous ../yard/fuzz.needles.csv -o out/new.needles.csv --quiet"),
    ];

    [Fact]
    public async Task Sound_files_are_taken()
    {
        using FuzzYard yard = new();
        FuzzFiles.Write(yard);
        yard.Settle();
        await FuzzSubject.AssertSound(yard, Subjects);
    }

    [Fact]
    public Task Two_thousand_three_hundred_end_well() => Run((2300, 0));

    [Fact]
    [Trait("Category", "Soak")]
    public Task Very_many_end_well() => Run(Soak.Cases(230_000), Soak.Seed);

    private async Task Run((uint Count, uint First) cases, ulong seed = 1)
    {
        using FuzzYard yard = new();
        FuzzFiles.Write(yard);
        yard.Settle();
        FuzzRun run = new(yard);
        IReadOnlyList<string> failures = await run.All(cases.Count, cases.First, seed, dice => FuzzSubject.Make(dice, yard, Subjects));
        output.WriteLine($"{cases.Count} cases, seed {seed}; {run.Ends}");
        Assert.True(failures.Count == 0, string.Join('\n', failures));
    }
}
