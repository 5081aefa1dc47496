namespace Dewstone.Compute.Strength;

/// <summary>
/// What of a brick is filled, by the means of xi^a eta^b zeta^c over the whole brick with a, b, c from 0 to 2, places from -1 to 1 and nothing where it is empty:
/// all that the stiffness of a brick with straight-sided corners asks of its filling.
/// </summary>
/// <remarks>
/// 27 a brick, index a + 3 b + 9 c; the first is the filled share. The strains of a brick are sums of eight patterns 1, xi, eta, xi eta, zeta, ... (bit 0 of a pattern for
/// xi, 1 for eta, 2 for zeta), so the stiffness is an integral of their products, which these are. Source of the idea, stiffness integrated over the filled part of a
/// brick that is bigger than the body's details, with a little stiffness left in the void: Parvizian, Duester and Rank, 2007, "Finite cell method", Computational
/// Mechanics 41 (from memory).
/// </remarks>
internal static class FilledMoments
{
    /// <summary>Moments a brick.</summary>
    public const int Count = 27;

    /// <summary>Moment of the product of two patterns.</summary>
    private static readonly int[] OfProduct =
    [
        .. from w in Enumerable.Range(0, 8) from v in Enumerable.Range(0, 8)
           select (w & 1) + (v & 1) + 3 * (((w >> 1) & 1) + ((v >> 1) & 1)) + 9 * ((w >> 2) + (v >> 2)),
    ];

    /// <summary>
    /// What each moment of a child adds to each of its parent, by octant: a place x of the child is (x + s) / 2 in the parent, s -1 or 1, so its powers are
    /// 1, (x + s) / 2 and (x^2 + 2 s x + 1) / 4; an eighth of the volume.
    /// </summary>
    private static readonly (int To, int From, float Factor)[][] OfChild =
    [
        .. from octant in Enumerable.Range(0, 8)
           select (from m in Enumerable.Range(0, Count)
                   from n in Enumerable.Range(0, Count)
                   let factor = 0.125 * Shift(m % 3, n % 3, octant & 1) * Shift(m / 3 % 3, n / 3 % 3, octant & 2) * Shift(m / 9, n / 9, octant & 4)
                   where factor != 0.0
                   select (m, n, (float)factor)).ToArray(),
    ];

    /// <summary>A full brick.</summary>
    public static IReadOnlyList<double> Full { get; } =
        [.. Enumerable.Range(0, Count).Select(m => OfAxis(m % 3) * OfAxis(m / 3 % 3) * OfAxis(m / 9))];

    /// <summary>Index of the moment that is the mean of the product of two patterns.</summary>
    /// <param name="w">0 to 7.</param>
    /// <param name="v">0 to 7.</param>
    /// <returns>0 to 26.</returns>
    public static int Product(int w, int v) => OfProduct[8 * w + v];

    /// <summary>Bricks that are filled evenly.</summary>
    /// <param name="filled">Share of each.</param>
    /// <returns>27 a brick.</returns>
    public static float[] Even(ReadOnlySpan<float> filled)
    {
        float[] moments = new float[Count * filled.Length];
        for (int i = 0; i < moments.Length; i++)
        {
            moments[i] = (float)(filled[i / Count] * Full[i % Count]);
        }

        return moments;
    }

    /// <summary>Adds one of the eight children of a brick to it.</summary>
    /// <param name="child">Moments of the child.</param>
    /// <param name="octant">Where it lies, corner order.</param>
    /// <param name="parent">27; added to.</param>
    public static void AddChild(ReadOnlySpan<float> child, int octant, Span<float> parent)
    {
        foreach ((int to, int from, float factor) in OfChild[octant])
        {
            parent[to] += factor * child[from];
        }
    }

    /// <summary>Mean of a power over a piece of an axis.</summary>
    /// <param name="power">0 to 2.</param>
    /// <param name="middle">Middle of the piece, -1 to 1.</param>
    /// <param name="half">Half its length.</param>
    /// <returns>The mean.</returns>
    public static double OfPiece(int power, double middle, double half) => power switch { 0 => 1.0, 1 => middle, _ => middle * middle + half * half / 3.0 };

    private static double OfAxis(int power) => power switch { 0 => 1.0, 1 => 0.0, _ => 1.0 / 3.0 };

    private static double Shift(int power, int from, int side)
    {
        double sign = side == 0 ? -1.0 : 1.0;
        return (power, from) switch
        {
            (0, 0) => 1.0,
            (1, 0) => 0.5 * sign,
            (1, 1) => 0.5,
            (2, 0) => 0.25,
            (2, 1) => 0.5 * sign,
            (2, 2) => 0.25,
            _ => 0.0,
        };
    }
}
