using Dewstone.Reading.Job;

namespace Dewstone.Jobs.Comparison;

/// <summary>A requirement whose limit, value or verdict changed.</summary>
/// <param name="Old">Before; null when it was not asked.</param>
/// <param name="New">Now; null when it is asked no more.</param>
public sealed record RequirementChange(ClaimedRequirement? Old, ClaimedRequirement? New)
{
    /// <summary>Whether it is met now and was not, or the other way round.</summary>
    public bool VerdictChanged => Old?.Met != New?.Met;

    /// <summary>Compares two lists.</summary>
    /// <param name="old">Before.</param>
    /// <param name="now">Now.</param>
    /// <returns>Changes by id and feature.</returns>
    internal static IReadOnlyList<RequirementChange> Compare(IReadOnlyList<ClaimedRequirement> old, IReadOnlyList<ClaimedRequirement> now) =>
    [
        .. old.Concat(now).Select(r => (r.Id, r.Feature)).Distinct().Order()
            .Select(id => new RequirementChange(Find(old, id), Find(now, id)))
            .Where(change => change.Old != change.New),
    ];

    private static ClaimedRequirement? Find(IReadOnlyList<ClaimedRequirement> list, (string Id, string Feature) id)
    {
        int at = list.Select((r, i) => (r, i)).Where(p => (p.r.Id, p.r.Feature) == id).Select(p => p.i).DefaultIfEmpty(-1).First();
        return at < 0 ? null : list[at];
    }
}
