using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Tests.Numerics;

/// <summary>The three seeded solids of reference/random_solids.py, number by number.</summary>
internal static class RandomSolids
{
    public static (float[] Field, GridShape Shape) Noise()
    {
        GridShape shape = new(24, 20, 17);
        Stream stream = new(11);
        float[] field = new float[shape.Count];
        for (int i = 0; i < field.Length; i++)
        {
            field[i] = (float)(stream.Next() - 0.45);
        }

        return (field, shape);
    }

    public static (float[] Field, GridShape Shape) Balls() => Balls(12, new GridShape(40, 32, 28), 25, 1.0);

    public static (float[] Field, GridShape Shape) BlockWithoutBalls() => Balls(13, new GridShape(48, 36, 30), 30, -1.0);

    public static byte[] Cells(float[] field) => [.. field.Select(value => value >= 0f ? (byte)1 : (byte)0)];

    private static (float[] Field, GridShape Shape) Balls(ulong seed, GridShape shape, int count, double sign)
    {
        Stream stream = new(seed);
        double[] field = new double[shape.Count];
        Array.Fill(field, -1e3);
        for (int ball = 0; ball < count; ball++)
        {
            double cx = stream.Next() * shape.Nx, cy = stream.Next() * shape.Ny, cz = stream.Next() * shape.Nz;
            double radius = 3.0 + 5.0 * stream.Next();
            for (int i = 0; i < field.Length; i++)
            {
                double dx = i % shape.Nx + 0.5 - cx;
                double dy = i / shape.Nx % shape.Ny + 0.5 - cy;
                double dz = i / shape.Plane + 0.5 - cz;
                field[i] = Math.Max(field[i], radius - Math.Sqrt(dx * dx + dy * dy + dz * dz));
            }
        }

        return ([.. field.Select(value => (float)(sign * value))], shape);
    }

    /// <summary>SplitMix64 as in the script, kept apart from the program's own so that neither can hide a change of the other.</summary>
    private sealed class Stream(ulong seed)
    {
        private ulong _state = seed;

        public double Next()
        {
            _state += 0x9E3779B97F4A7C15UL;
            ulong z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return ((z ^ (z >> 31)) >> 11) * (1.0 / (1UL << 53));
        }
    }
}
