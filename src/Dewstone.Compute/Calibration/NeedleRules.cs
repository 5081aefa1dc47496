namespace Dewstone.Compute.Calibration;

/// <summary>What makes a needle blocked or limited, and a weighing an outlier. Common practice, no source.</summary>
public static class NeedleRules
{
    /// <summary>A needle that gives a smaller share of what was asked is blocked.</summary>
    public const double BlockedShare = 0.5;

    /// <summary>Greatest deviation at the middle dose of a needle that is ok, a share.</summary>
    public const double MostDeviation = 0.15;

    /// <summary>Greatest repeatability of a needle that is ok, one standard deviation as a share.</summary>
    public const double MostRepeatability = 0.05;

    /// <summary>Greatest move since the last check of a needle that is ok, a share.</summary>
    public const double MostDrift = 0.05;

    /// <summary>Least move that is told, a share.</summary>
    public const double LeastDrift = 0.01;

    /// <summary>Fewest good readings of a needle that is ok.</summary>
    public const int FewestReadings = 3;

    /// <summary>Level of the outlier test, a needle.</summary>
    public const double OutlierLevel = 0.01;

    /// <summary>Most readings of a needle that are left out.</summary>
    public const int MostOutliers = 2;

    /// <summary>Least ratio of the largest to the smallest dose from which an offset is fitted.</summary>
    public const double LeastDoseRange = 1.5;
}
