using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>The wave of each period that just moves a unit: a factor of 1 against sliding or overturning at the headings that are worst in the design wave.</summary>
internal static class StormCurve
{
    /// <summary>Shortest period, s.</summary>
    public const int FirstSeconds = 3;

    /// <summary>Longest period, s.</summary>
    public const int LastSeconds = 16;

    private const int Halvings = 24;

    /// <summary>Finds the curve.</summary>
    /// <param name="site">The site.</param>
    /// <param name="body">The body.</param>
    /// <param name="footing">What holds it.</param>
    /// <param name="density">Of the water, kg/m3.</param>
    /// <param name="headings">Least factors by heading in the design wave.</param>
    /// <returns>One point for each whole second; a level that is dry has no critical wave and the limit 0.</returns>
    public static IReadOnlyList<StormPoint> Of(
        Site site, StandingBody body, Footing footing, double density, IReadOnlyList<HeadingFactors> headings)
    {
        double[] worst =
        [
            .. new[] { headings.MinBy(h => h.Sliding)!.HeadingDegrees, headings.MinBy(h => h.Overturning)!.HeadingDegrees }.Distinct(),
        ];
        (string Name, double DepthMetres)[] depths = [.. SeabedSolver.Depths(site)];
        return
        [
            .. Enumerable.Range(FirstSeconds, LastSeconds + 1 - FirstSeconds).Select(period =>
            {
                (double? low, double lowLimit) = Critical(depths[0].DepthMetres, period);
                (double? high, double highLimit) = Critical(depths[1].DepthMetres, period);
                return new StormPoint(period, low, lowLimit, high, highLimit);
            }),
        ];

        (double? Height, double Limit) Critical(double depth, double period)
        {
            if (depth <= SeabedSolver.DryMetres)
            {
                return (null, 0.0);
            }

            AiryWave unitWave = new(1.0, period, depth);
            double limit = Math.Min(
                BreakingLimit.ByDepth(period, depth, Math.Tan(site.Seabed.Slope.Radians)), BreakingLimit.BySteepness(unitWave));
            double speed = unitWave.SpeedAt(body.HeightMetres), acceleration = unitWave.AccelerationAt(body.HeightMetres);
            if (Stands(limit))
            {
                return (null, limit);
            }

            double safe = 0.0, moved = limit;
            for (int i = 0; i < Halvings; i++)
            {
                double middle = 0.5 * (safe + moved);
                (safe, moved) = Stands(middle) ? (middle, moved) : (safe, middle);
            }

            return (safe, limit);

            bool Stands(double height)
            {
                SeaState sea = SeabedSolver.State(site, density, height * speed, height * acceleration);
                foreach (double heading in worst)
                {
                    for (int phase = 0; phase < 360; phase += SeabedSolver.StepDegrees)
                    {
                        StabilityRow row = WaveLoad.At(body, footing, sea, site.Forces, heading, phase);
                        if (row.Sliding < 1.0 || row.Overturning < 1.0)
                        {
                            return false;
                        }
                    }
                }

                return true;
            }
        }
    }
}
