using Dewstone.Jobs.Bins;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Orders.Batches;

/// <summary>What the store keeps of a question: the solved unit, or what spoke against it.</summary>
/// <param name="Solved">The unit; null when an error stands against it.</param>
/// <param name="Requirements">Requirements and how they came out; empty when it was stopped before wetting.</param>
/// <param name="Findings">All findings but those of reading.</param>
/// <param name="InputAtFault">Whether its description, shape or printer stopped it before wetting.</param>
internal sealed record StoredUnit(
    SolvedUnit? Solved, IReadOnlyList<RequirementResult> Requirements, IReadOnlyList<Diagnostic> Findings, bool InputAtFault)
{
    /// <summary>What solving led to, without the places in files, which are the run's.</summary>
    public static StoredUnit Of(UnitResult result) => new(
        result.Solved is { Held: false } solved ? solved : null,
        [.. (result.Solved?.Requirements ?? []).Select(requirement => requirement with { Location = null })],
        [.. result.Findings.Select(Bare)],
        result.Solved is null);

    /// <summary>Exit code of the unit.</summary>
    public int ExitCode => Solved is not null ? 0 : InputAtFault ? 2 : 1;

    /// <summary>The same with its findings and requirements placed in the files of this run, and those of reading before them.</summary>
    public StoredUnit In(ReadResult read)
    {
        IReadOnlyList<RequirementResult> requirements = [.. Requirements.Select(requirement => requirement with { Location = read.Sources.Locate(requirement.Key) })];
        IReadOnlyList<Diagnostic> findings = [.. read.Diagnostics, .. Findings.Select(read.Sources.Place)];
        return this with { Requirements = requirements, Findings = findings, Solved = Solved is null ? null : Solved with { Requirements = requirements, Findings = findings } };
    }

    private static Diagnostic Bare(Diagnostic finding) => finding with
    {
        Location = finding.Key is null ? finding.Location : null,
        Related = [.. finding.Related.Select(related => related with { Location = related.Key is null ? related.Location : null })],
    };
}
