using Dewstone.Model.Results;

namespace Dewstone.Compute.Studies;

/// <summary>Which sizes are tried, and from which one on they come out.</summary>
internal static class SizeScan
{
    private const double StepMetres = 0.005;
    private const double PitchPerStep = 0.06;
    private const double SmallestHolePitches = 0.4;
    private const double SmallestWallPitches = 0.6;
    private const double LargestWallPitches = 2.4;
    private static readonly double[] WideHolePitches = [1.5, 2.0, 3.5];

    /// <summary>Step of hole diameters: 5 mm for each 60 mm of pitch begun.</summary>
    /// <param name="pitch">Pitch, metres.</param>
    /// <returns>Metres.</returns>
    public static double HoleStep(double pitch) => StepMetres * Math.Ceiling(pitch / PitchPerStep - 1e-9);

    /// <summary>Step of wall thicknesses: two of holes.</summary>
    /// <param name="pitch">Pitch, metres.</param>
    /// <returns>Metres.</returns>
    public static double WallStep(double pitch) => 2.0 * HoleStep(pitch);

    /// <summary>Hole diameters up to a pitch, every step.</summary>
    /// <param name="pitch">Pitch, metres.</param>
    /// <returns>Metres, rising.</returns>
    public static double[] NarrowHoles(double pitch) => Every(SmallestHolePitches * pitch, pitch, HoleStep(pitch));

    /// <summary>Hole diameters above a pitch.</summary>
    /// <param name="pitch">Pitch, metres.</param>
    /// <returns>Metres, rising.</returns>
    public static double[] WideHoles(double pitch) => Array.ConvertAll(WideHolePitches, pitches => Up(pitches * pitch, HoleStep(pitch)));

    /// <summary>Wall thicknesses, every step.</summary>
    /// <param name="pitch">Pitch along the normal, metres.</param>
    /// <returns>Metres, rising.</returns>
    public static double[] Walls(double pitch) => Every(SmallestWallPitches * pitch, LargestWallPitches * pitch, WallStep(pitch));

    /// <summary>Limits of holes.</summary>
    /// <param name="tried">The holes.</param>
    /// <param name="step">Step of diameters, metres.</param>
    /// <returns>Where they open, and where enough of them stays clear.</returns>
    public static HoleLimits Holes(IReadOnlyList<TestHole> tried, double step)
    {
        TestHole[] ordered = [.. tried.OrderBy(hole => hole.Place).ThenBy(hole => hole.DrawnMetres)];
        return new HoleLimits(
            Of(ordered, hole => hole.Place, holes => From(holes, hole => hole.DrawnMetres, hole => hole.ClearMetres > 0.0)),
            Of(ordered, hole => hole.Place, holes => Wide(holes, step)), ordered);
    }

    /// <summary>Limits of walls.</summary>
    /// <param name="tried">The walls.</param>
    /// <returns>From where they are sound.</returns>
    public static WallLimits Walls(IReadOnlyList<TestWall> tried)
    {
        TestWall[] ordered = [.. tried.OrderBy(wall => wall.Place).ThenBy(wall => wall.DrawnMetres)];
        return new WallLimits(Of(ordered, wall => wall.Place, walls => From(walls, wall => wall.DrawnMetres, wall => wall.IsSound)), ordered);
    }

    private static SizeLimit Of<T>(IReadOnlyList<T> ordered, Func<T, int> place, Func<IReadOnlyList<T>, double?> limit)
    {
        double?[] limits = [.. ordered.GroupBy(place).Select(group => limit([.. group]))];
        return new SizeLimit(limits.Min(), limits.Contains(null) ? null : limits.Max());
    }

    // The least size from which all that were tried hold.
    private static double? From<T>(IReadOnlyList<T> rising, Func<T, double> size, Func<T, bool> holds)
    {
        int first = rising.Count;
        while (first > 0 && holds(rising[first - 1]))
        {
            first--;
        }

        return first < rising.Count ? size(rising[first]) : null;
    }

    // Between two diameters the clear one runs straight; the answer is rounded up to a step.
    private static double? Wide(IReadOnlyList<TestHole> rising, double step)
    {
        double Lack(TestHole hole) => LimitsCard.WideShare * hole.DrawnMetres - hole.ClearMetres;
        int first = rising.Count;
        while (first > 0 && Lack(rising[first - 1]) <= 0.0)
        {
            first--;
        }

        if (first == rising.Count)
        {
            return null;
        }

        TestHole enough = rising[first];
        if (first == 0)
        {
            return enough.DrawnMetres;
        }

        TestHole below = rising[first - 1];
        double share = Lack(below) / (Lack(below) - Lack(enough));
        return Up(below.DrawnMetres + share * (enough.DrawnMetres - below.DrawnMetres), step);
    }

    private static double[] Every(double from, double to, double step)
    {
        int first = Math.Max(1, (int)Math.Ceiling(from / step - 1e-9)), last = Math.Max(first, (int)Math.Ceiling(to / step - 1e-9));
        return [.. Enumerable.Range(first, last - first + 1).Select(i => i * step)];
    }

    private static double Up(double size, double step) => Math.Ceiling(size / step - 1e-9) * step;
}
