using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>How wide each plane of cells looks from each side: the union of what its runs of cells cover, exact for the cells.</summary>
/// <param name="ex">Across the line of sight, along x, one a direction.</param>
/// <param name="ey">Across the line of sight, along y, one a direction.</param>
internal sealed class Silhouette(double[] ex, double[] ey)
{
    private readonly List<(double From, double To)> spans = [];

    /// <summary>Widths of a plane.</summary>
    /// <param name="labels">Piece of each cell; index order of the grid.</param>
    /// <param name="piece">The piece looked at.</param>
    /// <param name="shape">Cells along each axis.</param>
    /// <param name="z">Plane, from 0.</param>
    /// <param name="widths">Takes one width a direction, cells.</param>
    public void Widths(int[] labels, int piece, GridShape shape, int z, Span<double> widths)
    {
        List<(int Row, int First, int After)> runs = Runs(labels.AsSpan(z * shape.Plane, shape.Plane), piece, shape.Nx);
        for (int direction = 0; direction < StandingBody.Directions; direction++)
        {
            widths[direction] = Width(runs, ex[direction], ey[direction]);
        }
    }

    private static List<(int Row, int First, int After)> Runs(ReadOnlySpan<int> plane, int piece, int nx)
    {
        List<(int Row, int First, int After)> runs = [];
        for (int row = 0; row < plane.Length / nx; row++)
        {
            ReadOnlySpan<int> cells = plane.Slice(row * nx, nx);
            for (int x = 0; x < nx; x++)
            {
                if (cells[x] == piece)
                {
                    int first = x;
                    while (x < nx && cells[x] == piece)
                    {
                        x++;
                    }

                    runs.Add((row, first, x));
                }
            }
        }

        return runs;
    }

    private double Width(List<(int Row, int First, int After)> runs, double ax, double ay)
    {
        spans.Clear();
        foreach ((int row, int first, int after) in runs)
        {
            double middle = 0.5 * (first + after) * ax + (row + 0.5) * ay;
            double half = 0.5 * ((after - first) * Math.Abs(ax) + Math.Abs(ay));
            spans.Add((middle - half, middle + half));
        }

        spans.Sort();
        double width = 0.0, reached = double.NegativeInfinity;
        foreach ((double from, double to) in spans)
        {
            if (to > reached)
            {
                width += to - Math.Max(from, reached);
                reached = to;
            }
        }

        return width;
    }
}
