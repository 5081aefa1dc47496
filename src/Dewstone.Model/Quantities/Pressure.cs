namespace Dewstone.Model.Quantities;

/// <summary>A pressure or stress, held in pascals.</summary>
/// <param name="Pascals">Value in pascals.</param>
public readonly record struct Pressure(double Pascals) : IComparable<Pressure>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(Pressure other) => Pascals.CompareTo(other.Pascals);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Pressure left, Pressure right) => left.Pascals < right.Pascals;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Pressure left, Pressure right) => left.Pascals > right.Pascals;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(Pressure left, Pressure right) => left.Pascals <= right.Pascals;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(Pressure left, Pressure right) => left.Pascals >= right.Pascals;
}
