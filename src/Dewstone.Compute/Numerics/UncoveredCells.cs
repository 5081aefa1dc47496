namespace Dewstone.Compute.Numerics;

/// <summary>The cells of some rows that no ball has covered yet, as pointers to the next such cell of the row.</summary>
internal sealed class UncoveredCells
{
    private readonly ushort[] _next;
    private readonly int _stride;

    /// <summary>All cells at negative distances are uncovered.</summary>
    /// <param name="distances">Signed distances, whole rows.</param>
    /// <param name="width">Cells of a row.</param>
    public UncoveredCells(ReadOnlySpan<float> distances, int width)
    {
        _stride = width + 1;
        _next = new ushort[distances.Length / width * _stride];
        for (int row = 0; row < distances.Length / width; row++)
        {
            Span<ushort> next = _next.AsSpan(row * _stride, _stride);
            next[width] = (ushort)width;
            for (int x = width - 1; x >= 0; x--)
            {
                next[x] = distances[row * width + x] < 0f ? (ushort)x : next[x + 1];
            }
        }
    }

    /// <summary>Whether any cell of a stretch of a row is uncovered.</summary>
    /// <param name="row">Row.</param>
    /// <param name="first">First cell.</param>
    /// <param name="last">Last cell.</param>
    /// <returns>True when there is one.</returns>
    public bool Any(int row, int first, int last) => Find(_next.AsSpan(row * _stride, _stride), first) <= last;

    /// <summary>Covers a stretch of a row.</summary>
    /// <param name="row">Row.</param>
    /// <param name="first">First cell.</param>
    /// <param name="last">Last cell.</param>
    /// <param name="values">Takes the value at each cell not covered before.</param>
    /// <param name="value">The value.</param>
    public void Cover(int row, int first, int last, Span<float> values, float value)
    {
        Span<ushort> next = _next.AsSpan(row * _stride, _stride);
        for (int x = Find(next, first); x <= last; x = Find(next, x))
        {
            values[x] = value;
            next[x] = next[x + 1];
        }
    }

    private static int Find(Span<ushort> next, int x)
    {
        while (next[x] != x)
        {
            next[x] = next[next[x]];
            x = next[x];
        }

        return x;
    }
}
