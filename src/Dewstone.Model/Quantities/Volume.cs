namespace Dewstone.Model.Quantities;

/// <summary>A volume, held in cubic metres.</summary>
/// <param name="CubicMetres">Value in cubic metres.</param>
public readonly record struct Volume(double CubicMetres) : IComparable<Volume>
{
    /// <summary>Orders by value.</summary>
    /// <param name="other">The value to compare with.</param>
    /// <returns>Negative, zero or positive as this is smaller, equal or larger.</returns>
    public int CompareTo(Volume other) => CubicMetres.CompareTo(other.CubicMetres);

    /// <summary>Whether <paramref name="left"/> is smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller.</returns>
    public static bool operator <(Volume left, Volume right) => left.CubicMetres < right.CubicMetres;

    /// <summary>Whether <paramref name="left"/> is larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger.</returns>
    public static bool operator >(Volume left, Volume right) => left.CubicMetres > right.CubicMetres;

    /// <summary>Whether <paramref name="left"/> is not larger.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when smaller or equal.</returns>
    public static bool operator <=(Volume left, Volume right) => left.CubicMetres <= right.CubicMetres;

    /// <summary>Whether <paramref name="left"/> is not smaller.</summary>
    /// <param name="left">Left value.</param>
    /// <param name="right">Right value.</param>
    /// <returns>True when larger or equal.</returns>
    public static bool operator >=(Volume left, Volume right) => left.CubicMetres >= right.CubicMetres;

    /// <summary>The volume in millilitres, the unit of doses.</summary>
    public double Millilitres => CubicMetres * 1e6;

    /// <summary>The volume in litres.</summary>
    public double Litres => CubicMetres * 1e3;

    /// <summary>A volume given in millilitres.</summary>
    /// <param name="millilitres">Value in millilitres.</param>
    /// <returns>The volume.</returns>
    public static Volume FromMillilitres(double millilitres) => new(millilitres / 1e6);
}
