namespace Dewstone.Compute.Numerics;

/// <summary>The cubes between four neighbouring rows of samples, 64 at a time.</summary>
/// <param name="bits">Set samples.</param>
/// <param name="row">First row, not the last of its plane.</param>
/// <param name="plane">First plane, not the last.</param>
internal ref struct CubeRow(BitRows bits, int row, int plane)
{
    private readonly int _here = bits.Row(row, plane);
    private readonly int _across = bits.Row(row + 1, plane);
    private readonly int _up = bits.Row(row, plane + 1);
    private readonly int _both = bits.Row(row + 1, plane + 1);
    private ulong _c0, _c1, _c2, _c3, _c4, _c5, _c6, _c7;

    /// <summary>Takes up the cubes of one word.</summary>
    /// <param name="word">Word of the rows, not the last.</param>
    /// <returns>Bit i on where the corners of cube i are not all alike.</returns>
    public ulong Load(int word)
    {
        _c0 = bits.Words[_here + word];
        _c2 = bits.Words[_across + word];
        _c4 = bits.Words[_up + word];
        _c6 = bits.Words[_both + word];
        _c1 = bits.Next(_here + word);
        _c3 = bits.Next(_across + word);
        _c5 = bits.Next(_up + word);
        _c7 = bits.Next(_both + word);
        return (_c0 | _c1 | _c2 | _c3 | _c4 | _c5 | _c6 | _c7) & ~(_c0 & _c1 & _c2 & _c3 & _c4 & _c5 & _c6 & _c7);
    }

    /// <summary>The case of one cube of the word taken up.</summary>
    /// <param name="cube">Its bit.</param>
    /// <returns>Bit c on where corner c = dx + 2 dy + 4 dz is set.</returns>
    public readonly int Corners(int cube) =>
        (int)(((_c0 >> cube) & 1) | ((_c1 >> cube) & 1) << 1 | ((_c2 >> cube) & 1) << 2 | ((_c3 >> cube) & 1) << 3
            | ((_c4 >> cube) & 1) << 4 | ((_c5 >> cube) & 1) << 5 | ((_c6 >> cube) & 1) << 6 | ((_c7 >> cube) & 1) << 7);
}
