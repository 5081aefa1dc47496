namespace Dewstone.Model.Quantities;

/// <summary>A weight per volume, held in newtons per cubic metre.</summary>
/// <param name="NewtonsPerCubicMetre">Value in newtons per cubic metre.</param>
public readonly record struct UnitWeight(double NewtonsPerCubicMetre) : IComparable<UnitWeight>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(UnitWeight other) => NewtonsPerCubicMetre.CompareTo(other.NewtonsPerCubicMetre);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(UnitWeight left, UnitWeight right) => left.NewtonsPerCubicMetre < right.NewtonsPerCubicMetre;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(UnitWeight left, UnitWeight right) => left.NewtonsPerCubicMetre > right.NewtonsPerCubicMetre;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(UnitWeight left, UnitWeight right) => left.NewtonsPerCubicMetre <= right.NewtonsPerCubicMetre;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(UnitWeight left, UnitWeight right) => left.NewtonsPerCubicMetre >= right.NewtonsPerCubicMetre;
}
