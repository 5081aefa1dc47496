namespace Dewstone.Compute.Strength;

/// <summary>A row of hardened cells along x within one brick, summed up.</summary>
internal struct CellRow
{
    private float first, second;

    /// <summary>Cells of the row.</summary>
    public float Cells { get; private set; }

    /// <summary>Those in the lower half of the brick; a middle one counts half.</summary>
    public float LowerCells { get; private set; }

    /// <summary>Share of a cell that lies in the lower half of its brick.</summary>
    /// <param name="cell">Place in the brick, from 0.</param>
    /// <param name="cells">Cells of the brick.</param>
    /// <returns>0, 0.5 or 1.</returns>
    public static float LowerShare(int cell, int cells) => Math.Clamp(0.5f * cells - cell, 0f, 1f);

    /// <summary>Adds a cell.</summary>
    /// <param name="cell">Place in the brick, from 0.</param>
    /// <param name="cells">Cells of the brick along x.</param>
    public void Add(int cell, int cells)
    {
        Cells++;
        LowerCells += LowerShare(cell, cells);
        first += Power(1, cell, cells);
        second += Power(2, cell, cells);
    }

    /// <summary>Adds the row to the moments of its brick.</summary>
    /// <param name="y">Place of the row in the brick, from 0.</param>
    /// <param name="across">Cells of the brick along x and y.</param>
    /// <param name="z">Place of the row upward, from 0.</param>
    /// <param name="high">Cells of the brick along z.</param>
    /// <param name="moments">27 as in <see cref="FilledMoments"/>; added to.</param>
    public readonly void AddMoments(int y, int across, int z, int high, Span<float> moments)
    {
        float share = 1f / (across * across * high);
        for (int c = 0; c < 3; c++)
        {
            for (int b = 0; b < 3; b++)
            {
                float factor = share * Power(b, y, across) * Power(c, z, high);
                int at = 3 * b + 9 * c;
                moments[at] += factor * Cells;
                moments[at + 1] += factor * first;
                moments[at + 2] += factor * second;
            }
        }
    }

    private static float Power(int power, int cell, int cells) => (float)FilledMoments.OfPiece(power, (2.0 * cell + 1.0) / cells - 1.0, 1.0 / cells);
}
