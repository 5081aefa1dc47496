using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>
/// Smooth seeded noise of 0 to 1 over a unit's box: lattices of random fractions, cubic-faded between their points, summed.
/// </summary>
/// <remarks>
/// Frozen for version 1. Wavelengths: the longest, halved as long as the half is above the shortest, then the shortest. A lattice has two
/// points a wavelength; its weight is its wavelength over the sum of all. Between points each axis is faded by t t (3 - 2 t) and the eight
/// values are interpolated x first, then y, then z. The value of point (i, j, k) of lattice o is draw o 2^60 + k 2^40 + j 2^20 + i of the
/// feature's draws, rounded to single precision.
/// Value noise is common knowledge of computer graphics; the bound of its slope is derived here: each partial derivative is at most 1.5 /
/// spacing.
/// </remarks>
internal sealed class ReliefNoise
{
    // Above this many points a lattice is not tabulated but hashed where it is looked at: the same values, slower.
    private const long LargestTable = 2_000_000;

    private readonly SeededDraws draws;
    private readonly Size3 box;
    private readonly double[] spacing;
    private readonly double[] weight;
    private readonly float[]?[] table;
    private readonly int[] nx;
    private readonly int[] ny;

    /// <summary>The noise of a relief.</summary>
    /// <param name="relief">The relief.</param>
    /// <param name="box">Outer box, metres.</param>
    /// <param name="feature">Feature index of its draws.</param>
    public ReliefNoise(Relief relief, Size3 box, int feature)
    {
        this.box = box;
        draws = new SeededDraws(relief.Seed, feature);
        List<double> lengths = Wavelengths(relief.LongestLength.Metres, relief.ShortestLength.Metres);
        double total = 0.0;
        foreach (double length in lengths) { total += length; }
        spacing = [.. lengths.Select(length => length / 2.0)];
        weight = [.. lengths.Select(length => length / total)];
        table = new float[]?[spacing.Length];
        nx = new int[spacing.Length];
        ny = new int[spacing.Length];
        for (int o = 0; o < spacing.Length; o++)
        {
            nx[o] = (int)Math.Floor(box.X / spacing[o]) + 2;
            ny[o] = (int)Math.Floor(box.Y / spacing[o]) + 2;
            int nz = (int)Math.Floor(box.Z / spacing[o]) + 2;
            if ((long)nx[o] * ny[o] * nz <= LargestTable) { table[o] = Tabulate(o, nz); }
        }
    }

    /// <summary>Bound of the slope, per metre: sum of weight x 1.5 sqrt(3) / spacing.</summary>
    public double Slope
    {
        get
        {
            double slope = 0.0;
            for (int o = 0; o < spacing.Length; o++) { slope += weight[o] * 1.5 * Math.Sqrt(3.0) / spacing[o]; }
            return slope;
        }
    }

    /// <summary>The noise at a point; points outside the box take the value of its nearest point.</summary>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <returns>0 to 1.</returns>
    public double Value(double x, double y, double z)
    {
        x = Math.Min(Math.Max(x, 0.0), box.X);
        y = Math.Min(Math.Max(y, 0.0), box.Y);
        z = Math.Min(Math.Max(z, 0.0), box.Z);
        double sum = 0.0;
        for (int o = 0; o < spacing.Length; o++) { sum += weight[o] * Octave(o, x / spacing[o], y / spacing[o], z / spacing[o]); }
        return sum;
    }

    /// <summary>The wavelengths between two limits.</summary>
    /// <param name="longest">Longest, metres.</param>
    /// <param name="shortest">Shortest, metres.</param>
    /// <returns>From the longest down.</returns>
    internal static List<double> Wavelengths(double longest, double shortest)
    {
        List<double> lengths = [longest];
        while (lengths.Count < 15 && lengths[^1] / 2.0 > shortest) { lengths.Add(lengths[^1] / 2.0); }
        if (shortest < lengths[^1]) { lengths.Add(shortest); }
        return lengths;
    }

    private static double Fade(double t) => t * t * (3.0 - 2.0 * t);

    private static double Mix(double a, double b, double t) => a + (b - a) * t;

    // Tables are float to stay small; the hash path rounds alike, so that a value does not depend on which path gave it.
    private float Point(int o, int i, int j, int k) =>
        (float)draws.Fraction(((ulong)o << 60) + ((ulong)k << 40) + ((ulong)j << 20) + (ulong)i);

    private float[] Tabulate(int o, int nz)
    {
        float[] values = new float[nx[o] * ny[o] * nz];
        for (int k = 0, index = 0; k < nz; k++)
        {
            for (int j = 0; j < ny[o]; j++)
            {
                for (int i = 0; i < nx[o]; i++, index++) { values[index] = Point(o, i, j, k); }
            }
        }
        return values;
    }

    private double Octave(int o, double x, double y, double z)
    {
        int i = (int)x, j = (int)y, k = (int)z;
        double tx = Fade(x - i), ty = Fade(y - j), tz = Fade(z - k);
        if (table[o] is not float[] values)
        {
            return Mix(
                Mix(Mix(Point(o, i, j, k), Point(o, i + 1, j, k), tx), Mix(Point(o, i, j + 1, k), Point(o, i + 1, j + 1, k), tx), ty),
                Mix(Mix(Point(o, i, j, k + 1), Point(o, i + 1, j, k + 1), tx), Mix(Point(o, i, j + 1, k + 1), Point(o, i + 1, j + 1, k + 1), tx), ty),
                tz);
        }
        int row = nx[o], plane = row * ny[o], at = k * plane + j * row + i, above = at + plane;
        return Mix(
            Mix(Mix(values[at], values[at + 1], tx), Mix(values[at + row], values[at + row + 1], tx), ty),
            Mix(Mix(values[above], values[above + 1], tx), Mix(values[above + row], values[above + row + 1], tx), ty),
            tz);
    }
}
