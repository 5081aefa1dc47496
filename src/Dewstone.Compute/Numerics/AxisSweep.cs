using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Dewstone.Compute.Numerics;

/// <summary>
/// One axis of a separable distance transform, for many neighbouring lines at once: g(i) = min over j of f(j) + s(|i - j|), where s(k) is
/// the square of k cells. The nearest j is sought outwards from i and the search ends as soon as s(k) alone is no smaller than the best of
/// all lines looked at together. Only minima and sums of two numbers: the same bits for any vector width.
/// </summary>
/// <typeparam name="T">Number of the squared distances: int for cubic cells, float else.</typeparam>
internal sealed class AxisSweep<T>
    where T : unmanaged, INumber<T>
{
    /// <summary>Lines taken together: two cache lines of four-byte numbers.</summary>
    private const int Lines = 32;

    private readonly T[] _squares;
    private readonly bool _outsideCounts;
    private readonly T[] _tile;
    private readonly int _length;

    /// <summary>Room for lines of one length; one instance a thread.</summary>
    /// <param name="squares">Squared distance of k cells along this axis, for k from 0 to the length.</param>
    /// <param name="length">Cells of a line.</param>
    /// <param name="outsideCounts">Whether the cells just beyond both ends are at distance 0.</param>
    public AxisSweep(T[] squares, int length, bool outsideCounts)
    {
        _squares = squares;
        _outsideCounts = outsideCounts;
        _length = length;
        _tile = new T[length * Lines];
    }

    /// <summary>Sweeps neighbouring lines in place.</summary>
    /// <param name="field">Squared distances along the axes done so far.</param>
    /// <param name="start">Flat index of the first cell of the first line.</param>
    /// <param name="stride">Cells from one cell of a line to the next.</param>
    /// <param name="width">Lines, neighbours along x.</param>
    public void Run(Span<T> field, int start, int stride, int width)
    {
        for (int x = 0; x < width; x += Lines)
        {
            int lines = Math.Min(Lines, width - x);
            if (Gather(field, start + x, stride, lines))
            {
                Sweep(field, start + x, stride, lines);
            }
        }
    }

    /// <summary>Copies the lines side by side; false when nothing can change: all cells of all lines are zero, or all alike with nothing outside.</summary>
    private bool Gather(ReadOnlySpan<T> field, int start, int stride, int lines)
    {
        T first = field[start];
        bool any = false, differ = _outsideCounts;
        for (int i = 0; i < _length; i++)
        {
            ReadOnlySpan<T> row = field.Slice(start + i * stride, lines);
            row.CopyTo(_tile.AsSpan(i * Lines, lines));
            any = any || row.ContainsAnyExcept(T.Zero);
            differ = differ || row.ContainsAnyExcept(first);
        }

        return any && differ;
    }

    private void Sweep(Span<T> field, int start, int stride, int lines)
    {
        Span<T> row = stackalloc T[Lines];
        for (int i = 0; i < _length; i++)
        {
            for (int lane = 0; lane < lines; lane += Vector<T>.Count)
            {
                Nearest(i, lane).CopyTo(row[lane..]);
            }

            row[..lines].CopyTo(field.Slice(start + i * stride, lines));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private Vector<T> Nearest(int i, int lane)
    {
        ref T here = ref Unsafe.Add(ref MemoryMarshal.GetArrayDataReference(_tile), i * Lines + lane);
        ref T squares = ref MemoryMarshal.GetArrayDataReference(_squares);
        Vector<T> best = Vector.LoadUnsafe(ref here);
        int below = i;
        int above = _length - 1 - i;
        if (_outsideCounts)
        {
            best = Vector.Min(best, new Vector<T>(_squares[Math.Min(below, above) + 1]));
        }

        int both = Math.Min(below, above);
        int k = 1;
        for (; k <= both; k++)
        {
            Vector<T> square = new(Unsafe.Add(ref squares, k));
            if (!Vector.GreaterThanAny(best, square))
            {
                return best;
            }

            Vector<T> nearer = Vector.Min(
                Vector.LoadUnsafe(ref Unsafe.Add(ref here, k * Lines)),
                Vector.LoadUnsafe(ref Unsafe.Subtract(ref here, k * Lines)));
            best = Vector.Min(best, nearer + square);
        }

        int step = above > below ? Lines : -Lines;
        for (int last = Math.Max(below, above); k <= last; k++)
        {
            Vector<T> square = new(Unsafe.Add(ref squares, k));
            if (!Vector.GreaterThanAny(best, square))
            {
                return best;
            }

            best = Vector.Min(best, Vector.LoadUnsafe(ref Unsafe.Add(ref here, k * step)) + square);
        }

        return best;
    }
}
