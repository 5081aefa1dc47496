namespace Dewstone.Reading.Binding;

/// <summary>Finds the word someone meant.</summary>
public static class Spelling
{
    /// <summary>The nearest of some words, when it is near enough to be meant.</summary>
    /// <param name="word">Word as written.</param>
    /// <param name="words">Words that would do.</param>
    /// <returns>The nearest, the first of equals; null when none is near.</returns>
    public static string? Nearest(string word, IEnumerable<string> words)
    {
        if (word.Length > 64)
        {
            return null;
        }

        string? nearest = null;
        int least = Math.Max(2, word.Length / 3) + 1;
        foreach (string candidate in words)
        {
            int distance = Distance(word.ToLowerInvariant(), candidate.ToLowerInvariant());
            if (distance < least && distance < candidate.Length)
            {
                least = distance;
                nearest = candidate;
            }
        }

        return nearest;
    }

    /// <summary>Least number of letters to insert, delete, replace or swap with their neighbour (optimal string alignment distance).</summary>
    /// <param name="a">First word.</param>
    /// <param name="b">Second word.</param>
    /// <returns>The number of edits.</returns>
    public static int Distance(string a, string b)
    {
        int[] before = new int[b.Length + 1];
        int[] previous = new int[b.Length + 1];
        int[] current = new int[b.Length + 1];
        for (int j = 0; j <= b.Length; j++)
        {
            previous[j] = j;
        }

        for (int i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int replaced = previous[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                int edits = Math.Min(Math.Min(previous[j] + 1, current[j - 1] + 1), replaced);
                bool swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                current[j] = swapped ? Math.Min(edits, before[j - 2] + 1) : edits;
            }

            (before, previous, current) = (previous, current, before);
        }

        return previous[b.Length];
    }
}
