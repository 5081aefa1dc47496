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

    /// <summary>The cheapest edges, in the order of their sides: what lies together is worked on together, which spares the caches.</summary>
    /// <param name="count">How many edges, at least; those about as cheap as the last come too.</param>
    /// <returns>Their sides.</returns>
    public int[] Cheapest(long count)
    {
        // Floats from 0 up sort as their bits do, so the upper 16 bits make a histogram that finds the costliest cost wanted.
        int[] histogram = new int[1 << 16];
        foreach (float cost in Costs)
        {
            histogram[BitConverter.SingleToInt32Bits(cost) >> 16]++;
        }

        int infinite = BitConverter.SingleToInt32Bits(float.PositiveInfinity) >> 16, bound = 0;
        int taken = 0;
        for (; bound < infinite && taken < count; bound++)
        {
            taken += histogram[bound];
        }

        int[] cheapest = new int[taken];
        int next = 0;
        for (int side = 0; side < Costs.Length; side++)
        {
            if (BitConverter.SingleToInt32Bits(Costs[side]) >> 16 < bound)
            {
                cheapest[next++] = side;
            }
        }

        return cheapest;
    }
}
