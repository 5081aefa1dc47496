namespace Dewstone.Model.Quantities;

/// <summary>A volume flow, held in cubic metres per second.</summary>
/// <param name="CubicMetresPerSecond">Value in cubic metres per second.</param>
public readonly record struct FlowRate(double CubicMetresPerSecond)
{
    /// <summary>The flow in millilitres per second.</summary>
    public double MillilitresPerSecond => CubicMetresPerSecond * 1e6;

    /// <summary>A flow given in millilitres per second.</summary>
    /// <param name="millilitresPerSecond">Value in millilitres per second.</param>
    /// <returns>The flow.</returns>
    public static FlowRate FromMillilitresPerSecond(double millilitresPerSecond) => new(millilitresPerSecond / 1e6);
}
