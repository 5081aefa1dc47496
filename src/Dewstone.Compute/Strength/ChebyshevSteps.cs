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
    public static ChebyshevSteps Of(BrickElement brick) => new(LargestOf((i, j) => brick[i, j]));

    /// <summary>
    /// How much larger the largest eigenvalue of diagonal^-1 stiffness can be for a brick filled at a single point than for a full one: no filling leads beyond it,
    /// since stiffness and diagonal are sums over what is filled.
    /// </summary>
    /// <param name="brick">The brick.</param>
    /// <returns>1 or more; looked for at 27 points of an octant, the others mirror them.</returns>
    public static double Rougher(BrickElement brick)
    {
        double[] entries = new FilledStiffness(brick, 1.0).Entries(Enumerable.Range(0, 24 * 24).Select(i => (i / 24, i % 24)));
        double largest = 0.0;
        for (int point = 0; point < 27; point++)
        {
            float[] moments =
                [.. Enumerable.Range(0, FilledMoments.Count).Select(m => (float)(At(point % 3, m % 3) * At(point / 3 % 3, m / 3 % 3) * At(point / 9, m / 9)))];
            largest = Math.Max(largest, LargestOf(
                (i, j) => FilledStiffness.Sum(entries.AsSpan(FilledMoments.Count * (24 * i + j), FilledMoments.Count), moments)));
        }

        return largest / LargestOf((i, j) => brick[i, j]);

        static double At(int place, int power) => Math.Pow(0.5 * place, power);
    }

    private static double LargestOf(Func<int, int, double> stiffness)
    {
        const int Rounds = 200;
        double[] matrix = [.. Enumerable.Range(0, 24 * 24).Select(i => stiffness(i / 24, i % 24))];
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
                    sum += matrix[24 * i + j] * vector[j];
                }

                next[i] = matrix[25 * i] > 0.0 ? sum / matrix[25 * i] : 0.0;
                largest = Math.Max(largest, Math.Abs(next[i]));
            }

            for (int i = 0; i < 24; i++)
            {
                vector[i] = next[i] / largest;
            }
        }

        return largest;
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
