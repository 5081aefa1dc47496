using System.Text;
using Dewstone.Jobs.Comparison;

namespace Dewstone.Cli.Rendering;

/// <summary>What <c>diff</c> says to people.</summary>
internal static class DifferenceText
{
    private const int MostDoses = 8;

    /// <summary>The text.</summary>
    /// <param name="difference">What differs.</param>
    /// <returns>Plain text; one line when nothing differs.</returns>
    public static string Of(JobDifference difference)
    {
        StringBuilder text = new();
        if (difference.Description.Count > 0)
        {
            text.Append("description\n");
            foreach (KeyChange change in difference.Description)
            {
                text.Append($"  {change.Key}: {change.Old ?? "(not there)"} -> {change.New ?? "(not there)"}\n");
            }
        }

        if (difference.Moved)
        {
            text.Append("placement\n  the unit stands elsewhere in the bin, so every dose stands elsewhere in the unit\n");
        }

        Solid(text, "wanted solid", difference.Target);
        Solid(text, "predicted solid", difference.Predicted);
        if (difference.Doses is { Positions.Count: > 0 } doses)
        {
            text.Append($"doses\n  {DifferenceWords.Doses(doses)}\n");
            foreach (DoseChange change in doses.Positions.Take(MostDoses))
            {
                text.Append($"  at x {change.Tip.X * 1000.0:0.#}, y {change.Tip.Y * 1000.0:0.#}, z {change.Tip.Z * 1000.0:0.#} mm: {change.OldMillilitres:0.00} -> {change.NewMillilitres:0.00} mL\n");
            }

            text.Append(doses.Positions.Count > MostDoses ? $"  and {doses.Positions.Count - MostDoses} more positions\n" : "");
        }

        List(text, "requirements", difference.Requirements.Select(DifferenceWords.Requirement));
        List(text, "findings", difference.Findings.Select(DifferenceWords.Finding));
        List(text, "materials and time", difference.Figures.Select(f => $"{f.Name}: {DifferenceWords.Figure(f.Old)} -> {DifferenceWords.Figure(f.New)}"));
        return text.Append($"{difference.Old.Label} and {difference.New.Label}: {DifferenceWords.Verdict(difference)}\n").ToString();
    }

    private static void Solid(StringBuilder text, string title, SolidChange change)
    {
        if (change.Slabs.Count == 0)
        {
            return;
        }

        text.Append($"{title}\n  {DifferenceWords.Solid(change)}\n");
        foreach (SlabChange slab in change.Slabs)
        {
            text.Append($"  z {slab.FromMetres * 1000.0,5:0} to {slab.ToMetres * 1000.0,4:0} mm: {slab.AddedLitres,7:0.000} L added, {slab.RemovedLitres,7:0.000} L removed\n");
        }
    }

    private static void List(StringBuilder text, string title, IEnumerable<string> lines)
    {
        bool first = true;
        foreach (string line in lines)
        {
            text.Append(first ? $"{title}\n" : "").Append($"  {line}\n");
            first = false;
        }
    }
}
