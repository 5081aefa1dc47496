namespace Dewstone.Reading.Quantities;

/// <summary>
/// A unit of measure: base value = (value + Offset) x Multiply / Divide. Two whole factors instead of one broken one, so that
/// <c>900 mm</c> becomes the very double that <c>0.9 m</c> is.
/// </summary>
/// <param name="Symbol">As written, case matters.</param>
/// <param name="Multiply">Factor to the base unit.</param>
/// <param name="Divide">Divisor to the base unit.</param>
/// <param name="Offset">Added before, in this unit.</param>
internal sealed record UnitOfMeasure(string Symbol, double Multiply = 1.0, double Divide = 1.0, double Offset = 0.0)
{
    /// <summary>Converts to the base unit.</summary>
    /// <param name="value">Value in this unit.</param>
    /// <returns>Value in the base unit.</returns>
    public double ToBase(double value) => (value + Offset) * Multiply / Divide;

    /// <summary>Converts from the base unit.</summary>
    /// <param name="value">Value in the base unit.</param>
    /// <returns>Value in this unit.</returns>
    public double FromBase(double value) => (value * Divide / Multiply) - Offset;
}
