using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Tests.Numerics;

/// <summary>Solids the numerics tests share: 0 and 1 in index order (z * ny + y) * nx + x.</summary>
internal static class Solids
{
    public static byte[] Make(GridShape shape, Func<int, int, int, bool> isSet)
    {
        byte[] cells = new byte[shape.Count];
        for (int z = 0; z < shape.Nz; z++)
        {
            for (int y = 0; y < shape.Ny; y++)
            {
                for (int x = 0; x < shape.Nx; x++)
                {
                    cells[shape.Index(x, y, z)] = isSet(x, y, z) ? (byte)1 : (byte)0;
                }
            }
        }

        return cells;
    }

    /// <summary>Distance field of a ball, positive inside, sampled at cell centres; centre in cells from the lower corner.</summary>
    public static float[] BallField(GridShape shape, double cx, double cy, double cz, double radius)
    {
        float[] field = new float[shape.Count];
        for (int z = 0; z < shape.Nz; z++)
        {
            for (int y = 0; y < shape.Ny; y++)
            {
                for (int x = 0; x < shape.Nx; x++)
                {
                    double dx = x + 0.5 - cx, dy = y + 0.5 - cy, dz = z + 0.5 - cz;
                    field[shape.Index(x, y, z)] = (float)(radius - Math.Sqrt(dx * dx + dy * dy + dz * dz));
                }
            }
        }

        return field;
    }

    /// <summary>
    /// Clearances of cells: the wall's surface lies half the longer edge before the centre of the nearest wall cell. Along the axes a channel of an odd number
    /// of cells so has its exact width, of an even number one cell too little.
    /// </summary>
    public static float[] Clearances(byte[] cells, GridShape shape, CellSize size, Phase through)
    {
        float[] squared = DistanceTransform.Squared(cells, shape, size, through == Phase.Empty ? Phase.Set : Phase.Empty, OutsideCells.Ignored, new Parallelism(1));
        return Array.ConvertAll(squared, distance => MathF.Sqrt(distance) - (float)size.HalfLongerEdge);
    }

    /// <summary>Menger sponge of a level, 3^level cells a side.</summary>
    public static (byte[] Cells, GridShape Shape) Menger(int level)
    {
        int side = 1;
        for (int i = 0; i < level; i++)
        {
            side *= 3;
        }

        GridShape shape = new(side, side, side);
        return (Make(shape, (x, y, z) =>
        {
            for (; x > 0 || y > 0 || z > 0; x /= 3, y /= 3, z /= 3)
            {
                int middles = (x % 3 == 1 ? 1 : 0) + (y % 3 == 1 ? 1 : 0) + (z % 3 == 1 ? 1 : 0);
                if (middles > 1)
                {
                    return false;
                }
            }

            return true;
        }), shape);
    }

    public static int CountSet(byte[] cells) => cells.Count(cell => cell != 0);
}
