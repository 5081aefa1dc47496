using Dewstone.Jobs.Bins;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;

namespace Dewstone.Orders.Batches;

/// <summary>What the store keeps of a question: the solved unit, or what spoke against it.</summary>
/// <param name="Solved">The unit; null when an error stands against it.</param>
/// <param name="Requirements">Requirements and how they came out; empty when it was stopped before wetting.</param>
/// <param name="Findings">All findings but those of reading.</param>
/// <param name="InputAtFault">Whether its description, shape or printer stopped it before wetting.</param>
internal sealed record StoredUnit(
    SolvedUnit? Solved, IReadOnlyList<RequirementResult> Requirements, IReadOnlyList<Diagnostic> Findings, bool InputAtFault)
{
    /// <summary>What solving led to.</summary>
    public static StoredUnit Of(UnitResult result) => new(
        result.Solved is { Held: false } solved ? solved : null, result.Solved?.Requirements ?? [], result.Findings, result.Solved is null);

    /// <summary>Exit code of the unit.</summary>
    public int ExitCode => Solved is not null ? 0 : InputAtFault ? 2 : 1;
}
