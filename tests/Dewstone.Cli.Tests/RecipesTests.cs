using System.Text.RegularExpressions;
using YamlDotNet.RepresentationModel;

namespace Dewstone.Cli.Tests;

/// <summary>The recipes that the guide gives for continuous integration, run as they stand there.</summary>
public sealed partial class RecipesTests : IDisposable
{
    private const string Unit = "units/small step.unit.yaml";

    private static readonly string Recipes = File.ReadAllText(Repository.Path("examples", "in-ci.md"));

    private readonly ScratchRepository repository;

    public RecipesTests()
    {
        ScratchRepository.SkipWithoutGit();
        repository = new ScratchRepository();
    }

    public void Dispose() => repository?.Dispose();

    [Fact]
    public async Task Shown_transcript_is_what_the_recipe_gives()
    {
        string bay = Repository.Path("examples", "wrackline-bay");
        foreach (string file in Directory.EnumerateFiles(bay, "*", SearchOption.AllDirectories).Where(f => Path.GetExtension(f) is not ".png"))
        {
            repository.Write(Path.GetRelativePath(bay, file), await File.ReadAllTextAsync(file));
        }

        const string step = "units/oyster-step.unit.yaml";
        await StartAsync();
        string drawn = repository.Read(step), wider = drawn.Replace("section: {diameter: 140 mm}", "section: {diameter: 150 mm}");
        Assert.NotEqual(drawn, wider);
        await CommitAsync((step, wider));
        MatchCollection commands = CommandPattern().Matches(Block("console", "$ sh ci/units.sh"));
        Assert.Equal(2, commands.Count);
        foreach (Match command in commands)
        {
            Words.Answer answer = await repository.ShellAsync(command.Groups["line"].Value);
            Assert.True(answer.Code == 0, answer.Output + answer.Error);
            Assert.Equal(command.Groups["output"].Value, answer.Output);
        }
    }

    [Fact]
    public async Task Shell_recipe_tells_what_changed_and_ends_as_check_does()
    {
        await StartYardAsync();
        await CommitAsync((Unit, repository.Read(Unit).Replace("diameter: 60 mm", "diameter: 70 mm")), ("units/new one.unit.yaml", Small));
        await repository.MustAsync("git rm -q 'units/old one.unit.yaml' && git commit -qm removed");
        Words.Answer good = await CheckAsync();
        Assert.True(good.Code == ExitCode.Done, good.Output + good.Error);
        string comment = repository.Read("ci-out/comment.md");
        Assert.Contains("| `unit.tunnels[drain].section.diameter` | 60 mm | 70 mm |", comment, StringComparison.Ordinal);
        Assert.Contains("### `units/new one.unit.yaml`: new\n", comment, StringComparison.Ordinal);
        Assert.Contains("### `units/old one.unit.yaml`: removed\n", comment, StringComparison.Ordinal);
        Assert.DoesNotContain("resting", comment, StringComparison.Ordinal);
        Assert.NotEmpty(Directory.EnumerateFiles(Path.Combine(repository.Folder, "ci-out", "pictures", Unit), "*.png"));
        Assert.Contains("\"uri\": \"units/small%20step.unit.yaml\"", repository.Read("ci-out/findings.sarif"), StringComparison.Ordinal);

        await CommitAsync((Unit, repository.Read(Unit).Replace("max: 40 kg", "max: 5 kg")));
        Words.Answer held = await CheckAsync();
        Assert.Equal(ExitCode.No, held.Code);
        Assert.Contains($"\n{Unit}: would be held (1 error, ", held.Output, StringComparison.Ordinal);
        string unfolded = repository.Read("ci-out/comment.md").Split("<details>")[0];
        Assert.Contains("### Small step: different, and the newer is HELD back from printing\n", unfolded, StringComparison.Ordinal);
        Assert.Contains("\n**Findings**\n\n- **new error DW", unfolded, StringComparison.Ordinal);
        Assert.Contains(" kg | NO LONGER MET |\n", unfolded, StringComparison.Ordinal);

        await CommitAsync((Unit, "kind: unit\n"));
        Assert.Equal(ExitCode.InputAtFault, (await CheckAsync()).Code);
        Assert.Contains($"### `{Unit}`: cannot be compared\n", repository.Read("ci-out/comment.md"), StringComparison.Ordinal);

        Assert.Empty(repository.LeftBeside());
        Assert.Equal("1\n", (await repository.ShellAsync("git worktree list | wc -l | tr -d ' '")).Output);
    }

