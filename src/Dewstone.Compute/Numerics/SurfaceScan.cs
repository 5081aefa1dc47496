using System.Numerics;

namespace Dewstone.Compute.Numerics;

/// <summary>Squared distance along one axis to the nearest crossing of a level on that axis.</summary>
/// <param name="level">The level.</param>
/// <param name="edge">Edge of a cell along the axis.</param>
/// <param name="none">Greatest squared distance told.</param>
/// <param name="width">Lines taken together, neighbours along x.</param>
internal sealed class SurfaceScan(float level, float edge, float none, int width)
{
    private const float NoCrossing = -1e9f;
    private readonly float[] _crossings = new float[width];

    /// <summary>Scans the lines beside one another.</summary>
    /// <param name="field">Values.</param>
    /// <param name="squared">Takes the squared distances, at the same places.</param>
    /// <param name="start">First cell of the first line.</param>
    /// <param name="stride">Cells from one cell of a line to the next.</param>
    /// <param name="length">Cells of a line.</param>
    public void Lines(ReadOnlySpan<float> field, Span<float> squared, int start, int stride, int length)
    {
        Pass(field, squared, start, stride, length, true);
        Pass(field, squared, start + (length - 1) * stride, -stride, length, false);
    }

    /// <summary>Scans one row along x.</summary>
    /// <param name="row">Values.</param>
    /// <param name="squared">Takes the squared distances.</param>
    public void Row(ReadOnlySpan<float> row, Span<float> squared)
    {
        float crossing = row[0] >= level ? -0.5f : NoCrossing;
        squared[0] = Square(0, crossing);
        for (int x = 1; x < row.Length; x++)
        {
            crossing = row[x - 1] >= level == row[x] >= level ? crossing : x - 1 + (level - row[x - 1]) / (row[x] - row[x - 1]);
            squared[x] = Square(x, crossing);
        }

        int last = row.Length - 1;
        crossing = row[last] >= level ? last + 0.5f : -NoCrossing;
        squared[last] = Math.Min(squared[last], Square(last, crossing));
        for (int x = last - 1; x >= 0; x--)
        {
            crossing = row[x + 1] >= level == row[x] >= level ? crossing : x + (level - row[x]) / (row[x + 1] - row[x]);
            squared[x] = Math.Min(squared[x], Square(x, crossing));
        }
    }

    // One way along the lines; positions count from the end it begins at.
    private void Pass(ReadOnlySpan<float> field, Span<float> squared, int start, int stride, int length, bool isFirst)
    {
        Span<float> crossings = _crossings;
        ReadOnlySpan<float> before = field.Slice(start, crossings.Length);
        for (int x = 0; x < crossings.Length; x++)
        {
            crossings[x] = before[x] >= level ? -0.5f : NoCrossing;
        }

        for (int i = 0; i < length; i++)
        {
            ReadOnlySpan<float> here = field.Slice(start + i * stride, crossings.Length);
            Span<float> told = squared.Slice(start + i * stride, crossings.Length);
            Step(before, here, told, i, isFirst);
            before = here;
        }
    }

    // One cell further along all lines; element by element, so the vector's width does not matter.
    private void Step(ReadOnlySpan<float> before, ReadOnlySpan<float> here, Span<float> told, int at, bool isFirst)
    {
        Span<float> crossings = _crossings;
        Vector<float> levels = new(level), back = new(at - 1f), place = new(at), edges = new(edge), most = new(none);
        int x = 0;
        for (; x + Vector<float>.Count <= crossings.Length; x += Vector<float>.Count)
        {
            Vector<float> a = new(before[x..]), b = new(here[x..]), crossing = new(crossings[x..]);
            Vector<int> isCrossed = Vector.GreaterThanOrEqual(a, levels) ^ Vector.GreaterThanOrEqual(b, levels);
            crossing = Vector.ConditionalSelect(isCrossed, back + (levels - a) / (b - a), crossing);
            crossing.CopyTo(crossings[x..]);
            Vector<float> way = (place - crossing) * edges, square = Vector.Min(way * way, most);
            (isFirst ? square : Vector.Min(new Vector<float>(told[x..]), square)).CopyTo(told[x..]);
        }

        for (; x < crossings.Length; x++)
        {
            bool isCrossed = before[x] >= level != here[x] >= level;
            crossings[x] = isCrossed ? at - 1f + (level - before[x]) / (here[x] - before[x]) : crossings[x];
            float square = Square(at, crossings[x]);
            told[x] = isFirst ? square : Math.Min(told[x], square);
        }
    }

    private float Square(int at, float crossing)
    {
        float way = (at - crossing) * edge;
        return Math.Min(way * way, none);
    }
}
