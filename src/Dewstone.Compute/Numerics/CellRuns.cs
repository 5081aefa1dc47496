using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>All unbroken runs of one phase along x, row by row.</summary>
internal sealed class CellRuns
{
    /// <summary>Planes that one piece of work takes.</summary>
    private const int PlanesTogether = 8;

    private CellRuns(int[] firstOfRow, int[] starts, int[] ends)
    {
        FirstOfRow = firstOfRow;
        Starts = starts;
        Ends = ends;
    }

    /// <summary>First run of each row, and the number of runs at the end.</summary>
    public int[] FirstOfRow { get; }

    /// <summary>First x of each run.</summary>
    public int[] Starts { get; }

    /// <summary>The x after the last of each run.</summary>
    public int[] Ends { get; }

    /// <summary>Finds the runs.</summary>
    /// <param name="cells">0 empty, else set.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="phase">Phase whose runs are wanted.</param>
    /// <param name="parallelism">Threads.</param>
    /// <returns>The runs.</returns>
    public static CellRuns Of(byte[] cells, GridShape shape, Phase phase, Parallelism parallelism)
    {
        int rows = shape.Ny * shape.Nz;
        int rowsTogether = PlanesTogether * shape.Ny;
        int[] firstOfRow = new int[rows + 1];
        List<int>[] pieces = new List<int>[(rows + rowsTogether - 1) / rowsTogether];
        Chunks.Run(rows, rowsTogether, parallelism, (first, end) =>
        {
            List<int> bounds = new(4 * (end - first));
            for (int row = first; row < end; row++)
            {
                int before = bounds.Count;
                AddRow(cells.AsSpan(row * shape.Nx, shape.Nx), phase, bounds);
                firstOfRow[row + 1] = (bounds.Count - before) / 2;
            }

            pieces[first / rowsTogether] = bounds;
        });
        for (int row = 0; row < rows; row++)
        {
            firstOfRow[row + 1] += firstOfRow[row];
        }

        int[] starts = new int[firstOfRow[rows]];
        int[] ends = new int[firstOfRow[rows]];
        int run = 0;
        foreach (List<int> bounds in pieces)
        {
            for (int i = 0; i < bounds.Count; i += 2)
            {
                starts[run] = bounds[i];
                ends[run++] = bounds[i + 1];
            }
        }

        return new CellRuns(firstOfRow, starts, ends);
    }

    private static void AddRow(ReadOnlySpan<byte> row, Phase phase, List<int> bounds)
    {
        int x = 0;
        while (true)
        {
            int skip = phase == Phase.Set ? row[x..].IndexOfAnyExcept((byte)0) : row[x..].IndexOf((byte)0);
            if (skip < 0)
            {
                return;
            }

            x += skip;
            int length = phase == Phase.Set ? row[x..].IndexOf((byte)0) : row[x..].IndexOfAnyExcept((byte)0);
            bounds.Add(x);
            x = length < 0 ? row.Length : x + length;
            bounds.Add(x);
        }
    }
}