    [Fact]
    public async Task Shell_recipe_compares_every_unit_when_a_mix_changed_and_none_when_nothing_did()
    {
        await StartYardAsync();
        await CommitAsync(("notes.txt", "no unit"));
        Words.Answer nothing = await CheckAsync();
        Assert.True(nothing.Code == ExitCode.Done, nothing.Output + nothing.Error);
        Assert.Equal("No unit changed.\n", repository.Read("ci-out/comment.md"));

        await CommitAsync(("small.mix.yaml", SmallYard.Mix.Replace("loose_density: 1700", "loose_density: 1650")));
        Assert.Equal(ExitCode.Done, (await CheckAsync()).Code);
        Assert.Equal(3, repository.Read("ci-out/comment.md").Split('\n').Count(line => line.EndsWith(": different", StringComparison.Ordinal)));

        Words.Answer unrelated = await repository.ShellAsync("git checkout -q --orphan alone && git commit -qm alone && sh ci/units.sh main");
        Assert.Equal(ExitCode.InputAtFault, unrelated.Code);
        Assert.Contains("no common history with main", unrelated.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Hook_judges_units_as_they_are_staged()
    {
        await StartYardAsync();
        repository.Write(".git/hooks/pre-commit", Block("sh", "# pre-commit: "));
        ScratchRepository.MakeExecutable(Path.Combine(repository.Folder, ".git", "hooks", "pre-commit"));
        string whole = repository.Read(Unit);

        repository.Write(Unit, whole.Replace("diameter: 60 mm", "diameter: 60 m"));
        await repository.MustAsync("git add -A");
        repository.Write(Unit, whole);
        Words.Answer refused = await repository.ShellAsync("git commit -qm broken");
        Assert.NotEqual(0, refused.Code);
        Assert.Contains($"{Unit}:12:", refused.Output + refused.Error, StringComparison.Ordinal);

        repository.Write(Unit, whole.Replace("diameter: 60 mm", "diameter: 65 mm"));
        await repository.MustAsync("git add -A");
        repository.Write(Unit, "not even YAML: [");
        await repository.MustAsync("git commit -qm good");
        await repository.MustAsync("git rm -qf 'units/old one.unit.yaml' && git commit -qm 'nothing to check'");
        Assert.Empty(repository.LeftBeside());
    }

    [Fact]
    public async Task Workflow_runs_the_shell_recipe_and_posts_its_comment()
    {
        YamlStream stream = [];
        stream.Load(new StringReader(Block("yaml", "name: units")));
        YamlNode[] steps = [.. ((YamlSequenceNode)stream.Documents[0].RootNode["jobs"]["units"]["steps"]).Children];
        string[] scripts = [.. steps.OfType<YamlMappingNode>().Where(s => s.Children.ContainsKey("run")).Select(s => ((YamlScalarNode)s["run"]).Value!)];
        Assert.Equal(3, scripts.Length);

        await StartYardAsync();
        await CommitAsync((Unit, repository.Read(Unit).Replace("diameter: 60 mm", "diameter: 70 mm")));

        // Stand-ins for what the runner has: a build that leaves the program, the main branch as fetched, and the client that posts.
        repository.Write(".dewstone/build.sh", "#!/bin/sh\necho \"$@\" > built\n");
        ScratchRepository.MakeExecutable(Path.Combine(repository.Folder, ".dewstone", "build.sh"));
        repository.Write(".git/gh", "#!/bin/sh\nprintf '%s\\n' \"$@\" > .git/posted\ncp ci-out/comment.md .git/body\n");
        ScratchRepository.MakeExecutable(Path.Combine(repository.Folder, ".git", "gh"));
        await repository.MustAsync("git update-ref refs/remotes/origin/main main");
        await repository.MustAsync($"export GITHUB_PATH=.git/path GITHUB_BASE_REF=main NUMBER=7 PATH=\"$PWD/.git:$PATH\"; set -e\n{string.Join('\n', scripts)}");
        Assert.Equal("build\n", repository.Read("built"));
        Assert.Equal($"{repository.Folder}/.dewstone/.artifacts/dewstone\n", repository.Read(".git/path"));
        Assert.Equal("pr\ncomment\n7\n--edit-last\n--create-if-none\n--body-file\nci-out/comment.md\n", repository.Read(".git/posted"));
        Assert.StartsWith("### Small step: different\n", repository.Read(".git/body"), StringComparison.Ordinal);
    }

    private static string Small => SmallYard.Unit.Replace("mix: ", "mix: ../").Replace("printer: ", "printer: ../");

    private Task<Words.Answer> CheckAsync() => repository.ShellAsync("sh ci/units.sh main");

    private async Task StartYardAsync()
    {
        repository.Write(".dewstone-root", "");
        repository.Write("small.mix.yaml", SmallYard.Mix);
        repository.Write("small.printer.yaml", SmallYard.Printer);
        repository.Write(Unit, Small);
        repository.Write("units/old one.unit.yaml", Small.Replace("Small step", "Old step"));
        repository.Write("units/resting.unit.yaml", Small.Replace("Small step", "resting step"));
        await StartAsync();
    }

    // The branch main with the recipe, and a branch of it for the changes.
    private async Task StartAsync()
    {
        repository.Write("ci/units.sh", Block("sh", "# ci/units.sh "));
        repository.Write(".gitignore", "ci-out/\n");
        await repository.MustAsync("git init -q && git symbolic-ref HEAD refs/heads/main && git add -A && git commit -qm start && git checkout -qb change");
    }

    private async Task CommitAsync(params (string Name, string Text)[] files)
    {
        foreach ((string name, string text) in files)
        {
            repository.Write(name, text);
        }

        await repository.MustAsync("git add -A && git commit -qm change");
    }

    // The one block of a language in the guide that holds a phrase.
    private static string Block(string language, string phrase) =>
        Assert.Single(BlockPattern().Matches(Recipes), m => m.Groups["language"].Value == language && m.Groups["text"].Value.Contains(phrase, StringComparison.Ordinal)).Groups["text"].Value;

    [GeneratedRegex(@"^```(?<language>sh|yaml|console)\n(?<text>.*?)^```$", RegexOptions.Singleline | RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex BlockPattern();

    [GeneratedRegex(@"^\$ (?<line>[^\n]+)\n(?<output>.*?)(?=^\$ |\z)", RegexOptions.Singleline | RegexOptions.Multiline | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex CommandPattern();
}
