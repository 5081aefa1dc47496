namespace Dewstone.Model.Quantities;

/// <summary>A length, held in metres.</summary>
/// <param name="Metres">Value in metres.</param>
public readonly record struct Length(double Metres) : IComparable<Length>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Length left, Length right) => left.Metres < right.Metres;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Length left, Length right) => left.Metres > right.Metres;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(Length left, Length right) => left.Metres <= right.Metres;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(Length left, Length right) => left.Metres >= right.Metres;

    /// <summary>The length in millimetres, for sheets and tables.</summary>
    public double Millimetres => Metres * 1000.0;

    /// <summary>A length given in millimetres.</summary>
    /// <param name="millimetres">Value in millimetres.</param>
    /// <returns>The length.</returns>
    public static Length FromMillimetres(double millimetres) => new(millimetres / 1000.0);
}
