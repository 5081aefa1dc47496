using BenchmarkDotNet.Attributes;
using Dewstone.Compute.Numerics;
using Dewstone.Compute.Strength;
using Dewstone.Model.Results;

namespace Dewstone.Benchmarks;

/// <summary>
/// Finite elements: a cube of bricks with two crossing tunnels, four sets of forces at once, matrices and all. It is symmetric about its middle, so
/// forces that grow with the distance from a middle plane are in balance.
/// </summary>
public class ElasticBenchmarks
{
    private GridShape shape;
    private float[] filled = [];

    /// <summary>Bricks a side.</summary>
    [Params(24, 48)]
    public int Side { get; set; }

    /// <summary>Threads.</summary>
    [Params(1, 2)]
    public int Threads { get; set; }

    /// <summary>Bricks that are filled.</summary>
    public int Bricks => filled.Count(share => share > 0f);

    /// <summary>Makes the body.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        shape = new GridShape(Side, Side, Side);
        filled = new float[shape.Count];
        for (int i = 0; i < filled.Length; i++)
        {
            bool x = Middle(i % Side), y = Middle(i / Side % Side), z = Middle(i / shape.Plane);
            filled[i] = (y && z) || (x && z) ? 0f : 1f;
        }
    }

    /// <summary>From bricks to displacements.</summary>
    /// <returns>Rounds.</returns>
    [Benchmark]
    public int Solve()
    {
        double edge = 0.9 / Side;
        ElasticSolver solver = new(shape, filled, new BrickElement(edge, edge, edge, 0.2), new Parallelism(Threads));
        for (int i = 0; i < filled.Length; i++)
        {
            if (filled[i] > 0f)
            {
                Pull(solver, i % Side, i / Side % Side, i / shape.Plane);
            }
        }

        solver.Solve(CancellationToken.None);
        return solver.Rounds;
    }

    private bool Middle(int brick) => brick >= 3 * Side / 8 && brick < 5 * Side / 8;

    private void Pull(ElasticSolver solver, int x, int y, int z)
    {
        double middle = (Side - 1) / 2.0, east = x - middle, up = z - middle;
        for (int corner = 0; corner < 8; corner++)
        {
            (int i, int j, int k) = (x + (corner & 1), y + ((corner >> 1) & 1), z + (corner >> 2));
            solver.AddForce(0, i, j, k, 0, east);
            solver.AddForce(1, i, j, k, 1, y - middle);
            solver.AddForce(2, i, j, k, 2, up);
            solver.AddForce(3, i, j, k, 2, up * east * east);
        }
    }
}
