namespace Dewstone.Compute.Strength;

/// <summary>Gauss elimination of modes that no neighbour shares from the stiffness of a brick.</summary>
internal static class ModeElimination
{
    /// <summary>Takes the modes out, last first.</summary>
    /// <param name="all">Stiffness of corners and modes; below and right of the corners' part it holds the elimination's rows afterwards.</param>
    /// <param name="freedoms">Displacements of corners.</param>
    /// <param name="modes">Modes.</param>
    /// <returns>Stiffness of the corners alone, symmetric.</returns>
    public static double[] Condensed(double[,] all, int freedoms, int modes)
    {
        for (int mode = freedoms + modes - 1; mode >= freedoms; mode--)
        {
            for (int i = 0; i < mode; i++)
            {
                double factor = all[i, mode] / all[mode, mode];
                for (int j = 0; j < mode; j++)
                {
                    all[i, j] -= factor * all[mode, j];
                }
            }
        }

        double[] condensed = new double[freedoms * freedoms];
        for (int i = 0; i < freedoms; i++)
        {
            for (int j = 0; j < freedoms; j++)
            {
                condensed[i * freedoms + j] = 0.5 * (all[i, j] + all[j, i]);
            }
        }

        return condensed;
    }

    /// <summary>Amounts of the modes for displacements of the corners: each row of the elimination holds those before it.</summary>
    /// <param name="all">As <see cref="Condensed"/> left it.</param>
    /// <param name="freedoms">Displacements of corners.</param>
    /// <param name="modes">Modes.</param>
    /// <returns>Modes times displacements.</returns>
    public static double[] Recovered(double[,] all, int freedoms, int modes)
    {
        double[] recovered = new double[modes * freedoms];
        for (int m = 0; m < modes; m++)
        {
            for (int i = 0; i < freedoms; i++)
            {
                double sum = all[freedoms + m, i];
                for (int earlier = 0; earlier < m; earlier++)
                {
                    sum += all[freedoms + m, freedoms + earlier] * recovered[earlier * freedoms + i];
                }

                recovered[m * freedoms + i] = -sum / all[freedoms + m, freedoms + m];
            }
        }

        return recovered;
    }
}
