using System.Runtime.Intrinsics;
using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Strength;

/// <summary>Work over all entries of a field of nodes, in stretches that depend on the grid alone.</summary>
internal static class NodeFields
{
    private const int Together = 8192;

    /// <summary>Runs a body over stretches of entries.</summary>
    /// <param name="level">The grid.</param>
    /// <param name="body">Called with the first entry and the one after the last.</param>
    public static void Each(ElasticLevel level, Action<int, int> body) => Chunks.Run(3 * level.Nodes.Count, Together, level.Threads, body);

    /// <summary>Scalar products, one a lane, added up stretch by stretch in their order.</summary>
    /// <param name="level">The grid.</param>
    /// <param name="a">First field.</param>
    /// <param name="b">Second field.</param>
    /// <returns>One product a lane.</returns>
    public static Vector256<double> Dot(ElasticLevel level, Vector256<double>[] a, Vector256<double>[] b)
    {
        var parts = new Vector256<double>[a.Length / Together + 1];
        Each(level, (from, end) =>
        {
            Vector256<double> sum = default;
            for (int i = from; i < end; i++)
            {
                sum += a[i] * b[i];
            }

            parts[from / Together] = sum;
        });
        Vector256<double> all = default;
        foreach (Vector256<double> part in parts)
        {
            all += part;
        }

        return all;
    }
}
