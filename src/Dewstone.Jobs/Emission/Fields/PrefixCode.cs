namespace Dewstone.Jobs.Emission.Fields;

/// <summary>
/// Optimal prefix codes with a limited length. Lengths by the in-place method of Moffat and Katajainen ("In-place calculation of
/// minimum-redundancy codes", 1995; from memory), then shortened to the limit by moving leaves so that the code stays complete.
/// </summary>
internal static class PrefixCode
{
    /// <summary>Code lengths of symbols; 0 for symbols that do not occur.</summary>
    /// <param name="counts">How often each symbol occurs; at least two symbols must.</param>
    /// <param name="limit">Longest length allowed.</param>
    /// <param name="lengths">Receives the lengths.</param>
    public static void Lengths(ReadOnlySpan<int> counts, int limit, Span<byte> lengths)
    {
        lengths.Clear();
        Span<long> order = stackalloc long[counts.Length];
        int used = 0;
        for (int symbol = 0; symbol < counts.Length; symbol++)
        {
            if (counts[symbol] > 0)
            {
                order[used++] = ((long)counts[symbol] << 16) | (uint)symbol;
            }
        }

        order = order[..used];
        order.Sort();
        Span<int> work = stackalloc int[used];
        for (int i = 0; i < used; i++)
        {
            work[i] = (int)(order[i] >> 16);
        }

        Depths(work);
        Span<int> ofLength = stackalloc int[limit + 1];
        ofLength.Clear();
        foreach (int depth in work)
        {
            ofLength[Math.Min(depth, limit)]++;
        }

        Complete(ofLength, limit);
        int next = 0;
        for (int length = limit; length > 0; length--)
        {
            for (int i = 0; i < ofLength[length]; i++)
            {
                lengths[(int)(order[next++] & 0xFFFF)] = (byte)length;
            }
        }
    }

    /// <summary>Canonical codes of given lengths, bits reversed as deflate sends them (RFC 1951, section 3.2.2).</summary>
    /// <param name="lengths">Code lengths, up to 15.</param>
    /// <param name="codes">Receives the codes, first bit lowest.</param>
    public static void Codes(ReadOnlySpan<byte> lengths, Span<ushort> codes)
    {
        Span<int> next = stackalloc int[17];
        next.Clear();
        foreach (byte length in lengths)
        {
            next[length + 1] += length == 0 ? 0 : 1;
        }

        // next[l] becomes the first code of length l.
        int code = 0;
        for (int length = 1; length <= 15; length++)
        {
            code = (code + next[length]) << 1;
            next[length] = code;
        }

        for (int symbol = 0; symbol < lengths.Length; symbol++)
        {
            int length = lengths[symbol];
            codes[symbol] = length == 0 ? (ushort)0 : Reversed(next[length]++, length);
        }
    }

    /// <summary>Replaces ascending counts by the depths of their leaves in a tree of least weighted depth; the deepest come first.</summary>
    private static void Depths(Span<int> a)
    {
        int n = a.Length;
        a[0] += a[1];
        int root = 0, leaf = 2;
        for (int next = 1; next < n - 1; next++)
        {
            int first = TakeSmaller(a, ref root, ref leaf, next);
            a[next] = first + TakeSmaller(a, ref root, ref leaf, next);
        }

        a[n - 2] = 0;
        for (int next = n - 3; next >= 0; next--)
        {
            a[next] = a[a[next]] + 1;
        }

        int available = 1, depth = 0, inner = n - 2, at = n - 1;
        while (available > 0)
        {
            int usedHere = 0;
            while (inner >= 0 && a[inner] == depth)
            {
                usedHere++;
                inner--;
            }

            while (available > usedHere)
            {
                a[at--] = depth;
                available--;
            }

            available = 2 * usedHere;
            depth++;
        }
    }

    /// <summary>Weight of the smaller of the next inner node and the next leaf; an inner node is linked to its parent.</summary>
    private static int TakeSmaller(Span<int> a, ref int root, ref int leaf, int parent)
    {
        if (leaf >= a.Length || (root < parent && a[root] < a[leaf]))
        {
            int weight = a[root];
            a[root++] = parent;
            return weight;
        }

        return a[leaf++];
    }

    /// <summary>Makes the code complete again after lengths were cut to the limit.</summary>
    private static void Complete(Span<int> ofLength, int limit)
    {
        int sum = 0;
        for (int length = 1; length <= limit; length++)
        {
            sum += ofLength[length] << (limit - length);
        }

        while (sum > 1 << limit)
        {
            ofLength[limit]--;
            int length = limit - 1;
            while (ofLength[length] == 0)
            {
                length--;
            }

            ofLength[length]--;
            ofLength[length + 1] += 2;
            sum--;
        }
    }

    private static ushort Reversed(int code, int length)
    {
        int reversed = 0;
        for (int i = 0; i < length; i++)
        {
            reversed = (reversed << 1) | ((code >> i) & 1);
        }

        return (ushort)reversed;
    }
}
