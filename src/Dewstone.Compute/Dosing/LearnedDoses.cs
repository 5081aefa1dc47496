namespace Dewstone.Compute.Dosing;

/// <summary>
/// What a correction learned at one place on the needle grid, for another to begin with: by how much it moved the plain dose, in the mean over classes
/// of how much of the needle's own voxel and how much around it is wanted. Found by trial, no source; it saves four or five solves of each further place.
/// </summary>
internal sealed class LearnedDoses
{
    private const int Classes = 8;

    private readonly double[] sums = new double[Classes * Classes];
    private readonly int[] counts = new int[Classes * Classes];
    private readonly double[] factors = new double[Classes * Classes];

    /// <summary>Learns from doses.</summary>
    /// <param name="fractions">Wanted share of each voxel.</param>
    /// <param name="around">Wanted share around each tip.</param>
    /// <param name="isFree">Positions that moved.</param>
    /// <param name="millilitres">Where they moved to, mL.</param>
    /// <param name="startMillilitres">Dose of a full voxel they began with, mL.</param>
    public LearnedDoses(double[] fractions, double[] around, bool[] isFree, double[] millilitres, double startMillilitres)
    {
        for (int i = 0; i < fractions.Length; i++)
        {
            if (isFree[i])
            {
                int c = Class(fractions[i], around[i]);
                sums[c] += millilitres[i] / (fractions[i] * startMillilitres);
                counts[c]++;
            }
        }

        for (int c = 0; c < factors.Length; c++)
        {
            factors[c] = Mean(c);
        }
    }

    /// <summary>Where a position is to begin.</summary>
    /// <param name="fraction">Wanted share of the voxel.</param>
    /// <param name="around">Wanted share around its tip.</param>
    /// <returns>Times the plain dose, 1.</returns>
    public double Factor(double fraction, double around)
    {
        return factors[Class(fraction, around)];
    }

    // A class of its own mean, or one nobody taught: the mean of those that were, by 1 / distance^4.
    private double Mean(int c)
    {
        double sum = 0.0, weights = 0.0;
        for (int other = 0; other < counts.Length; other++)
        {
            int a = c / Classes - other / Classes, b = c % Classes - other % Classes, square = a * a + b * b;
            if (counts[other] > 0)
            {
                if (square == 0)
                {
                    return sums[other] / counts[other];
                }

                double weight = 1.0 / ((double)square * square);
                sum += weight * sums[other] / counts[other];
                weights += weight;
            }
        }

        return weights > 0.0 ? sum / weights : 1.0;
    }

    private static int Class(double fraction, double around) => Eighth(fraction) * Classes + Eighth(around);

    private static int Eighth(double share) => Math.Min(Classes - 1, (int)(share * Classes));
}
