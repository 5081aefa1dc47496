using System.Runtime.Intrinsics;
using Dewstone.Compute.Numerics;

namespace Dewstone.Compute.Strength;

/// <summary>Solves the coarsest grid exactly, up to a rigid motion, by Cholesky's factors.</summary>
/// <remarks>
/// Nothing holds the body, so its stiffness has six motions without force. They are made orthonormal and given a stiffness of their own, which changes no
/// answer to forces in balance. Degrees of freedom of no filled brick get the stiffness 1 and stay 0.
/// </remarks>
internal sealed class CoarsestSolve
{
    private readonly int count;
    private readonly double[] factor;

    /// <summary>Factors a grid.</summary>
    /// <param name="level">The grid; at most some hundreds of nodes.</param>
    /// <param name="brick">Stiffness of a full brick, for edges and entries.</param>
    /// <param name="scale">Factor on the stiffness.</param>
    public CoarsestSolve(ElasticLevel level, BrickElement brick, double scale)
    {
        count = 3 * level.Nodes.Count;
        factor = Assembled(level, brick, scale);
        HoldRigid(level, brick);
        Factorise();
    }

    /// <summary>Solves.</summary>
    /// <param name="force">Three a node.</param>
    /// <param name="displacement">Three a node; overwritten.</param>
    public void Solve(Vector256<double>[] force, Vector256<double>[] displacement)
    {
        for (int i = 0; i < count; i++)
        {
            Vector256<double> sum = force[i];
            for (int j = 0; j < i; j++)
            {
                sum -= factor[i * count + j] * displacement[j];
            }

            displacement[i] = sum * (1.0 / factor[i * count + i]);
        }

        for (int i = count - 1; i >= 0; i--)
        {
            Vector256<double> value = displacement[i] * (1.0 / factor[i * count + i]);
            displacement[i] = value;
            for (int j = 0; j < i; j++)
            {
                displacement[j] -= factor[i * count + j] * value;
            }
        }
    }

    private double[] Assembled(ElasticLevel level, BrickElement brick, double scale)
    {
        double[] matrix = new double[count * count];
        double[] entries = new FilledStiffness(brick, scale).Entries(Enumerable.Range(0, 24 * 24).Select(i => (i / 24, i % 24)));
        GridShape shape = level.Shape;
        for (int index = 0; index < shape.Count; index++)
        {
            for (int i = 0; level.Filled(index) > 0f && i < 24 * 24; i++)
            {
                matrix[Freedom(level, index, i / 24) * count + Freedom(level, index, i % 24)] +=
                    FilledStiffness.Sum(entries.AsSpan(FilledMoments.Count * i, FilledMoments.Count), level.Moments(index));
            }
        }

        for (int i = 0; i < count; i++)
        {
            matrix[i * count + i] = level.InverseDiagonal[i] == 0.0 ? 1.0 : matrix[i * count + i];
        }

        return matrix;
    }

    private static int Freedom(ElasticLevel level, int brick, int freedom)
    {
        GridShape shape = level.Shape;
        int corner = freedom / 3, x = brick % shape.Nx, y = brick / shape.Nx % shape.Ny, z = brick / shape.Plane;
        return 3 * level.Nodes.Index(x + (corner & 1), y + ((corner >> 1) & 1), z + (corner >> 2)) + freedom % 3;
    }

    private void HoldRigid(ElasticLevel level, BrickElement brick)
    {
        double largest = 0.0;
        for (int i = 0; i < count; i++)
        {
            largest = Math.Max(largest, level.InverseDiagonal[i] == 0.0 ? 0.0 : factor[i * count + i]);
        }

        List<double[]> held = [];
        for (int motion = 0; motion < 6; motion++)
        {
            double[] vector = Motion(level, brick, motion);
            foreach (double[] earlier in held)
            {
                double along = Dot(earlier, vector);
                for (int i = 0; i < count; i++)
                {
                    vector[i] -= along * earlier[i];
                }
            }

            double length = Math.Sqrt(Dot(vector, vector));
            for (int i = 0; length > 0.0 && i < count; i++)
            {
                vector[i] /= length;
            }

            held.Add(vector);
            for (int i = 0; i < count; i++)
            {
                for (int j = 0; vector[i] != 0.0 && j < count; j++)
                {
                    factor[i * count + j] += largest * vector[i] * vector[j];
                }
            }
        }
    }

    // Three shifts and three turns about the grid's middle, at nodes of filled bricks.
    private double[] Motion(ElasticLevel level, BrickElement brick, int motion)
    {
        double[] vector = new double[count];
        GridShape nodes = level.Nodes;
        for (int node = 0; node < nodes.Count; node++)
        {
            double x = (node % nodes.Nx - 0.5 * level.Shape.Nx) * brick.EdgeX, y = (node / nodes.Nx % nodes.Ny - 0.5 * level.Shape.Ny) * brick.EdgeY;
            double z = (node / nodes.Plane - 0.5 * level.Shape.Nz) * brick.EdgeZ;
            (double u, double v, double w) = motion switch
            {
                0 => (1.0, 0.0, 0.0),
                1 => (0.0, 1.0, 0.0),
                2 => (0.0, 0.0, 1.0),
                3 => (0.0, -z, y),
                4 => (z, 0.0, -x),
                _ => (-y, x, 0.0),
            };
            bool exists = level.InverseDiagonal[3 * node] > 0.0;
            (vector[3 * node], vector[3 * node + 1], vector[3 * node + 2]) = exists ? (u, v, w) : (0.0, 0.0, 0.0);
        }

        return vector;
    }

    private static double Dot(double[] a, double[] b)
    {
        double sum = 0.0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    private void Factorise()
    {
        for (int i = 0; i < count; i++)
        {
            for (int j = 0; j <= i; j++)
            {
                double sum = factor[i * count + j];
                for (int k = 0; k < j; k++)
                {
                    sum -= factor[i * count + k] * factor[j * count + k];
                }

                factor[i * count + j] = i == j ? Math.Sqrt(sum) : sum / factor[j * count + j];
            }
        }
    }
}
