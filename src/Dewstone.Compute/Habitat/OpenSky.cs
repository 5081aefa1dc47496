using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Habitat;

/// <summary>Share of the upper half of all directions along which a place on the surface sees open water.</summary>
/// <remarks>
/// Places are water cells that touch the solid by a face, every so many-th so that there are about <see cref="Places"/>; directions are spread evenly over the half sphere by the golden
/// angle. Rays are traced in steps of the free distance. An open plane sees 1, a lone upright wall 1/2, the bottom of a round shaft of radius r and depth h 1 - h / sqrt(h^2 + r^2).
/// </remarks>
internal static class OpenSky
{
    /// <summary>About how many places are looked from.</summary>
    public const int Places = 2000;

    /// <summary>How many directions are looked along.</summary>
    public const int Directions = 128;

    private const int PlacesTogether = 64;

    /// <summary>Looks from places spread over the surface.</summary>
    /// <param name="field">The field.</param>
    /// <param name="clearances">Distance to the surface, m, negative in solid and seabed.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>One share a place; empty without a surface.</returns>
    public static double[] Shares(WaterField field, float[] clearances, Parallelism parallelism)
    {
        int[] places = Surface(field, clearances);
        int stride = Math.Max(1, places.Length / Places);
        double[] shares = new double[(places.Length + stride - 1) / stride];
        (float X, float Y, float Z)[] directions = Spread();
        Chunks.Run(shares.Length, PlacesTogether, parallelism, (first, end) =>
        {
            for (int i = first; i < end; i++)
            {
                shares[i] = From(field, clearances, places[i * stride], directions);
            }
        });
        return shares;
    }

    /// <summary>Looks from one cell.</summary>
    /// <param name="field">The field.</param>
    /// <param name="clearances">Distance to the surface, m.</param>
    /// <param name="cell">Flat index of a water cell.</param>
    /// <returns>Share, 0 to 1.</returns>
    public static double From(WaterField field, float[] clearances, int cell) => From(field, clearances, cell, Spread());

    private static double From(WaterField field, float[] clearances, int cell, (float X, float Y, float Z)[] directions)
    {
        int open = 0;
        foreach ((float x, float y, float z) in directions)
        {
            open += IsOpen(field, clearances, cell, x, y, z) ? 1 : 0;
        }

        return (double)open / directions.Length;
    }

    private static int[] Surface(WaterField field, float[] clearances)
    {
        GridShape shape = field.Shape;
        int[] steps = [1, -1, shape.Nx, -shape.Nx, shape.Plane, -shape.Plane];
        List<int> places = [];
        for (int i = field.BedPlanes * shape.Plane; i < clearances.Length - shape.Plane; i++)
        {
            // The margin around the solid keeps its neighbours within the grid.
            if (clearances[i] > 0f && clearances[i] < 2f * (float)field.Size.Width)
            {
                foreach (int step in steps)
                {
                    if (field.Values[i + step] >= WaterField.Level)
                    {
                        places.Add(i);
                        break;
                    }
                }
            }
        }

        return [.. places];
    }

    private static (float X, float Y, float Z)[] Spread()
    {
        (float X, float Y, float Z)[] directions = new (float, float, float)[Directions];
        double golden = Math.PI * (3.0 - Math.Sqrt(5.0));
        for (int i = 0; i < Directions; i++)
        {
            double z = (i + 0.5) / Directions, across = Math.Sqrt(1.0 - z * z);
            directions[i] = ((float)(across * Math.Cos(i * golden)), (float)(across * Math.Sin(i * golden)), (float)z);
        }

        return directions;
    }

    private static bool IsOpen(WaterField field, float[] clearances, int cell, float dx, float dy, float dz)
    {
        GridShape shape = field.Shape;
        float width = (float)field.Size.Width, height = (float)field.Size.Height;
        float x = (cell % shape.Nx + 0.5f) * width, y = (cell / shape.Nx % shape.Ny + 0.5f) * width, z = (cell / shape.Plane + 0.5f) * height;
        float least = 0.5f * Math.Min(width, height), slack = 0.9f * Math.Max(width, height);
        while (true)
        {
            int i = (int)(x / width), j = (int)(y / width), k = (int)(z / height);
            if (x < 0f || y < 0f || i >= shape.Nx || j >= shape.Ny || k >= shape.Nz)
            {
                return true;
            }

            float clear = clearances[shape.Index(i, j, k)];
            if (clear < 0f)
            {
                return false;
            }

            float step = Math.Max(least, clear - slack);
            (x, y, z) = (x + step * dx, y + step * dy, z + step * dz);
        }
    }
}
