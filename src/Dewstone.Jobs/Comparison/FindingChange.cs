namespace Dewstone.Jobs.Comparison;

/// <summary>A finding that came, went or changed.</summary>
/// <param name="Old">Before; null for a new one.</param>
/// <param name="New">Now; null for one that is gone.</param>
public sealed record FindingChange(ComparedFinding? Old, ComparedFinding? New)
{
    private static readonly string[] Levels = ["note", "warning", "error"];

    /// <summary>What became of it: new, gone, worse, better or changed.</summary>
    public string Kind =>
        Old is null ? "new" : New is null ? "gone" : (Rank(New) - Rank(Old)) switch { > 0 => "worse", < 0 => "better", _ => "changed" };

    /// <summary>Compares two lists: the same code and message is no change, however the lines moved; the same code with other figures is one that changed.</summary>
    /// <param name="old">Before.</param>
    /// <param name="now">Now.</param>
    /// <returns>Changes by code.</returns>
    internal static IReadOnlyList<FindingChange> Compare(IReadOnlyList<ComparedFinding> old, IReadOnlyList<ComparedFinding> now)
    {
        List<FindingChange> changes = [];
        foreach (string code in old.Concat(now).Select(f => f.Code).Distinct().Order(StringComparer.Ordinal))
        {
            List<ComparedFinding> before = [.. old.Where(f => f.Code == code).OrderBy(f => f.Message, StringComparer.Ordinal)];
            List<ComparedFinding> after = [.. now.Where(f => f.Code == code).OrderBy(f => f.Message, StringComparer.Ordinal)];
            foreach (ComparedFinding same in before.ToArray())
            {
                if (after.Find(same.SaysTheSameAs) is { } other)
                {
                    after.Remove(other);
                    before.Remove(same);
                }
            }

            for (int i = 0; i < Math.Max(before.Count, after.Count); i++)
            {
                changes.Add(new FindingChange(i < before.Count ? before[i] : null, i < after.Count ? after[i] : null));
            }
        }

        return changes;
    }

    private static int Rank(ComparedFinding finding) => finding.Accepted ? 0 : Array.IndexOf(Levels, finding.Level);
}
