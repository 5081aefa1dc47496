namespace Dewstone.Model.Quantities;

/// <summary>A mass density, held in kilograms per cubic metre.</summary>
/// <param name="KilogramsPerCubicMetre">Value in kilograms per cubic metre.</param>
public readonly record struct Density(double KilogramsPerCubicMetre) : IComparable<Density>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(Density other) => KilogramsPerCubicMetre.CompareTo(other.KilogramsPerCubicMetre);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Density left, Density right) => left.KilogramsPerCubicMetre < right.KilogramsPerCubicMetre;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Density left, Density right) => left.KilogramsPerCubicMetre > right.KilogramsPerCubicMetre;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(Density left, Density right) => left.KilogramsPerCubicMetre <= right.KilogramsPerCubicMetre;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(Density left, Density right) => left.KilogramsPerCubicMetre >= right.KilogramsPerCubicMetre;
}
