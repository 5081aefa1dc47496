using System.Runtime.Intrinsics;

namespace Dewstone.Compute.Strength;

/// <summary>Stiffness of a brick of which only a part is filled: the work of its strains, integrated over that part alone.</summary>
/// <remarks>
/// So a brick filled to a third of its height is stiff in its lowest third, not a third as stiff all over: the foot of a unit bends as the foot it is. The
/// incompatible modes keep the amounts they have in a full brick, so the patch test holds whatever is filled, and an evenly filled brick is that of
/// <see cref="BrickElement"/>. Strain 8 s + w: amount of pattern w (<see cref="FilledMoments"/>) in strain s, in the order xx, yy, zz, yz, zx, xy; term
/// 8 c + v: sign pattern v of the corners' displacements in direction c. Few of the 48 x 24 entries between them are not 0.
/// </remarks>
internal sealed class FilledStiffness
{
    private const int Strains = 48, Terms = 24;

    private readonly double[,] inPatterns = new double[Strains, Terms];
    private readonly (int Strain, int Term, double Factor)[] entries;
    private readonly double direct, lateral, shear;

    /// <summary>Prepares a brick.</summary>
    /// <param name="brick">The full brick.</param>
    /// <param name="scale">Factor on the stiffness.</param>
    public FilledStiffness(BrickElement brick, double scale)
    {
        double volume = scale * brick.EdgeX * brick.EdgeY * brick.EdgeZ;
        (direct, lateral, shear) = (volume * brick.Direct, volume * brick.Lateral, volume * brick.Shear);
        for (int i = 0; i < Strains * Terms * 64; i++)
        {
            int strain = i / (Terms * 64) / 8, w = i / (Terms * 64) % 8, term = i / 64 % Terms, corner = i / 8 % 8, point = i % 8;
            // The sums over Gauss points at 1 / sqrt 3 with the signs of w are 8 times the amount of pattern w times that power of 1 / sqrt 3.
            double value = brick.GaussStrain(point, strain, 3 * corner + term / 8) * Math.Pow(3.0, 0.5 * System.Numerics.BitOperations.PopCount((uint)w));
            inPatterns[8 * strain + w, term] += value * SignPatterns.Sign(w, point) * SignPatterns.Sign(w, 7) * SignPatterns.Sign(term % 8, corner) / 64.0;
        }

        double largest = inPatterns.Cast<double>().Max(Math.Abs);
        entries =
        [
            .. from strain in Enumerable.Range(0, Strains) from term in Enumerable.Range(0, Terms) where Math.Abs(inPatterns[strain, term]) > 1e-12 * largest
               select (strain, term, inPatterns[strain, term]),
        ];
    }

    /// <summary>Forces of displacements, both in sign patterns.</summary>
    /// <param name="u">Patterns of the displacements, 24.</param>
    /// <param name="f">Patterns of the forces, 24; overwritten.</param>
    /// <param name="moments">What is filled.</param>
    public void Hold(ReadOnlySpan<Vector256<double>> u, Span<Vector256<double>> f, ReadOnlySpan<float> moments)
    {
        Span<Vector256<double>> strain = stackalloc Vector256<double>[Strains], filled = stackalloc Vector256<double>[Strains];
        strain.Clear();
        foreach ((int row, int term, double factor) in entries)
        {
            strain[row] += factor * u[term];
        }

        for (int w = 0; w < 8; w++)
        {
            Vector256<double> xx = default, yy = default, zz = default, yz = default, zx = default, xy = default;
            for (int v = 0; v < 8; v++)
            {
                Vector256<double> moment = Vector256.Create((double)moments[FilledMoments.Product(w, v)]);
                (xx, yy, zz) = (xx + moment * strain[v], yy + moment * strain[8 + v], zz + moment * strain[16 + v]);
                (yz, zx, xy) = (yz + moment * strain[24 + v], zx + moment * strain[32 + v], xy + moment * strain[40 + v]);
            }

            Vector256<double> trace = lateral * (xx + yy + zz);
            (filled[w], filled[8 + w], filled[16 + w]) = ((direct - lateral) * xx + trace, (direct - lateral) * yy + trace, (direct - lateral) * zz + trace);
            (filled[24 + w], filled[32 + w], filled[40 + w]) = (shear * yz, shear * zx, shear * xy);
        }

        f.Clear();
        foreach ((int row, int term, double factor) in entries)
        {
            f[term] += factor * filled[row];
        }
    }

    /// <summary>Entries of the stiffness as sums over the moments of what is filled.</summary>
    /// <param name="freedoms">Rows and columns, degrees of freedom, 0 to 23.</param>
    /// <returns>27 factors an entry; <see cref="Sum"/> gives force per displacement, for Young's modulus 1, m.</returns>
    public double[] Entries(IEnumerable<(int Row, int Column)> freedoms)
    {
        (int Row, int Column)[] asked = [.. freedoms];
        double[] factors = new double[FilledMoments.Count * asked.Length];
        Span<double> rows = stackalloc double[Strains], columns = stackalloc double[Strains];
        for (int i = 0; i < asked.Length; i++)
        {
            Strain(asked[i].Row, rows);
            Strain(asked[i].Column, columns);
            for (int w = 0; w < 8; w++)
            {
                for (int v = 0; v < 8; v++)
                {
                    double trace = (rows[w] + rows[8 + w] + rows[16 + w]) * (columns[v] + columns[8 + v] + columns[16 + v]), normal = 0.0, sheared = 0.0;
                    for (int s = 0; s < 24; s += 8)
                    {
                        normal += rows[s + w] * columns[s + v];
                        sheared += rows[24 + s + w] * columns[24 + s + v];
                    }

                    factors[FilledMoments.Count * i + FilledMoments.Product(w, v)] += lateral * trace + (direct - lateral) * normal + shear * sheared;
                }
            }
        }

        return factors;
    }

    /// <summary>An entry of the stiffness.</summary>
    /// <param name="factors">Its 27 factors.</param>
    /// <param name="moments">What is filled.</param>
    /// <returns>The sum of their products.</returns>
    public static double Sum(ReadOnlySpan<double> factors, ReadOnlySpan<float> moments)
    {
        double sum = 0.0;
        for (int m = 0; m < FilledMoments.Count; m++)
        {
            sum += factors[m] * moments[m];
        }

        return sum;
    }

    // Patterns of the strains of a unit displacement.
    private void Strain(int freedom, Span<double> strain)
    {
        for (int i = 0; i < Strains; i++)
        {
            strain[i] = 0.0;
            for (int v = 0; v < 8; v++)
            {
                strain[i] += inPatterns[i, 8 * (freedom % 3) + v] * SignPatterns.Sign(v, freedom / 3);
            }
        }
    }
}
