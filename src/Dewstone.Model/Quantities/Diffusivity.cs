namespace Dewstone.Model.Quantities;

/// <summary>A moisture diffusivity, held in square metres per second.</summary>
/// <param name="SquareMetresPerSecond">Value in square metres per second.</param>
public readonly record struct Diffusivity(double SquareMetresPerSecond) : IComparable<Diffusivity>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(Diffusivity other) => SquareMetresPerSecond.CompareTo(other.SquareMetresPerSecond);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Diffusivity left, Diffusivity right) => left.SquareMetresPerSecond < right.SquareMetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Diffusivity left, Diffusivity right) => left.SquareMetresPerSecond > right.SquareMetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(Diffusivity left, Diffusivity right) => left.SquareMetresPerSecond <= right.SquareMetresPerSecond;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(Diffusivity left, Diffusivity right) => left.SquareMetresPerSecond >= right.SquareMetresPerSecond;
}
