using Dewstone.Model.Results;

namespace Dewstone.Compute.Survey;

/// <summary>Points of a scan, evenly spread: large triangles are filled, dense places thinned.</summary>
public static class ScanPoints
{
    private const int MostSteps = 256;

    /// <summary>Spreads the points of a scan.</summary>
    /// <param name="scan">The scan.</param>
    /// <param name="spacingMetres">Edge of the boxes of which each keeps its first point, metres.</param>
    /// <returns>x y z one after another, metres, in the scan's frame and order.</returns>
    public static float[] Of(UnitScan scan, double spacingMetres)
    {
        ArgumentNullException.ThrowIfNull(scan);
        HashSet<(int, int, int)> taken = [];
        List<float> points = [];
        void Take(float x, float y, float z)
        {
            if (taken.Add(((int)Math.Floor(x / spacingMetres), (int)Math.Floor(y / spacingMetres), (int)Math.Floor(z / spacingMetres))))
            {
                points.AddRange([x, y, z]);
            }
        }

        float[] p = scan.Positions;
        for (int i = 0; i < p.Length; i += scan.IsSurface ? 9 : 3)
        {
            if (!scan.IsSurface)
            {
                Take(p[i], p[i + 1], p[i + 2]);
                continue;
            }

            int steps = Math.Clamp((int)Math.Ceiling(Math.Max(Edge(p, i, i + 3), Math.Max(Edge(p, i + 3, i + 6), Edge(p, i + 6, i))) / spacingMetres), 1, MostSteps);
            for (int a = 0; a < steps; a++)
            {
                for (int b = 0; a + b < steps; b++)
                {
                    float u = (a + 1f / 3f) / steps, v = (b + 1f / 3f) / steps, w = 1f - u - v;
                    Take(w * p[i] + u * p[i + 3] + v * p[i + 6], w * p[i + 1] + u * p[i + 4] + v * p[i + 7], w * p[i + 2] + u * p[i + 5] + v * p[i + 8]);
                }
            }
        }

        return [.. points];
    }

    private static double Edge(float[] p, int a, int b)
    {
        double x = p[a] - p[b], y = p[a + 1] - p[b + 1], z = p[a + 2] - p[b + 2];
        return Math.Sqrt(x * x + y * y + z * z);
    }
}
