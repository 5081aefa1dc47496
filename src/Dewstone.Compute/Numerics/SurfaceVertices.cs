using System.Numerics;

namespace Dewstone.Compute.Numerics;

/// <summary>Places the corners of a surface on the grid edges it crosses.</summary>
internal sealed class SurfaceVertices(BitRows bits, SurfaceCount count, float[] field, GridShape shape, CellSize size, float level)
{
    /// <summary>How far corners keep from the samples, share of an edge: where a sample has the level, the surface's corners on its edges would be one point.</summary>
    private const float Apart = 1e-4f;

    private readonly float _width = (float)size.Width;
    private readonly float _height = (float)size.Height;

    /// <summary>Places those on edges that begin in one plane.</summary>
    /// <param name="plane">Plane of the bits, not the last.</param>
    /// <param name="positions">Takes x y z of each corner at its number.</param>
    public void Place(int plane, Span<float> positions)
    {
        for (int row = 0; row + 1 < bits.RowsOfPlane; row++)
        {
            SurfaceCrossings crossings = new(bits, row, plane);
            int start = bits.Row(row, plane);
            for (int word = 0; word + 1 < bits.Stride; word++)
            {
                int at = 3 * count.FirstVertexOfWord[start + word];
                for (ulong left = crossings.AlongX(word); left != 0; left &= left - 1, at += 3)
                {
                    int x = 64 * word + BitOperations.TrailingZeroCount(left);
                    Put(positions.Slice(at, 3), x + Share(x, row, plane, 1, 0, 0), row, plane);
                }

                for (ulong left = crossings.AlongY(word); left != 0; left &= left - 1, at += 3)
                {
                    int x = 64 * word + BitOperations.TrailingZeroCount(left);
                    Put(positions.Slice(at, 3), x, row + Share(x, row, plane, 0, 1, 0), plane);
                }

                for (ulong left = crossings.AlongZ(word); left != 0; left &= left - 1, at += 3)
                {
                    int x = 64 * word + BitOperations.TrailingZeroCount(left);
                    Put(positions.Slice(at, 3), x, row, plane + Share(x, row, plane, 0, 0, 1));
                }
            }
        }
    }

    /// <summary>From samples of the bits to lengths: sample 1 is the first cell's centre, half an edge in.</summary>
    private void Put(Span<float> position, float x, float y, float z)
    {
        position[0] = (x - 0.5f) * _width;
        position[1] = (y - 0.5f) * _width;
        position[2] = (z - 0.5f) * _height;
    }

    /// <summary>Where on its edge the field has the level, 0 to 1; the middle when one end lies beyond the grid.</summary>
    private float Share(int x, int y, int z, int dx, int dy, int dz)
    {
        if (x == 0 || y == 0 || z == 0 || x + dx > shape.Nx || y + dy > shape.Ny || z + dz > shape.Nz)
        {
            return 0.5f;
        }

        float first = field[shape.Index(x - 1, y - 1, z - 1)];
        float second = field[shape.Index(x + dx - 1, y + dy - 1, z + dz - 1)];
        return Math.Clamp((level - first) / (second - first), Apart, 1f - Apart);
    }
}
