using System.Runtime.InteropServices;

namespace Dewstone.Compute.Numerics;

/// <summary>Indices of a field in the order of falling values, by radix sort: linear, and equal values stay in index order.</summary>
internal static class DescendingOrder
{
    private const int DigitBits = 11;
    private const int Digits = 1 << DigitBits;

    /// <summary>Orders the cells above 0.</summary>
    /// <param name="values">The field; cells that are 0, negative or not a number are left out.</param>
    /// <returns>Their indices, greatest value first.</returns>
    public static int[] OfPositive(ReadOnlySpan<float> values)
    {
        int count = 0;
        foreach (float value in values)
        {
            count += value > 0f ? 1 : 0;
        }

        int[] order = new int[count];
        int next = 0;
        for (int i = 0; i < values.Length; i++)
        {
            if (values[i] > 0f)
            {
                order[next++] = i;
            }
        }

        // The bits of positive floats, read as integers, stand in the order of the floats.
        ReadOnlySpan<uint> keys = MemoryMarshal.Cast<float, uint>(values);
        int[] sorted = new int[count];
        for (int shift = 0; shift < 32; shift += DigitBits)
        {
            SortByDigit(keys, shift, order, sorted);
            (order, sorted) = (sorted, order);
        }

        return order;
    }

    private static void SortByDigit(ReadOnlySpan<uint> keys, int shift, ReadOnlySpan<int> order, Span<int> sorted)
    {
        Span<int> places = new int[Digits];
        foreach (int i in order)
        {
            places[(int)(keys[i] >> shift) & (Digits - 1)]++;
        }

        int sum = 0;
        for (int digit = Digits - 1; digit >= 0; digit--)
        {
            (places[digit], sum) = (sum, sum + places[digit]);
        }

        foreach (int i in order)
        {
            sorted[places[(int)(keys[i] >> shift) & (Digits - 1)]++] = i;
        }
    }
}
