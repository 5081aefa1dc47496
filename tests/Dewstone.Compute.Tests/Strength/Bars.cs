using Dewstone.Compute.Numerics;
using Dewstone.Compute.Strength;

namespace Dewstone.Compute.Tests.Strength;

/// <summary>Straight bars along x with a square section, and forces on them in balance.</summary>
internal sealed class Bars
{
    public const double Length = 1.0, Depth = 0.25;

    private Bars(int across, double poisson)
    {
        Across = across;
        Shape = new GridShape(4 * across, across, across);
        Edge = Depth / across;
        float[] filled = new float[Shape.Count];
        Array.Fill(filled, 1f);
        Solver = new ElasticSolver(Shape, filled, new BrickElement(Edge, Edge, Edge, poisson), new Model.Results.Parallelism(2));
    }

    public int Across { get; }

    public GridShape Shape { get; }

    public double Edge { get; }

    public ElasticSolver Solver { get; }

    public static double Inertia => Math.Pow(Depth, 4) / 12.0;

    public static Bars Of(int across, double poisson = 0.0) => new(across, poisson);

    /// <summary>Spreads shear over an end as the theory of bending has it, parabolic over the depth (z), in sum <paramref name="newtons"/>.</summary>
    public void EndShear(int node, double newtons) => OnEnd(node, 2, z => 1.5 * newtons / (Depth * Depth) * (1.0 - 4.0 * z * z / (Depth * Depth)));

    /// <summary>Bends an end: normal stress straight over the depth; the moment turns z into x for a tension below.</summary>
    public void EndMoment(int node, double newtonMetres) => OnEnd(node, 0, z => newtonMetres * z / Inertia);

    /// <summary>A force on the whole length, spread over the volume.</summary>
    public void Weight(double newtonsPerMetre)
    {
        for (int i = 0; i < Shape.Count; i++)
        {
            Solver.AddLift(0, i % Shape.Nx, i / Shape.Nx % Shape.Ny, i / Shape.Plane, -newtonsPerMetre * Edge / (Across * Across));
        }
    }

    /// <summary>Mean over a section of a displacement (Cowper's measure of deflection).</summary>
    public double Mean(int node, int component) => OverSection((y, z) => Solver.Displacement(0, node, y, z, component)) / (Depth * Depth);

    /// <summary>Mean turn of a section: first moment of the x displacement over the second moment of area, by the same rule.</summary>
    public double Turn(int node) =>
        OverSection((y, z) => (z * Edge - Depth / 2.0) * Solver.Displacement(0, node, y, z, 0)) / OverSection((_, z) => (z * Edge - Depth / 2.0) * (z * Edge - Depth / 2.0));

    /// <summary>Mean stress of a brick: of its octants.</summary>
    public Stress Stress(int x, int y, int z)
    {
        Stress[] octants = new Stress[8];
        Solver.StressesAt(0, x, y, z, octants);
        return new Stress(octants.Average(s => s.Xx), octants.Average(s => s.Yy), octants.Average(s => s.Zz), octants.Average(s => s.Yz), octants.Average(s => s.Zx), octants.Average(s => s.Xy));
    }

    // Trapezoids along y and z.
    private double OverSection(Func<int, int, double> value)
    {
        double sum = 0.0;
        for (int y = 0; y <= Across; y++)
        {
            for (int z = 0; z <= Across; z++)
            {
                sum += value(y, z) * (y == 0 || y == Across ? 0.5 : 1.0) * (z == 0 || z == Across ? 0.5 : 1.0);
            }
        }

        return sum * Edge * Edge;
    }

    // Consistent forces of a stress over an end, two Gauss points along each edge of a face.
    private void OnEnd(int node, int component, Func<double, double> stress)
    {
        double point = 1.0 / Math.Sqrt(3.0);
        for (int y = 0; y < Across; y++)
        {
            for (int z = 0; z < Across; z++)
            {
                for (int gauss = 0; gauss < 2; gauss++)
                {
                    double at = gauss == 0 ? -point : point;
                    double force = stress((z + 0.5 + 0.5 * at) * Edge - Depth / 2.0) * Edge * Edge / 2.0;
                    for (int corner = 0; corner < 4; corner++)
                    {
                        double share = 0.5 * ((corner & 2) == 0 ? 0.5 * (1.0 - at) : 0.5 * (1.0 + at));
                        Solver.AddForce(0, node, y + (corner & 1), z + (corner >> 1), component, force * share);
                    }
                }
            }
        }
    }
}
