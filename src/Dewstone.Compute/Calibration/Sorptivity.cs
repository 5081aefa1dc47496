namespace Dewstone.Compute.Calibration;

/// <summary>Water that a dry column takes up from a saturated face: uptake = S sqrt(t), S = porosity sqrt(D1) x a number of the law alone.</summary>
/// <remarks>
/// No gravity, column longer than the front. Philip 1957, The theory of infiltration, Soil Science 83-85. The number is found by the same finite volumes as
/// the wetting of a job, in one dimension, from the growth of uptake between two times so that the start, some cells long, drops out.
/// </remarks>
internal static class Sorptivity
{
    private const int Cells = 130;
    private const int EarlyCells = 40;
    private const int LateCells = 120;
    private const double Trace = 1e-6;

    /// <summary>S over porosity and root of the diffusivity at saturation.</summary>
    /// <param name="law">The law.</param>
    /// <returns>A number, 1.</returns>
    public static double Number(SaturationLaw law)
    {
        double[] saturation = new double[Cells + 1], potential = new double[Cells + 1], face = [1.0];
        law.Fill(face, face);
        double full = face[0], time = 0.0, taken = 0.0, earlyRoot = 0.0, early = 0.0;

        // Cell width 1. The first cell has its face at half a width: one and a half times the exchange of the others.
        double step = 0.9 / 3.0;
        int end = 1;
        while (end < LateCells)
        {
            law.Fill(saturation.AsSpan(0, end + 1), potential);
            double through = 2.0 * (full - potential[0]);
            taken += step * through;
            for (int i = 0; i <= end; i++)
            {
                double outer = i < end ? potential[i] - potential[i + 1] : 0.0;
                saturation[i] += step * (through - outer);
                through = outer;
            }

            time += step;
            end = saturation[end] > Trace ? end + 1 : end;
            if (end == EarlyCells && early == 0.0)
            {
                (early, earlyRoot) = (taken, Math.Sqrt(time));
            }
        }

        return (taken - early) / (Math.Sqrt(time) - earlyRoot);
    }
}
