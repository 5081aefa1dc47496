using System.Globalization;

namespace Dewstone.Reading.Quantities;

/// <summary>
/// A unit of measure: base value = (value + Offset) x Multiply / Divide. Two whole factors instead of one broken one, so that
/// <c>36 in</c> becomes the very double that <c>0.9144 m</c> is; for powers of ten the decimal point is moved in the text instead, which
/// is exact for every number.
/// </summary>
/// <param name="Symbol">As written, case matters.</param>
/// <param name="Multiply">Factor to the base unit.</param>
/// <param name="Divide">Divisor to the base unit.</param>
/// <param name="Offset">Added before, in this unit.</param>
internal sealed record UnitOfMeasure(string Symbol, double Multiply = 1.0, double Divide = 1.0, double Offset = 0.0)
{
    /// <summary>Converts a number to the base unit.</summary>
    /// <param name="number">The number as written, without its unit; strict as <see cref="NumberText"/> has it.</param>
    /// <returns>Value in the base unit; not finite when it is too large.</returns>
    public double ToBase(ReadOnlySpan<char> number)
    {
        if (Offset == 0.0 && (Multiply == 1.0 || Divide == 1.0) && (PowerOfTen(Multiply) - PowerOfTen(Divide)) is { } decades
            && Shifted(number, decades) is { } exact)
        {
            return exact;
        }

        return (double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture) + Offset) * Multiply / Divide;
    }

    private static double? Shifted(ReadOnlySpan<char> number, int decades)
    {
        int e = number.IndexOfAny('e', 'E');
        ReadOnlySpan<char> mantissa = e < 0 ? number : number[..e];
        int exponent = 0;
        return e >= 0 && !int.TryParse(number[(e + 1)..], NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out exponent)
            ? null
            : double.Parse(string.Create(CultureInfo.InvariantCulture, $"{mantissa}e{(long)exponent + decades}"), NumberStyles.Float,
                CultureInfo.InvariantCulture);
    }

    private static int? PowerOfTen(double factor)
    {
        double power = 1.0;
        for (int exponent = 0; exponent <= 12; exponent++, power *= 10.0)
        {
            if (factor == power)
            {
                return exponent;
            }
        }

        return null;
    }
}
