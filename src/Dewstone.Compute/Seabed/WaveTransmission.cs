namespace Dewstone.Compute.Seabed;

/// <summary>Share of a wave's height that passes a low, unbroken row of breakers.</summary>
/// <remarks>
/// Made for unbroken permeable mounds with crests within <see cref="RangeOfFreeboard"/> heights of the water; a row with gaps lets more through, so the figure is a lower
/// bound for spaced units. Kt = -0.4 Rc / H + 0.64 (B / H)^-0.31 (1 - exp(-0.5 xi)), d'Angremond, van der Meer and de Jong, 1996, "Wave transmission at low-crested structures", Coastal
/// Engineering 1996; for B / H of 12 and more -0.35 Rc / H + 0.51 (B / H)^-0.65 (1 - exp(-0.41 xi)), straight in between from 8 (Briganti et al., 2003). Clipped to 0.075 and 0.80
/// (the upper one from memory).
/// </remarks>
public static class WaveTransmission
{
    /// <summary>Least share told, 1.</summary>
    public const double Least = 0.075;

    /// <summary>Greatest share told, 1.</summary>
    public const double Most = 0.80;

    /// <summary>Freeboard over wave height, either way, up to which it was measured, 1; from memory.</summary>
    public const double RangeOfFreeboard = 2.5;

    private const double NarrowUpTo = 8.0;
    private const double WideFrom = 12.0;

    /// <summary>Surf similarity.</summary>
    /// <param name="slope">Tangent of the seaward face, 1.</param>
    /// <param name="heightMetres">Wave height, m.</param>
    /// <param name="periodSeconds">Period, s.</param>
    /// <returns>xi, 1.</returns>
    public static double SurfSimilarity(double slope, double heightMetres, double periodSeconds) =>
        slope / Math.Sqrt(heightMetres / AiryWave.DeepLength(periodSeconds));

    /// <summary>Transmission before clipping.</summary>
    /// <param name="freeboardMetres">Crest above the water, m; below 0 when it is covered.</param>
    /// <param name="widthMetres">Of the crest, m.</param>
    /// <param name="heightMetres">Wave height, m, more than 0.</param>
    /// <param name="surfSimilarity">xi, 1.</param>
    /// <returns>1.</returns>
    public static double Unclipped(double freeboardMetres, double widthMetres, double heightMetres, double surfSimilarity)
    {
        double freeboard = freeboardMetres / heightMetres, width = widthMetres / heightMetres;
        double narrow = -0.4 * freeboard + 0.64 * Math.Pow(width, -0.31) * (1.0 - Math.Exp(-0.5 * surfSimilarity));
        double wide = -0.35 * freeboard + 0.51 * Math.Pow(width, -0.65) * (1.0 - Math.Exp(-0.41 * surfSimilarity));
        double share = Math.Clamp((width - NarrowUpTo) / (WideFrom - NarrowUpTo), 0.0, 1.0);
        return (1.0 - share) * narrow + share * wide;
    }

    /// <summary>Transmission, clipped; parameters as above.</summary>
    /// <param name="freeboardMetres">Crest above the water, m.</param>
    /// <param name="widthMetres">Of the crest, m.</param>
    /// <param name="heightMetres">Wave height, m.</param>
    /// <param name="surfSimilarity">xi, 1.</param>
    /// <returns>1.</returns>
    public static double Share(double freeboardMetres, double widthMetres, double heightMetres, double surfSimilarity) =>
        Math.Clamp(Unclipped(freeboardMetres, widthMetres, heightMetres, surfSimilarity), Least, Most);
}
