namespace Dewstone.Model.Quantities;

/// <summary>A speed, held in metres per second.</summary>
/// <param name="MetresPerSecond">Value in metres per second.</param>
public readonly record struct Speed(double MetresPerSecond) : IComparable<Speed>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(Speed other) => MetresPerSecond.CompareTo(other.MetresPerSecond);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Speed left, Speed right) => left.MetresPerSecond < right.MetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Speed left, Speed right) => left.MetresPerSecond > right.MetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(Speed left, Speed right) => left.MetresPerSecond <= right.MetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(Speed left, Speed right) => left.MetresPerSecond >= right.MetresPerSecond;
}
