namespace Dewstone.Model.Quantities;

/// <summary>A span of time, held in seconds.</summary>
/// <param name="Seconds">Value in seconds.</param>
public readonly record struct Duration(double Seconds) : IComparable<Duration>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(Duration other) => Seconds.CompareTo(other.Seconds);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Duration left, Duration right) => left.Seconds < right.Seconds;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Duration left, Duration right) => left.Seconds > right.Seconds;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(Duration left, Duration right) => left.Seconds <= right.Seconds;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(Duration left, Duration right) => left.Seconds >= right.Seconds;

    /// <summary>The span in minutes.</summary>
    public double Minutes => Seconds / 60.0;
}
