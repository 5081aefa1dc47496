namespace Dewstone.Model.Description;

/// <summary>Which wave height is designed for.</summary>
public enum DesignHeightRule
{
    /// <summary>Significant height.</summary>
    Significant,

    /// <summary>Mean of the highest tenth.</summary>
    HighestTenth,

    /// <summary>Greatest height expected.</summary>
    Greatest,

    /// <summary>A stated height.</summary>
    Stated,
}
