namespace Dewstone.Compute.Calibration;

/// <summary>What was measured; each kind has a scatter of its own.</summary>
public enum MeasuredKind
{
    /// <summary>Sorptivity of a column, mm/s^0.5.</summary>
    Sorptivity,

    /// <summary>Diameter of a test ball, mm.</summary>
    BallDiameter,

    /// <summary>Water in a test ball, g.</summary>
    BallWater,

    /// <summary>Dry mass of a test ball, g.</summary>
    BallDryMass,

    /// <summary>Length of a pair, mm.</summary>
    PairLength,

    /// <summary>Waist of a pair, mm.</summary>
    PairWaist,

    /// <summary>Loose density by container, kg/m3.</summary>
    LooseDensity,
}
