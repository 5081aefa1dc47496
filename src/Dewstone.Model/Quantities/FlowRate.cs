namespace Dewstone.Model.Quantities;

/// <summary>A volume flow, held in cubic metres per second.</summary>
/// <param name="CubicMetresPerSecond">Value in cubic metres per second.</param>
public readonly record struct FlowRate(double CubicMetresPerSecond) : IComparable<FlowRate>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(FlowRate other) => CubicMetresPerSecond.CompareTo(other.CubicMetresPerSecond);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(FlowRate left, FlowRate right) => left.CubicMetresPerSecond < right.CubicMetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(FlowRate left, FlowRate right) => left.CubicMetresPerSecond > right.CubicMetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(FlowRate left, FlowRate right) => left.CubicMetresPerSecond <= right.CubicMetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(FlowRate left, FlowRate right) => left.CubicMetresPerSecond >= right.CubicMetresPerSecond;

    /// <summary>The flow in millilitres per second.</summary>
    public double MillilitresPerSecond => CubicMetresPerSecond * 1e6;

    /// <summary>A flow given in millilitres per second.</summary>
    /// <param name="millilitresPerSecond">Value in millilitres per second.</param>
    /// <returns>The flow.</returns>
    public static FlowRate FromMillilitresPerSecond(double millilitresPerSecond) => new(millilitresPerSecond / 1e6);
}
