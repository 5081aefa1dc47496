using System.Runtime.Intrinsics;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Strength;

/// <summary>
/// Bricks of one grid with what of each is filled, and what they do to displacements: four load cases at once, one in each lane of a vector.
/// Nodes in index order (z (Ny + 1) + y) (Nx + 1) + x, three components a node; bricks in index order (z Ny + y) Nx + x.
/// </summary>
internal sealed class ElasticLevel
{
    /// <summary>Load cases worked at together.</summary>
    public const int Lanes = 4;

    private const int BricksWorthThreads = 4096;

    /// <summary>
    /// Stiffness that the void of a partly filled brick keeps, as a share of that of its filling: without any, corners of the brick that nothing filled is near
    /// to would be free to move. Common practice of the method, no source; 0.05 instead lowers the example block's tension by 1 to 3 %.
    /// </summary>
    private const float OfVoid = 0.01f;

    private const float Round = 1e-5f;

    private readonly float[] moments;
    private readonly bool[] isEven;
    private readonly double[] blocks;
    private readonly FilledStiffness uneven;
    private readonly Vector256<double>[] held;
    private readonly Parallelism parallelism;

    /// <summary>Prepares a grid.</summary>
    /// <param name="shape">Bricks along each axis.</param>
    /// <param name="moments">What of each brick is filled: 27 a brick as in <see cref="FilledMoments"/>; kept.</param>
    /// <param name="brick">Stiffness of a full brick.</param>
    /// <param name="scale">Factor on the stiffness: the edge of a brick over that of <paramref name="brick"/>.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    public ElasticLevel(GridShape shape, float[] moments, BrickElement brick, double scale, Parallelism parallelism)
    {
        if (moments.Length != FilledMoments.Count * shape.Count)
        {
            throw new ArgumentException($"{moments.Length} moments for {shape.Count} bricks of {FilledMoments.Count}.", nameof(moments));
        }

        Shape = shape;
        Nodes = new GridShape(shape.Nx + 1, shape.Ny + 1, shape.Nz + 1);
        (this.moments, isEven) = (moments, new bool[shape.Count]);
        StiffenVoid();
        this.parallelism = shape.Count >= BricksWorthThreads ? parallelism : new Parallelism(1);
        blocks = [.. brick.Blocks.Select(entry => entry * scale)];
        uneven = new FilledStiffness(brick, scale);
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
    public float Filled(int index) => moments[FilledMoments.Count * index];

    /// <summary>What of a brick is filled.</summary>
    /// <param name="index">Flat index of the brick.</param>
    /// <returns>27, as in <see cref="FilledMoments"/>.</returns>
    public ReadOnlySpan<float> Moments(int index) => moments.AsSpan(FilledMoments.Count * index, FilledMoments.Count);

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
                if (Filled(brick) > 0f)
                {
                    for (int corner = 0; corner < 8; corner++)
                    {
                        int at = node + (corner & 1) * 3 + ((corner >> 1) & 1) * row + (corner >> 2) * plane;
                        (patterns[corner], patterns[8 + corner], patterns[16 + corner]) = (displacement[at], displacement[at + 1], displacement[at + 2]);
                    }

                    Hold(patterns, forces, brick);
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
    private void Hold(Span<Vector256<double>> u, Span<Vector256<double>> f, int brick)
    {
        SignPatterns.Transform(u);
        SignPatterns.Transform(u[8..]);
        SignPatterns.Transform(u[16..]);
        if (isEven[brick])
        {
            HoldEven(u, f, Filled(brick));
        }
        else
        {
            uneven.Hold(u, f, Moments(brick));
        }

        SignPatterns.Transform(f);
        SignPatterns.Transform(f[8..]);
        SignPatterns.Transform(f[16..]);
    }

    // What FilledStiffness gives for evenly filled bricks, with a fifth of its operations.
    private void HoldEven(Span<Vector256<double>> u, Span<Vector256<double>> f, double share)
    {
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
    }

    private void StiffenVoid()
    {
        for (int brick = 0; brick < isEven.Length; brick++)
        {
            Span<float> here = moments.AsSpan(FilledMoments.Count * brick, FilledMoments.Count);
            float filled = here[0];
            bool even = true;
            for (int m = 0; m < here.Length; m++)
            {
                even &= Math.Abs(here[m] - filled * FilledMoments.Full[m]) <= Round * filled;
            }

            isEven[brick] = even;
            for (int m = 0; m < here.Length && !even; m++)
            {
                here[m] += (float)(OfVoid * filled * FilledMoments.Full[m]);
            }
        }
    }

    private double[] Inverted(BrickElement brick, double scale)
    {
        double[] diagonal = new double[3 * Nodes.Count], ofMoments = uneven.Entries(Enumerable.Range(0, 24).Select(i => (i, i)));
        double rougher = ChebyshevSteps.Rougher(brick);
        for (int z = 0; z < Shape.Nz; z++)
        {
            for (int y = 0; y < Shape.Ny; y++)
            {
                for (int x = 0; x < Shape.Nx; x++)
                {
                    int index = Shape.Index(x, y, z);
                    for (int i = 0; Filled(index) > 0f && i < 24; i++)
                    {
                        int corner = i / 3, node = 3 * Nodes.Index(x + (corner & 1), y + ((corner >> 1) & 1), z + (corner >> 2));
                        diagonal[node + i % 3] += isEven[index]
                            ? scale * Filled(index) * brick[i, i]
                            // Taken larger, so that the largest eigenvalue of diagonal^-1 stiffness stays that of an even brick.
                            : rougher * FilledStiffness.Sum(ofMoments.AsSpan(FilledMoments.Count * i, FilledMoments.Count), Moments(index));
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
