using System.Numerics;

namespace Dewstone.Compute.Wetting;

/// <summary>
/// The potential of one plane of cells, row by row. A row has a margin on both sides, so that the first and the last cell find a neighbour:
/// itself, which makes the wall tight.
/// </summary>
internal sealed class PotentialPlane
{
    private readonly int cells;
    private readonly int cellStride;
    private readonly int rowStride;
    private readonly float[] values;
    private readonly bool[] wet;

    /// <summary>A dry plane.</summary>
    /// <param name="cells">Cells a row.</param>
    /// <param name="cellStride">Cells a row, rounded up to whole vectors.</param>
    /// <param name="rows">Rows.</param>
    public PotentialPlane(int cells, int cellStride, int rows)
    {
        this.cells = cells;
        this.cellStride = cellStride;
        rowStride = Margin + cellStride + Margin;
        values = new float[rowStride * rows];
        wet = new bool[rows];
    }

    /// <summary>Room left of a row, in floats: whole vectors of any width in use, so that rows stay aligned alike.</summary>
    private static int Margin => Math.Max(16, Vector<float>.Count);

    /// <summary>Takes in one row.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <param name="content">Water content of the row, padded to whole vectors.</param>
    /// <param name="isWet">Whether the row holds any water.</param>
    /// <param name="law">The law.</param>
    public void SetRow(int row, ReadOnlySpan<float> content, bool isWet, MoisturePotential law)
    {
        Span<float> target = values.AsSpan(row * rowStride, rowStride);
        if (isWet)
        {
            law.Fill(content, target.Slice(Margin, cellStride));
            target[Margin - 1] = target[Margin];
            target[Margin + cells] = target[Margin + cells - 1];
        }
        else if (wet[row])
        {
            target.Clear();
        }

        wet[row] = isWet;
    }

    /// <summary>Whether a row holds any water.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <returns>True when wet.</returns>
    public bool IsWet(int row) => wet[row];

    /// <summary>The first cell of a row; one margin before and after it may be read.</summary>
    /// <param name="row">Row, from 0.</param>
    /// <returns>Reference to the potential of its first cell.</returns>
    public ref float Row(int row) => ref values[row * rowStride + Margin];
}
