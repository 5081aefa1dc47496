using Dewstone.Model.Results;

namespace Dewstone.Compute.Numerics;

/// <summary>What drawing each edge of a shrinking surface together costs.</summary>
internal sealed class EdgeCosts
{
    private const int TrianglesTogether = 4096;

    private EdgeCosts(int sides)
    {
        Costs = new float[sides];
    }

    /// <summary>Cost by side (3 x triangle + k, from its corner k to the next); infinite for the side that its neighbour stands for.</summary>
    public float[] Costs { get; }

    /// <summary>Finds the costs of all edges.</summary>
    /// <param name="surface">The surface.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>The costs.</returns>
    public static EdgeCosts Of(ShrinkingSurface surface, Parallelism parallelism)
    {
        EdgeCosts costs = new(3 * surface.TriangleCount);
        Chunks.Run(surface.TriangleCount, TrianglesTogether, parallelism, (first, end) =>
        {
            ReadOnlySpan<int> triangles = surface.Triangles;
            for (int side = 3 * first; side < 3 * end; side++)
            {
                int from = triangles[side], to = triangles[side % 3 == 2 ? side - 2 : side + 1];
                double cost = double.PositiveInfinity;
                if (from < to)
                {
                    surface.Best(from, to, out cost);
                }

                costs.Costs[side] = (float)cost;
            }
        });
        return costs;
    }

    /// <summary>The cheaper edges, cheapest first.</summary>
    /// <param name="share">Share of all edges, about; 0 to 1.</param>
    /// <returns>Their sides.</returns>
    public int[] Cheapest(double share)
    {
        // Floats from 0 up sort as their bits do, so the upper 16 bits make a histogram that finds the costliest cost wanted.
        int[] histogram = new int[1 << 16];
        int edges = 0;
        foreach (float cost in Costs)
        {
            if (float.IsFinite(cost))
            {
                histogram[BitConverter.SingleToInt32Bits(cost) >> 16]++;
                edges++;
            }
        }

        int bound = 0;
        for (int taken = 0; bound < histogram.Length && taken < share * edges; bound++)
        {
            taken += histogram[bound];
        }

        List<long> chosen = new((int)(share * edges) + 1);
        for (int side = 0; side < Costs.Length; side++)
        {
            int bits = BitConverter.SingleToInt32Bits(Costs[side]);
            if (float.IsFinite(Costs[side]) && bits >> 16 < bound)
            {
                chosen.Add(((long)bits << 32) | (uint)side);
            }
        }

        chosen.Sort();
        return [.. chosen.ConvertAll(key => (int)key)];
    }
}
