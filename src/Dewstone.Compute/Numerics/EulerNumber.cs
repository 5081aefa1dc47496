using System.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>
/// Euler number of the set cells: pieces - tunnels + closed cavities. A through tunnel lowers it by one for each opening after the first,
/// which tells whether two tunnels meet.
/// </summary>
/// <remarks>
/// Vertices - edges + faces - cells of the cell complex, counted 64 cells at a time. With corners touching, the cells are closed cubes: a
/// vertex counts when any of its 8 cells is set. With faces only, the complex is made of cell centres: cells - face pairs + full 2 x 2
/// squares - full 2 x 2 x 2 cubes. (Toriwaki and Yonekura, "Euler number and connectivity indexes of a three dimensional digital picture",
/// 2002; from memory.) Cells beyond the grid's edge are empty.
/// </remarks>
public static class EulerNumber
{
    /// <summary>Counts it.</summary>
    /// <param name="cells">0 empty, else set; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="connectivity">Which set cells touch; the empty ones take the other choice.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The Euler number.</returns>
    public static long Of(byte[] cells, GridShape shape, Connectivity connectivity, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(cells);
        shape.Require(cells.Length, nameof(cells));
        BitRows bits = BitRows.Of(cells, shape, parallelism);
        bool corners = connectivity == Connectivity.FacesEdgesCorners;
        long[] planes = new long[bits.Planes - 1];
        Chunks.Run(planes.Length, 8, parallelism, (first, end) =>
        {
            for (int plane = first; plane < end; plane++)
            {
                planes[plane] = corners ? OfClosedCubes(bits, plane) : OfCentres(bits, plane);
            }
        });
        long sum = 0;
        foreach (long plane in planes)
        {
            sum += plane;
        }

        return sum;
    }

    private static long OfClosedCubes(BitRows bits, int plane)
    {
        long sum = 0;
        for (int row = 0; row + 1 < bits.RowsOfPlane; row++)
        {
            Corner corner = new(bits, row, plane);
            for (int word = 0; word + 1 < bits.Stride; word++)
            {
                // a: the word itself; across, up, both: the rows beside, above and above beside; n: one further along x.
                (ulong a, ulong an) = corner.Here(word);
                (ulong across, ulong acrossN) = corner.Across(word);
                (ulong up, ulong upN) = corner.Up(word);
                (ulong both, ulong bothN) = corner.Both(word);
                ulong pair = a | an;
                sum += BitOperations.PopCount(pair | across | acrossN | up | upN | both | bothN);
                sum -= BitOperations.PopCount(pair | across | acrossN);
                sum -= BitOperations.PopCount(pair | up | upN);
                sum -= BitOperations.PopCount(a | across | up | both);
                sum += BitOperations.PopCount(pair) + BitOperations.PopCount(a | across) + BitOperations.PopCount(a | up);
                sum -= BitOperations.PopCount(a);
            }
        }

        return sum;
    }

    private static long OfCentres(BitRows bits, int plane)
    {
        long sum = 0;
        for (int row = 0; row + 1 < bits.RowsOfPlane; row++)
        {
            Corner corner = new(bits, row, plane);
            for (int word = 0; word + 1 < bits.Stride; word++)
            {
                (ulong a, ulong an) = corner.Here(word);
                (ulong across, ulong acrossN) = corner.Across(word);
                (ulong up, ulong upN) = corner.Up(word);
                (ulong both, ulong bothN) = corner.Both(word);
                ulong pair = a & an;
                sum += BitOperations.PopCount(a);
                sum -= BitOperations.PopCount(pair) + BitOperations.PopCount(a & across) + BitOperations.PopCount(a & up);
                sum += BitOperations.PopCount(pair & across & acrossN);
                sum += BitOperations.PopCount(pair & up & upN);
                sum += BitOperations.PopCount(a & across & up & both);
                sum -= BitOperations.PopCount(pair & across & acrossN & up & upN & both & bothN);
            }
        }

        return sum;
    }

    /// <summary>The four rows around one edge along x.</summary>
    private readonly struct Corner(BitRows bits, int row, int plane)
    {
        private readonly int _here = bits.Row(row, plane);
        private readonly int _across = bits.Row(row + 1, plane);
        private readonly int _up = bits.Row(row, plane + 1);
        private readonly int _both = bits.Row(row + 1, plane + 1);

        public (ulong Word, ulong Next) Here(int word) => (bits.Words[_here + word], bits.Next(_here + word));

        public (ulong Word, ulong Next) Across(int word) => (bits.Words[_across + word], bits.Next(_across + word));

        public (ulong Word, ulong Next) Up(int word) => (bits.Words[_up + word], bits.Next(_up + word));

        public (ulong Word, ulong Next) Both(int word) => (bits.Words[_both + word], bits.Next(_both + word));
    }
}
