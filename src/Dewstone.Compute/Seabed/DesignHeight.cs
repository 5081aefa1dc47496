using Dewstone.Model.Description;

namespace Dewstone.Compute.Seabed;

/// <summary>The wave height a site designs for, before the depth caps it.</summary>
/// <remarks>
/// Assumes heights by Rayleigh's law: mean of the highest tenth 1.27 Hs; greatest of N waves Hs sqrt(ln N / 2), N the waves of a storm of
/// <see cref="StormSeconds"/>. Source: Longuet-Higgins, 1952, "On the statistical distribution of the heights of sea waves", Journal of Marine Research 11;
/// Coastal Engineering Manual part II chapter 1; from memory.
/// </remarks>
public static class DesignHeight
{
    /// <summary>Mean of the highest tenth over the significant height, 1.</summary>
    public const double HighestTenth = 1.27;

    /// <summary>How long the storm is whose greatest wave is meant, s: three hours, common practice.</summary>
    public const double StormSeconds = 10_800.0;

    /// <summary>The height by the site's rule.</summary>
    /// <param name="wave">The design wave.</param>
    /// <returns>m.</returns>
    public static double Metres(DesignWave wave)
    {
        ArgumentNullException.ThrowIfNull(wave);
        double significant = wave.SignificantHeight.Metres;
        return wave.HeightRule switch
        {
            DesignHeightRule.HighestTenth => HighestTenth * significant,
            DesignHeightRule.Greatest => significant * GreatestFactor(StormSeconds / wave.PeakPeriod.Seconds),
            DesignHeightRule.Stated when wave.StatedHeight is { } stated => stated.Metres,
            _ => significant,
        };
    }

    /// <summary>Most probable greatest height of so many waves over the significant height.</summary>
    /// <param name="waves">Number of waves, 2 or more.</param>
    /// <returns>1.</returns>
    public static double GreatestFactor(double waves) => Math.Sqrt(0.5 * Math.Log(waves));
}
