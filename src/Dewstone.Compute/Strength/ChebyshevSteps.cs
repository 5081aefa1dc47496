using System.Runtime.Intrinsics;

namespace Dewstone.Compute.Strength;

/// <summary>Relaxation that damps the rough part of an error: two steps scaled by the diagonal, with weights from Chebyshev's polynomial.</summary>
/// <remarks>
/// The stiffness of a grid and its diagonal are sums over bricks, so the largest eigenvalue of diagonal^-1 stiffness is at most that of a single brick, whatever
/// is filled. Source: Adams, Brezina, Hu and Tuminaro, 2003, "Parallel multigrid smoothing: polynomial versus Gauss-Seidel", Journal of Computational Physics
/// 188 (from memory).
/// </remarks>
/// <param name="largest">Largest eigenvalue of one brick.</param>
internal sealed class ChebyshevSteps(double largest)
{
    /// <summary>Errors whose eigenvalue is below this share of the largest are left to the coarser grids, 1.</summary>
    private const double RoughFrom = 0.2;

    private readonly double middle = 0.5 * largest * (1.0 + RoughFrom);
    private readonly double half = 0.5 * largest * (1.0 - RoughFrom);

    /// <summary>Steps for a brick.</summary>
    /// <param name="brick">The brick.</param>
    /// <returns>The steps.</returns>
    public static ChebyshevSteps Of(BrickElement brick)
    {
        const int Rounds = 200;
        double[] vector = new double[24], next = new double[24];
        for (int i = 0; i < 24; i++)
        {
            vector[i] = 1.0 + 0.37 * (i * 7 % 24);
        }

        double largest = 0.0;
        for (int round = 0; round < Rounds; round++)
        {
            largest = 0.0;
            for (int i = 0; i < 24; i++)
            {
                double sum = 0.0;
                for (int j = 0; j < 24; j++)
                {
                    sum += brick[i, j] * vector[j];
                }

                next[i] = sum / brick[i, i];
                largest = Math.Max(largest, Math.Abs(next[i]));
            }

            for (int i = 0; i < 24; i++)
            {
                vector[i] = next[i] / largest;
            }
        }

        return new ChebyshevSteps(largest);
    }

    /// <summary>Steps from nothing.</summary>
    /// <param name="level">The grid.</param>
    /// <param name="force">Forces to answer.</param>
    /// <param name="answer">Displacements; overwritten.</param>
    /// <param name="rest">Room to work in.</param>
    /// <param name="step">Room to work in.</param>
    public void FromNothing(ElasticLevel level, Vector256<double>[] force, Vector256<double>[] answer, Vector256<double>[] rest, Vector256<double>[] step)
    {
        Array.Clear(answer);
        Array.Copy(force, rest, force.Length);
        Both(level, answer, rest, step);
    }

    /// <summary>Steps from an answer.</summary>
    /// <param name="level">The grid.</param>
    /// <param name="force">Forces to answer.</param>
    /// <param name="answer">Displacements; improved.</param>
    /// <param name="rest">Room to work in.</param>
    /// <param name="step">Room to work in.</param>
    public void Improve(ElasticLevel level, Vector256<double>[] force, Vector256<double>[] answer, Vector256<double>[] rest, Vector256<double>[] step)
    {
        level.Rest(force, answer, rest);
        Both(level, answer, rest, step);
    }

    private void Both(ElasticLevel level, Vector256<double>[] answer, Vector256<double>[] rest, Vector256<double>[] step)
    {
        double[] inverse = level.InverseDiagonal;
        double first = 1.0 / middle;
        NodeFields.Each(level, (from, end) =>
        {
            for (int i = from; i < end; i++)
            {
                step[i] = first * inverse[i] * rest[i];
                answer[i] += step[i];
            }
        });
        level.Rest(rest, step, rest);
        double ratio = middle / half, factor = 1.0 / (2.0 * ratio - half / middle), kept = factor * half / middle, fresh = 2.0 * factor / half;
        NodeFields.Each(level, (from, end) =>
        {
            for (int i = from; i < end; i++)
            {
                answer[i] += kept * step[i] + fresh * inverse[i] * rest[i];
            }
        });
    }
}
