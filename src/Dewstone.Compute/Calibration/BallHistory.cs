namespace Dewstone.Compute.Calibration;

/// <summary>The wetting of one dose far from everything, on spheres: the same law as the cells of a job, in one dimension, kept for all times.</summary>
/// <remarks>
/// Length unit: radius of the ball that the dose fills to saturation, a = (3 dose/(4 pi porosity))^(1/3). Time unit a^2/D1. Starts as that ball, as a dose in
/// the cells does; explicit finite volumes, fluxes by differences of the potential, monotone steps. Do not use it near another dose, a wall or the free
/// surface. Limit m, time to infinity: the point source of Barenblatt (1952) and Pattle (1959).
/// </remarks>
internal sealed class BallHistory
{
    /// <summary>Cells to the length unit.</summary>
    private const int CellsPerUnit = 100;

    private const double FirstTime = 0.005;
    private const double TimeRatio = 1.05;
    private const double StepShare = 0.9;

    /// <summary>Latest time told; a longer one is taken as this. Growth by then is slower than 1/5 of the time's logarithm for m = 1.</summary>
    private const double LastTime = 5000.0;

    /// <summary>Contents below this share of saturation do not move the front any further.</summary>
    private const double Trace = 1e-9;

    private const double Cell = 1.0 / CellsPerUnit;

    private readonly SaturationLaw law;
    private readonly List<double[]> snapshots = [];
    private double[] saturation = new double[4 * CellsPerUnit];
    private double[] potential = new double[4 * CellsPerUnit];
    private double time;
    private int end = CellsPerUnit + 1;

    /// <summary>A saturated ball.</summary>
    /// <param name="law">The law.</param>
    public BallHistory(SaturationLaw law)
    {
        this.law = law;
        Array.Fill(saturation, 1.0, 0, CellsPerUnit);
    }

    /// <summary>The part of the ball at or above a threshold.</summary>
    /// <param name="at">Time, units.</param>
    /// <param name="threshold">Saturation, above 0.</param>
    /// <returns>Its radius, units, and its share of the water, 1; both 0 when nothing reaches the threshold.</returns>
    public (double Radius, double Water) At(double at, double threshold)
    {
        double place = Math.Log(Math.Clamp(at, FirstTime, LastTime) / FirstTime) / Math.Log(TimeRatio);
        int before = (int)place;
        while (snapshots.Count <= before + 1)
        {
            March(FirstTime * Math.Pow(TimeRatio, snapshots.Count));
            snapshots.Add(saturation[..end]);
        }

        (double radius, double water) = Within(snapshots[before], threshold);
        (double laterRadius, double laterWater) = Within(snapshots[before + 1], threshold);
        double share = place - before;
        return (radius + share * (laterRadius - radius), water + share * (laterWater - water));
    }

    private (double Radius, double Water) Within(double[] row, double threshold)
    {
        double cells = FrontPlace.Of(row, threshold, law.FrontPower(threshold));
        double sum = 0.0;
        for (int i = 0; i < row.Length && i < cells; i++)
        {
            double upper = Math.Min(i + 1.0, cells);
            sum += row[i] * (upper * upper * upper - (double)i * i * i);
        }

        return (cells * Cell, sum * Cell * Cell * Cell);
    }

    private void March(double until)
    {
        while (time < until)
        {
            if (end + 1 >= saturation.Length)
            {
                Array.Resize(ref saturation, 2 * saturation.Length);
                Array.Resize(ref potential, 2 * potential.Length);
            }

            // The innermost cell has three times its face to its volume; it holds the most water, so the largest diffusivity is its own.
            double step = Math.Min(StepShare * Cell * Cell / (3.0 * law.Diffusivity(saturation[0])), until - time);
            law.Fill(saturation.AsSpan(0, end + 1), potential);
            double rate = step / (Cell * Cell), through = 0.0;
            for (int i = 0; i < end; i++)
            {
                double outer = (i + 1.0) * (i + 1.0) * (potential[i] - potential[i + 1]);
                saturation[i] += rate * (through - outer) * 3.0 / (3.0 * i * (i + 1.0) + 1.0);
                through = outer;
            }

            saturation[end] += rate * through * 3.0 / (3.0 * end * (end + 1.0) + 1.0);
            end = saturation[end] > Trace ? end + 1 : end;
            time += step;
        }
    }
}
