using System.CommandLine;
using System.CommandLine.Parsing;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Cli.Commands;

/// <summary>Words that <c>compile</c> and <c>check</c> share.</summary>
internal sealed class JobOptions
{
    /// <summary>Cells a voxel side unless asked otherwise.</summary>
    internal const int DefaultCells = 8;

    private const int LeastCells = 4;
    private const int MostCells = 16;
    private const int MostTrials = 10000;

    private readonly SharedOptions shared = new();
    private readonly Argument<string[]> units = new("UNIT") { Description = "Unit description, *.unit.yaml, or a folder of them; one or more.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string?> mix = File("--mix", "Mix to use instead of the one the unit names.");
    private readonly Option<string?> printer = File("--printer", "Printer to use instead of the one the unit names.");
    private readonly Option<string[]> site = new("--site") { Description = "Site to use instead of the one the unit names; check takes several, and compares them.", HelpName = "FILE", Arity = ArgumentArity.OneOrMore };
    private readonly Option<string?> needles = File("--needles", "Needles file (CSV) to use instead of the printer's.");
    private readonly Option<string?> tonight = File("--tonight", "What was measured on the night.");
    private readonly Option<string?> root = Root();
    private readonly Option<int?> cells = Cells();
    private readonly Option<int?> trials = WholeNumber.Option(
        "--trials", $"Try the job so often with mix, bed and needles drawn from their spreads, 1 to {MostTrials}.", 1, MostTrials);

    private readonly Option<bool> noCorrection = new("--no-correction") { Description = "Plain doses: each voxel's wanted share of the best single dose; for comparison." };
    private readonly Option<string?> like = new("--like") { Description = "Keep this job's placement and start from its doses.", HelpName = "JOB" };
    private readonly Option<string?> sarif = File("--sarif", "Also write the findings as SARIF 2.1.0.");
    private readonly Option<Acceptance[]> accept = Accept();

    /// <summary>Adds the words to a command.</summary>
    /// <param name="command">The command.</param>
    public void AddTo(Command command)
    {
        command.Arguments.Add(units);
        foreach (Option option in new Option[] { mix, printer, site, needles, tonight, like, noCorrection, trials, root, cells, accept, sarif })
        {
            command.Options.Add(option);
        }

        shared.AddTo(command);
    }

    /// <summary>What was asked for.</summary>
    /// <param name="parse">The parsed words.</param>
    /// <param name="world">Decides the default number of threads.</param>
    /// <returns>The request.</returns>
    /// <exception cref="UsageException">A path looks like a misspelt option, or an earlier job is named for several units.</exception>
    public JobRequest Read(ParseResult parse, Surroundings world)
    {
        string[] files = parse.GetValue(units) ?? [];
        Array.ForEach(files, file => UsageException.ThrowIfOption(file, parse));

        if ((files.Length > 1 || Directory.Exists(files[0])) && parse.GetValue(like) is not null)
        {
            throw new UsageException("--like goes with one unit: each job has doses of its own.");
        }

        return new JobRequest
        {
            Units = UnitFiles.Under(files),
            Mix = parse.GetValue(mix),
            Printer = parse.GetValue(printer),
            Sites = parse.GetValue(site) ?? [],
            Needles = parse.GetValue(needles),
            Tonight = parse.GetValue(tonight),
            Root = parse.GetValue(root),
            Cells = parse.GetValue(cells) ?? DefaultCells,
            Parallelism = shared.Threads(parse, world),
            Accept = parse.GetValue(accept) ?? [],
            Correct = !parse.GetValue(noCorrection),
            Like = parse.GetValue(like),
            Trials = parse.GetValue(trials) ?? 0,
            Json = parse.GetValue(shared.Json),
            Quiet = parse.GetValue(shared.Quiet),
            SarifFile = parse.GetValue(sarif),
        };
    }

    /// <summary><c>--accept</c>.</summary>
    internal static Option<Acceptance[]> Accept() => new("--accept")
    {
        Description = "Release a finding: DW3012=\"reason\"; may be given more than once.",
        HelpName = "CODE=REASON",
        CustomParser = ParseAcceptances,
        Arity = ArgumentArity.OneOrMore,
    };

    /// <summary><c>--root</c>.</summary>
    internal static Option<string?> Root() => new("--root") { Description = "Folder that no named file may lie outside of.", HelpName = "DIR" };

    /// <summary><c>--cells</c>.</summary>
    internal static Option<int?> Cells() =>
        WholeNumber.Option("--cells", $"Cells a voxel side, {LeastCells} to {MostCells} (default {DefaultCells}).", LeastCells, MostCells);

    /// <summary>An option that names a file.</summary>
    internal static Option<string?> File(string name, string description) => new(name) { Description = description, HelpName = "FILE" };

    private static Acceptance[] ParseAcceptances(ArgumentResult result)
    {
        List<Acceptance> list = [];
        foreach (Token token in result.Tokens)
        {
            int equals = token.Value.IndexOf('=', StringComparison.Ordinal);
            string code = equals < 0 ? token.Value : token.Value[..equals];
            string reason = equals < 0 ? "" : token.Value[(equals + 1)..].Trim();
            if (reason.Length == 0 || reason.Any(char.IsControl))
            {
                result.AddError($"--accept takes a code and a reason, such as DW3012=\"seen and agreed\", not '{token.Value}'.");
            }
            else if (DiagnosticCatalogue.Find(code) is not { } kind)
            {
                result.AddError($"--accept: there is no finding '{code}'; 'dewstone explain' lists them all.");
            }
            else if (kind.Code[2] is not ('3' or '5' or '6'))
            {
                result.AddError($"--accept: {kind.Code} stops before wetting and cannot be released; mend what it says.");
            }
            else
            {
                list.Add(new Acceptance(kind.Code, reason));
            }
        }

        return [.. list];
    }
}
