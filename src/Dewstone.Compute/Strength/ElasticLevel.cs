using System.Runtime.Intrinsics;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>
/// Bricks of one grid with the share of each that is filled, and what they do to displacements: four load cases at once, one in each lane of a vector.
/// Nodes in index order (z (Ny + 1) + y) (Nx + 1) + x, three components a node; bricks in index order (z Ny + y) Nx + x.
/// </summary>
internal sealed class ElasticLevel
{
    /// <summary>Load cases worked at together.</summary>
    public const int Lanes = 4;

    private const int BricksWorthThreads = 4096;

    private readonly float[] filled;
    private readonly double[] blocks;
    private readonly Vector256<double>[] held;
    private readonly Parallelism parallelism;

    /// <summary>Prepares a grid.</summary>
    /// <param name="shape">Bricks along each axis.</param>
    /// <param name="filled">Share of each brick that is filled, 0 to 1; its stiffness is multiplied by it.</param>
    /// <param name="brick">Stiffness of a full brick.</param>
    /// <param name="scale">Factor on the stiffness: the edge of a brick over that of <paramref name="brick"/>.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public ElasticLevel(GridShape shape, float[] filled, BrickElement brick, double scale, Parallelism parallelism)
    {
        shape.Require(filled.Length, nameof(filled));
        Shape = shape;
        Nodes = new GridShape(shape.Nx + 1, shape.Ny + 1, shape.Nz + 1);
        this.filled = filled;
        this.parallelism = shape.Count >= BricksWorthThreads ? parallelism : new Parallelism(1);
        blocks = [.. brick.Blocks.Select(entry => entry * scale)];
        InverseDiagonal = Inverted(brick, scale);
        held = Field();
    }

    /// <summary>Bricks along each axis.</summary>
    public GridShape Shape { get; }

    /// <summary>Nodes along each axis.</summary>
    public GridShape Nodes { get; }

    /// <summary>Threads worth using.</summary>
    public Parallelism Threads => parallelism;

    /// <summary>One over the diagonal of the stiffness, three a node; 0 at nodes of no filled brick.</summary>
    public double[] InverseDiagonal { get; }

    /// <summary>Share of a brick that is filled.</summary>
    /// <param name="index">Flat index.</param>
    /// <returns>0 to 1.</returns>
    public float Filled(int index) => filled[index];

    /// <summary>Vectors for all nodes.</summary>
    /// <returns>Zeros.</returns>
    public Vector256<double>[] Field() => new Vector256<double>[3 * Nodes.Count];

    /// <summary>Forces that hold displacements: stiffness times displacement.</summary>
    /// <param name="displacement">Three a node.</param>
    /// <param name="force">Three a node; overwritten.</param>
    public void Apply(Vector256<double>[] displacement, Vector256<double>[] force)
    {
        Array.Clear(force);
        // Every other layer of bricks first: two of them share no node, so no order of threads changes a sum.
        for (int first = 0; first < 2; first++)
        {
            int start = first;
            Chunks.Run((Shape.Nz - first + 1) / 2, 1, parallelism, (layer, _) => Layer(start + 2 * layer, displacement, force));
        }
    }

    /// <summary>Forces that displacements leave unanswered.</summary>
    /// <param name="force">Forces; may be the same array as the rest.</param>
    /// <param name="displacement">Three a node.</param>
    /// <param name="rest">Force less stiffness times displacement; overwritten.</param>
    public void Rest(Vector256<double>[] force, Vector256<double>[] displacement, Vector256<double>[] rest)
    {
        Apply(displacement, held);
        NodeFields.Each(this, (from, end) =>
        {
            for (int i = from; i < end; i++)
            {
                rest[i] = force[i] - held[i];
            }
        });
    }

    private void Layer(int z, Vector256<double>[] displacement, Vector256<double>[] force)
    {
        Span<Vector256<double>> patterns = stackalloc Vector256<double>[24];
        Span<Vector256<double>> forces = stackalloc Vector256<double>[24];
        int row = 3 * Nodes.Nx, plane = 3 * Nodes.Plane;
        for (int y = 0; y < Shape.Ny; y++)
        {
            int brick = Shape.Index(0, y, z), node = 3 * Nodes.Index(0, y, z);
            for (int x = 0; x < Shape.Nx; x++, brick++, node += 3)
            {
                if (filled[brick] > 0f)
                {
                    for (int corner = 0; corner < 8; corner++)
                    {
                        int at = node + (corner & 1) * 3 + ((corner >> 1) & 1) * row + (corner >> 2) * plane;
                        (patterns[corner], patterns[8 + corner], patterns[16 + corner]) = (displacement[at], displacement[at + 1], displacement[at + 2]);
                    }

                    Hold(patterns, forces, filled[brick]);
                    for (int corner = 0; corner < 8; corner++)
                    {
                        int at = node + (corner & 1) * 3 + ((corner >> 1) & 1) * row + (corner >> 2) * plane;
                        force[at] += forces[corner];
                        force[at + 1] += forces[8 + corner];
                        force[at + 2] += forces[16 + corner];
                    }
                }
            }
        }
    }

    // Forces at the corners of one brick, by sign patterns.
    private void Hold(Span<Vector256<double>> u, Span<Vector256<double>> f, double share)
    {
        SignPatterns.Transform(u);
        SignPatterns.Transform(u[8..]);
        SignPatterns.Transform(u[16..]);
        ReadOnlySpan<double> k = blocks;
        Vector256<double> part = Vector256.Create(share);
        for (int w = 0; w < 8; w++)
        {
            Vector256<double> x = u[w] * part, y = u[8 + (w ^ 3)] * part, z = u[16 + (w ^ 5)] * part;
            int b = 9 * w;
            f[w] = k[b] * x + k[b + 1] * y + k[b + 2] * z;
            f[8 + (w ^ 3)] = k[b + 3] * x + k[b + 4] * y + k[b + 5] * z;
            f[16 + (w ^ 5)] = k[b + 6] * x + k[b + 7] * y + k[b + 8] * z;
        }

        SignPatterns.Transform(f);
        SignPatterns.Transform(f[8..]);
        SignPatterns.Transform(f[16..]);
    }

    private double[] Inverted(BrickElement brick, double scale)
    {
        double[] diagonal = new double[3 * Nodes.Count];
        for (int z = 0; z < Shape.Nz; z++)
        {
            for (int y = 0; y < Shape.Ny; y++)
            {
                for (int x = 0; x < Shape.Nx; x++)
                {
                    double share = filled[Shape.Index(x, y, z)] * scale;
                    for (int corner = 0; share > 0.0 && corner < 8; corner++)
                    {
                        int node = 3 * Nodes.Index(x + (corner & 1), y + ((corner >> 1) & 1), z + (corner >> 2));
                        for (int c = 0; c < 3; c++)
                        {
                            diagonal[node + c] += share * brick[3 * corner + c, 3 * corner + c];
                        }
                    }
                }
            }
        }

        for (int i = 0; i < diagonal.Length; i++)
        {
            diagonal[i] = diagonal[i] > 0.0 ? 1.0 / diagonal[i] : 0.0;
        }

        return diagonal;
    }
}
