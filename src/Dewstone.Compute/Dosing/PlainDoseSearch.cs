namespace Dewstone.Compute.Dosing;

/// <summary>The single dose of a full voxel, to 1 mL, whose plain doses have the least objective: walked downhill by 3 mL, then by 1 mL.</summary>
internal static class PlainDoseSearch
{
    private const int MostSolves = 12;

    /// <summary>Searches.</summary>
    /// <param name="judge">Objective of a dose of a full voxel, mL; called at most <see cref="MostSolves"/> times.</param>
    /// <param name="startMillilitres">Where to start, mL.</param>
    /// <param name="limits">The dose stays between the least and the upper limit.</param>
    /// <returns>The best dose found, mL: the start rounded to a whole mL, or better.</returns>
    public static double Find(Func<double, double> judge, double startMillilitres, DoseLimits limits)
    {
        double low = Math.Max(1.0, Math.Ceiling(limits.LeastMillilitres)), high = Math.Max(low, Math.Floor(limits.UpperMillilitres));
        double best = Math.Clamp(Math.Floor(startMillilitres + 0.5), low, high);
        var known = new Dictionary<double, double>();
        double Value(double dose)
        {
            if (!known.TryGetValue(dose, out double value))
            {
                value = dose < low || dose > high || known.Count >= MostSolves ? double.PositiveInfinity : judge(dose);
                known[dose] = value;
            }

            return value;
        }

        double least = Value(best);
        foreach (double step in (ReadOnlySpan<double>)[3.0, 1.0])
        {
            foreach (double way in (ReadOnlySpan<double>)[step, -step])
            {
                while (Value(best + way) is var next && next < least)
                {
                    (best, least) = (best + way, next);
                }
            }
        }

        return best;
    }

    /// <summary>Wishes of plain doses.</summary>
    /// <param name="fractions">Wanted share of each voxel.</param>
    /// <param name="millilitres">Dose of a full voxel, mL.</param>
    /// <returns>Wanted volumes, mL.</returns>
    public static double[] Wishes(double[] fractions, double millilitres) =>
        Array.ConvertAll(fractions, fraction => fraction < PlainDoser.FractionCut ? 0.0 : fraction * millilitres);
}
