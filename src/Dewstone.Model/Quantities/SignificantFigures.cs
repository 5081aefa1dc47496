using System.Globalization;

namespace Dewstone.Model.Quantities;

/// <summary>Rounds figures that are written down: the last bits of library functions change with the processor, and must not reach a file.</summary>
public static class SignificantFigures
{
    /// <summary>A number rounded to six significant digits.</summary>
    /// <param name="value">Any finite number.</param>
    /// <returns>The nearest number of six decimal digits.</returns>
    public static double Six(double value) => double.Parse(value.ToString("G6", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
