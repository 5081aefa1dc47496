namespace Dewstone.Jobs.Bins;

/// <summary>One bit a cell, eight to a byte, the lowest bit first; index order of the cells it is kept with.</summary>
public sealed class CellBits
{
    private readonly byte[] packed;

    /// <summary>Bits as kept.</summary>
    /// <param name="packed">Eight cells a byte.</param>
    /// <param name="count">Cells.</param>
    /// <exception cref="ArgumentException">Bytes that do not hold just so many cells.</exception>
    public CellBits(byte[] packed, int count)
    {
        ArgumentNullException.ThrowIfNull(packed);
        if (packed.Length != (count + 7) / 8)
        {
            throw new ArgumentException($"{packed.Length} bytes, {count} cells.", nameof(packed));
        }

        (this.packed, Count) = (packed, count);
    }

    /// <summary>Cells.</summary>
    public int Count { get; }

    /// <summary>The bytes.</summary>
    public ReadOnlyMemory<byte> Packed => packed;

    /// <summary>A cell's bit.</summary>
    /// <param name="cell">Flat index.</param>
    public bool this[int cell] => (packed[cell >> 3] >> (cell & 7) & 1) != 0;

    /// <summary>Packs flags.</summary>
    /// <param name="flags">One a cell, 0 or 1.</param>
    /// <returns>Their bits.</returns>
    public static CellBits Of(ReadOnlySpan<byte> flags)
    {
        byte[] bits = new byte[(flags.Length + 7) / 8];
        for (int cell = 0; cell < flags.Length; cell++)
        {
            bits[cell >> 3] |= (byte)(flags[cell] << (cell & 7));
        }

        return new CellBits(bits, flags.Length);
    }
}
