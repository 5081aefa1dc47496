namespace Dewstone.Model.Quantities;

/// <summary>A mass, held in kilograms.</summary>
/// <param name="Kilograms">Value in kilograms.</param>
public readonly record struct Mass(double Kilograms) : IComparable<Mass>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;
}
