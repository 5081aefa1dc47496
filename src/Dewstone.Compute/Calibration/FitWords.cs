namespace Dewstone.Compute.Calibration;

/// <summary>Kinds of measurement in words.</summary>
public static class FitWords
{
    /// <summary>A kind for people.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>A few words, lower case.</returns>
    public static string Of(MeasuredKind kind) => kind switch
    {
        MeasuredKind.Sorptivity => "sorptivity of columns",
        MeasuredKind.BallDiameter => "diameter of balls",
        MeasuredKind.BallWater => "water in balls",
        MeasuredKind.BallDryMass => "dry mass of balls",
        MeasuredKind.PairLength => "length of pairs",
        MeasuredKind.PairWaist => "waist of pairs",
        _ => "loose density",
    };

    /// <summary>Unit of a kind's figures.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>The unit.</returns>
    public static string Unit(MeasuredKind kind) => kind switch
    {
        MeasuredKind.Sorptivity => "mm/s^0.5",
        MeasuredKind.BallWater or MeasuredKind.BallDryMass => "g",
        MeasuredKind.LooseDensity => "kg/m3",
        _ => "mm",
    };
}
