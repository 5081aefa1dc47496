using System.Text;

namespace Dewstone.Orders.Batches;

/// <summary>Numbers as batch queues write the tasks of an array: <c>2,7-9</c>.</summary>
public static class TaskNumbers
{
    /// <summary>The text.</summary>
    /// <param name="numbers">Numbers, in any order; twins count once.</param>
    /// <returns>Ascending, runs joined by a hyphen; empty for none.</returns>
    public static string Text(IEnumerable<int> numbers)
    {
        ArgumentNullException.ThrowIfNull(numbers);
        int[] sorted = [.. numbers.Distinct().Order()];
        StringBuilder text = new();
        for (int from = 0, to; from < sorted.Length; from = to + 1)
        {
            for (to = from; to + 1 < sorted.Length && sorted[to + 1] == sorted[to] + 1; to++)
            {
            }

            text.Append(text.Length == 0 ? "" : ",").Append(sorted[from]);
            if (to > from)
            {
                text.Append('-').Append(sorted[to]);
            }
        }

        return text.ToString();
    }
}
