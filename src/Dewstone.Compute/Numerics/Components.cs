using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>Splits the cells of one phase into connected pieces, numbered by their first cells in index order.</summary>
/// <remarks>
/// Runs along x joined by union-find towards the earlier run (He, Chao and Suzuki, "A run-based two-scan labeling algorithm", 2008; from
/// memory), so the root of a piece is the run of its first cell and the numbers do not depend on the order of joining.
/// </remarks>
public static class Components
{
    /// <summary>Rows that one piece of work labels.</summary>
    private const int RowsTogether = 1024;

    /// <summary>Labels the pieces.</summary>
    /// <param name="cells">0 empty, else set; shape <paramref name="shape"/>.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="phase">Phase whose pieces are wanted.</param>
    /// <param name="connectivity">Which cells touch.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>Labels and pieces.</returns>
    public static ComponentMap Label(byte[] cells, GridShape shape, Phase phase, Connectivity connectivity, Parallelism parallelism)
    {
        ArgumentNullException.ThrowIfNull(cells);
        shape.Require(cells.Length, nameof(cells));
        CellRuns runs = CellRuns.Of(cells, shape, phase, parallelism);
        int[] parents = new int[runs.Starts.Length];
        for (int run = 0; run < parents.Length; run++)
        {
            parents[run] = run;
        }

        JoinAll(runs, shape, connectivity, parents);
        List<Component> pieces = [];
        int[] numbers = Number(runs, shape, parents, pieces);
        int[] labels = new int[cells.Length];
        Chunks.Run(shape.Ny * shape.Nz, RowsTogether, parallelism, (first, end) =>
        {
            for (int row = first; row < end; row++)
            {
                for (int run = runs.FirstOfRow[row]; run < runs.FirstOfRow[row + 1]; run++)
                {
                    labels.AsSpan(row * shape.Nx + runs.Starts[run], runs.Ends[run] - runs.Starts[run]).Fill(numbers[run]);
                }
            }
        });
        return new ComponentMap { Labels = labels, Pieces = pieces };
    }

    private static void JoinAll(CellRuns runs, GridShape shape, Connectivity connectivity, int[] parents)
    {
        // With corners, runs that end and start at the same x touch diagonally; with faces they have to overlap.
        bool corners = connectivity == Connectivity.FacesEdgesCorners;
        int reach = corners ? 1 : 0;
        for (int z = 0; z < shape.Nz; z++)
        {
            for (int y = 0; y < shape.Ny; y++)
            {
                int row = z * shape.Ny + y;
                if (y > 0)
                {
                    JoinRows(runs, row - 1, row, reach, parents);
                }

                if (z == 0)
                {
                    continue;
                }

                int below = row - shape.Ny;
                JoinRows(runs, below, row, reach, parents);
                if (corners && y > 0)
                {
                    JoinRows(runs, below - 1, row, reach, parents);
                }

                if (corners && y + 1 < shape.Ny)
                {
                    JoinRows(runs, below + 1, row, reach, parents);
                }
            }
        }
    }

    private static void JoinRows(CellRuns runs, int earlierRow, int row, int reach, int[] parents)
    {
        int a = runs.FirstOfRow[earlierRow];
        int aEnd = runs.FirstOfRow[earlierRow + 1];
        int b = runs.FirstOfRow[row];
        int bEnd = runs.FirstOfRow[row + 1];
        while (a < aEnd && b < bEnd)
        {
            if (runs.Starts[a] < runs.Ends[b] + reach && runs.Starts[b] < runs.Ends[a] + reach)
            {
                Join(parents, a, b);
            }

            if (runs.Ends[a] < runs.Ends[b])
            {
                a++;
            }
            else
            {
                b++;
            }
        }
    }

    private static void Join(int[] parents, int a, int b)
    {
        a = Root(parents, a);
        b = Root(parents, b);
        if (a < b)
        {
            parents[b] = a;
        }
        else
        {
            parents[a] = b;
        }
    }

    private static int Root(int[] parents, int run)
    {
        while (parents[run] != run)
        {
            parents[run] = parents[parents[run]];
            run = parents[run];
        }

        return run;
    }

    /// <summary>Numbers the roots in order of appearance and gathers each piece's size and box; a parent never comes after its child.</summary>
    private static int[] Number(CellRuns runs, GridShape shape, int[] parents, List<Component> pieces)
    {
        int[] numbers = new int[parents.Length];
        for (int row = 0; row < shape.Ny * shape.Nz; row++)
        {
            int y = row % shape.Ny;
            int z = row / shape.Ny;
            for (int run = runs.FirstOfRow[row]; run < runs.FirstOfRow[row + 1]; run++)
            {
                int start = runs.Starts[run];
                int end = runs.Ends[run];
                if (parents[run] == run)
                {
                    pieces.Add(new Component(end - start, row * shape.Nx + start, new CellBox(start, y, z, end - 1, y, z)));
                    numbers[run] = pieces.Count;
                    continue;
                }

                int number = numbers[parents[run]];
                numbers[run] = number;
                pieces[number - 1] = Grown(pieces[number - 1], start, end, y, z);
            }
        }

        return numbers;
    }

    private static Component Grown(Component piece, int start, int end, int y, int z)
    {
        CellBox box = piece.Box;
        return piece with
        {
            Cells = piece.Cells + (end - start),
            Box = new CellBox(
                Math.Min(box.FirstX, start),
                Math.Min(box.FirstY, y),
                box.FirstZ,
                Math.Max(box.LastX, end - 1),
                Math.Max(box.LastY, y),
                z),
        };
    }
}
