using Dewstone.Compute.Numerics;

namespace Dewstone.Benchmarks;

/// <summary>The solid the numerics are timed on: a rounded box with two crossing tunnels and 12 spherical cavities, 61 % solid.</summary>
internal static class NumericsSolid
{
    /// <summary>Signed distance in cells, positive inside, good near the surface.</summary>
    public static float[] Field(GridShape shape)
    {
        double side = shape.Nx;
        float[] field = new float[shape.Count];
        for (int i = 0; i < field.Length; i++)
        {
            double x = (i % shape.Nx + 0.5) / side - 0.5;
            double y = (i / shape.Nx % shape.Ny + 0.5) / side - 0.5;
            double z = (i / shape.Plane + 0.5) / side - 0.5;
            double inside = 0.485 - Math.Max(Math.Abs(x), Math.Max(Math.Abs(y), Math.Abs(z)));
            double tunnels = Math.Min(Math.Max(Math.Abs(y), Math.Abs(z)), Math.Max(Math.Abs(x), Math.Abs(z))) - 0.19;
            double value = Math.Min(inside, tunnels);
            for (int ball = 0; ball < 12; ball++)
            {
                double cx = 0.3 * (ball % 2 * 2 - 1), cy = 0.3 * (ball / 2 % 2 * 2 - 1), cz = 0.3 * (ball / 4 - 1);
                double radius = 0.07 + 0.008 * ball;
                value = Math.Min(value, Math.Sqrt((x - cx) * (x - cx) + (y - cy) * (y - cy) + (z - cz) * (z - cz)) - radius);
            }

            field[i] = (float)(value * side);
        }

        return field;
    }

    public static byte[] Cells(float[] field) => [.. field.Select(value => value >= 0f ? (byte)1 : (byte)0)];
}
