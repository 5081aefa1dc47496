namespace Dewstone.Compute.Numerics;

/// <summary>The grid edges that begin at the samples of one row and that the surface crosses, one bit each.</summary>
/// <param name="bits">Set samples.</param>
/// <param name="row">Row, not the last of its plane.</param>
/// <param name="plane">Plane, not the last.</param>
internal readonly struct SurfaceCrossings(BitRows bits, int row, int plane)
{
    private readonly int _here = bits.Row(row, plane);
    private readonly int _across = bits.Row(row + 1, plane);
    private readonly int _up = bits.Row(row, plane + 1);

    /// <summary>Edges along x.</summary>
    /// <param name="word">Word of the row, not the last.</param>
    /// <returns>Bit i for the edge from sample i to i + 1.</returns>
    public ulong AlongX(int word) => bits.Words[_here + word] ^ bits.Next(_here + word);

    /// <summary>Edges along y.</summary>
    /// <param name="word">Word of the row.</param>
    /// <returns>Bit i for the edge from sample i to the one beside it in the next row.</returns>
    public ulong AlongY(int word) => bits.Words[_here + word] ^ bits.Words[_across + word];

    /// <summary>Edges along z.</summary>
    /// <param name="word">Word of the row.</param>
    /// <returns>Bit i for the edge from sample i to the one above it.</returns>
    public ulong AlongZ(int word) => bits.Words[_here + word] ^ bits.Words[_up + word];
}
