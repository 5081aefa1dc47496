using System.Runtime.Intrinsics;
using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Strength;

/// <summary>Carries fields of nodes between a grid and the one with bricks twice as long: linear between the coarse nodes, and its transpose.</summary>
internal static class NodeTransfer
{
    /// <summary>Adds a coarse field to a fine one, linear between the coarse nodes.</summary>
    /// <param name="coarse">Coarse grid.</param>
    /// <param name="from">Three a coarse node.</param>
    /// <param name="fine">Fine grid, twice as many bricks along each axis.</param>
    /// <param name="onto">Three a fine node; added to.</param>
    public static void AddUp(ElasticLevel coarse, Vector256<double>[] from, ElasticLevel fine, Vector256<double>[] onto)
    {
        GridShape few = coarse.Nodes, many = fine.Nodes;
        Chunks.Run(many.Nz, 1, fine.Threads, (z, _) =>
        {
            for (int y = 0; y < many.Ny; y++)
            {
                for (int x = 0; x < many.Nx; x++)
                {
                    Vector256<double> a = default, b = default, c = default;
                    for (int corner = 0; corner < 8; corner++)
                    {
                        int at = 3 * few.Index((x + (corner & 1)) >> 1, (y + ((corner >> 1) & 1)) >> 1, (z + (corner >> 2)) >> 1);
                        (a, b, c) = (a + from[at], b + from[at + 1], c + from[at + 2]);
                    }

                    int node = 3 * many.Index(x, y, z);
                    onto[node] += 0.125 * a;
                    onto[node + 1] += 0.125 * b;
                    onto[node + 2] += 0.125 * c;
                }
            }
        });
    }

    /// <summary>Gathers a fine field at coarse nodes: the transpose of <see cref="AddUp"/>.</summary>
    /// <param name="fine">Fine grid.</param>
    /// <param name="from">Three a fine node.</param>
    /// <param name="coarse">Coarse grid.</param>
    /// <param name="onto">Three a coarse node; overwritten.</param>
    public static void Gather(ElasticLevel fine, Vector256<double>[] from, ElasticLevel coarse, Vector256<double>[] onto)
    {
        GridShape few = coarse.Nodes, many = fine.Nodes;
        Chunks.Run(few.Nz, 1, fine.Threads, (z, _) =>
        {
            for (int y = 0; y < few.Ny; y++)
            {
                for (int x = 0; x < few.Nx; x++)
                {
                    Vector256<double> a = default, b = default, c = default;
                    for (int k = Math.Max(0, 2 * z - 1); k <= Math.Min(many.Nz - 1, 2 * z + 1); k++)
                    {
                        for (int j = Math.Max(0, 2 * y - 1); j <= Math.Min(many.Ny - 1, 2 * y + 1); j++)
                        {
                            for (int i = Math.Max(0, 2 * x - 1); i <= Math.Min(many.Nx - 1, 2 * x + 1); i++)
                            {
                                double weight = (((i & 1) == 0) ? 1.0 : 0.5) * (((j & 1) == 0) ? 1.0 : 0.5) * (((k & 1) == 0) ? 1.0 : 0.5);
                                int at = 3 * many.Index(i, j, k);
                                (a, b, c) = (a + weight * from[at], b + weight * from[at + 1], c + weight * from[at + 2]);
                            }
                        }
                    }

                    int node = 3 * few.Index(x, y, z);
                    (onto[node], onto[node + 1], onto[node + 2]) = (a, b, c);
                }
            }
        });
    }
}
