using Dewstone.Model.Diagnostics;
using Dewstone.Model.Results;
using Dewstone.Reading;

namespace Dewstone.Jobs.Compilation;

/// <summary>Gathers the findings of all passes: gives each its line, and marks those the user released.</summary>
/// <param name="maps">Lines of the descriptions.</param>
/// <param name="accept">Findings the user releases.</param>
internal sealed class FindingList(SourceMaps maps, IReadOnlyList<Acceptance> accept)
{
    private readonly List<Diagnostic> items = [];

    /// <summary>All findings so far, placed.</summary>
    public IReadOnlyList<Diagnostic> Items => items;

    /// <summary>Whether an error stops before wetting: one about the description, the shape, the printer or a file.</summary>
    public bool Stop => items.Exists(d => d is { Severity: Severity.Error } && d.Code[2] is '1' or '2' or '4' or '8');

    /// <summary>Adds findings.</summary>
    /// <param name="findings">In order.</param>
    public void AddRange(IEnumerable<Diagnostic> findings) => items.AddRange(findings.Select(Settle));

    /// <summary>The result when there is no job.</summary>
    /// <returns>The findings alone.</returns>
    public CompileResult WithoutJob() => new(null, items);

    /// <summary>Gives requirements their lines and the reason of release of their key's findings.</summary>
    /// <param name="results">Requirements.</param>
    /// <returns>The same, placed.</returns>
    public IReadOnlyList<RequirementResult> Place(IReadOnlyList<RequirementResult> results) =>
    [
        .. results.Select(r => r with
        {
            Location = maps.Locate(r.Key),
            AcceptedBecause = items.Find(d => d.AcceptedBecause is not null && d.Key == r.Key)?.AcceptedBecause,
        }),
    ];

    private Diagnostic Settle(Diagnostic finding)
    {
        Diagnostic placed = maps.Place(finding);
        Acceptance? released = accept.FirstOrDefault(a => a.Code == placed.Code);
        return released is null ? placed : placed with { AcceptedBecause = released.Reason };
    }
}
