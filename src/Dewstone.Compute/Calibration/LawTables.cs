namespace Dewstone.Compute.Calibration;

/// <summary>What one law without units does to columns, balls and pairs; filled as it is asked for. Not for several threads at once.</summary>
/// <param name="law">The law.</param>
internal sealed class LawTables(SaturationLaw law)
{
    private const double SpacingRatio = 1.04;

    private readonly Dictionary<int, PairHistory> pairs = [];
    private double? sorptivity;

    /// <summary>Sorptivity over porosity and root of the diffusivity at saturation, 1.</summary>
    public double SorptivityNumber => sorptivity ??= Sorptivity.Number(law);

    /// <summary>Balls.</summary>
    public BallHistory Ball { get; } = new(law);

    /// <summary>Length and waist of a pair, all in the units of <see cref="PairHistory"/>; between tables of spacings 4 % apart.</summary>
    /// <param name="spacing">Distance between the doses.</param>
    /// <param name="time">Time.</param>
    /// <param name="threshold">Saturation.</param>
    /// <returns>Length along the line of the doses, width midway.</returns>
    public (double Length, double Waist) Pair(double spacing, double time, double threshold)
    {
        double place = Math.Log(spacing) / Math.Log(SpacingRatio);
        int before = (int)Math.Floor(place);
        double share = place - before;
        (double length, double waist) = At(before);
        (double wideLength, double wideWaist) = At(before + 1);
        return (length + share * (wideLength - length), waist + share * (wideWaist - waist));

        (double Length, double Waist) At(int number)
        {
            double at = Math.Pow(SpacingRatio, number);
            if (!pairs.TryGetValue(number, out PairHistory? history))
            {
                pairs[number] = history = new PairHistory(law, at, PairHistory.HalfCells(at));
            }

            return history.At(time, threshold);
        }
    }
}
