using Dewstone.Model.Quantities;

namespace Dewstone.Jobs.Emission.Report;

/// <summary>How the report writes figures with their units: the only place that knows, so that another set of units is a change here alone.</summary>
internal static class ReportFigures
{
    /// <summary>A mass.</summary>
    /// <param name="kilograms">kg.</param>
    /// <returns>Text.</returns>
    public static string Mass(double kilograms) => $"{Amount(kilograms)} kg";

    /// <summary>A volume of water or solid.</summary>
    /// <param name="cubicMetres">m3.</param>
    /// <returns>Text, litres.</returns>
    public static string Litres(double cubicMetres) => $"{Amount(cubicMetres * 1000.0)} L";

    /// <summary>A dose.</summary>
    /// <param name="centiMillilitres">Hundredths of a millilitre.</param>
    /// <returns>Text, millilitres.</returns>
    public static string Dose(double centiMillilitres) => $"{centiMillilitres / 100.0:0.00} mL";

    /// <summary>A length.</summary>
    /// <param name="metres">m.</param>
    /// <returns>Text, millimetres to a tenth.</returns>
    public static string Length(double metres) => $"{Millimetres(metres)} mm";

    /// <summary>A box.</summary>
    /// <param name="box">Edges, m.</param>
    /// <returns>Text, millimetres.</returns>
    public static string Box(Size3 box) => $"{Millimetres(box.X)} × {Millimetres(box.Y)} × {Millimetres(box.Z)} mm";

    /// <summary>A place.</summary>
    /// <param name="point">Coordinates, m.</param>
    /// <returns>Text, millimetres.</returns>
    public static string Place(Point3 point) => $"x {Millimetres(point.X)}, y {Millimetres(point.Y)}, z {Millimetres(point.Z)} mm";

    /// <summary>A share.</summary>
    /// <param name="share">1 for the whole.</param>
    /// <returns>Text, per cent.</returns>
    public static string Share(double share) => $"{Minus((share * 100.0).ToString("0.0"))} %";

    /// <summary>A difference as a share.</summary>
    /// <param name="share">1 for the whole.</param>
    /// <returns>Text, per cent, with its sign.</returns>
    public static string SignedShare(double share) => $"{Minus((share * 100.0).ToString("+0.0;-0.0;0.0"))} %";

    /// <summary>A ratio.</summary>
    /// <param name="ratio">1.</param>
    /// <returns>Text, three decimals.</returns>
    public static string Ratio(double ratio) => Minus(ratio.ToString("0.000"));

    /// <summary>A factor of safety, or a like ratio.</summary>
    /// <param name="factor">1.</param>
    /// <returns>Text, two decimals; "above 100" from there on.</returns>
    public static string Factor(double factor) => factor >= 100.0 ? "above 100" : factor.ToString("0.00");

    /// <summary>A bearing.</summary>
    /// <param name="degrees">Clockwise from true north.</param>
    /// <returns>Text, three digits.</returns>
    public static string Bearing(double degrees) => $"{degrees:000}°";

    /// <summary>A length at sea.</summary>
    /// <param name="metres">m.</param>
    /// <returns>Text, metres to a hundredth.</returns>
    public static string Metres(double metres) => $"{Minus(metres.ToString("0.00"))} m";

    /// <summary>An area.</summary>
    /// <param name="squareMetres">m2.</param>
    /// <returns>Text.</returns>
    public static string SquareMetres(double squareMetres) => $"{squareMetres:0.000} m²";

    /// <summary>A force.</summary>
    /// <param name="newtons">N.</param>
    /// <returns>Text, kilonewtons.</returns>
    public static string Kilonewtons(double newtons) => $"{newtons / 1000.0:0.00} kN";

    /// <summary>A pressure.</summary>
    /// <param name="pascals">Pa.</param>
    /// <returns>Text, kilopascals.</returns>
    public static string Kilopascals(double pascals) => $"{pascals / 1000.0:0.0} kPa";

    /// <summary>A bare number of a chart's scale.</summary>
    /// <param name="value">The number.</param>
    /// <returns>Text.</returns>
    public static string Plain(double value) => Minus(value.ToString("0.###"));

    /// <summary>A temperature.</summary>
    /// <param name="temperature">The temperature.</param>
    /// <returns>Text.</returns>
    public static string Degrees(Temperature temperature) => $"{Minus(temperature.Celsius.ToString("0.#"))} °C";

    /// <summary>A density.</summary>
    /// <param name="kilogramsPerCubicMetre">kg/m3.</param>
    /// <returns>Text.</returns>
    public static string Density(double kilogramsPerCubicMetre) => $"{kilogramsPerCubicMetre:0} kg/m³";

    /// <summary>How long something takes.</summary>
    /// <param name="seconds">s.</param>
    /// <returns>Text, e.g. <c>1 h 05 min</c>, <c>15 min 50 s</c> or <c>12 s</c>.</returns>
    public static string Duration(double seconds)
    {
        long whole = (long)Math.Round(seconds);
        return whole switch
        {
            < 60 => $"{seconds:0.#} s",
            < 3600 when whole % 60 == 0 => $"{whole / 60} min",
            < 3600 => $"{whole / 60} min {whole % 60:00} s",
            _ => $"{(whole + 30) / 3600} h {(whole + 30) / 60 % 60:00} min",
        };
    }

    /// <summary>A figure of a requirement.</summary>
    /// <param name="value">The figure.</param>
    /// <param name="unit">Its unit; 1 for none.</param>
    /// <returns>Text.</returns>
    public static string Quantity(double value, string unit) => unit switch
    {
        "1" => Minus(value.ToString("0.###")),
        "m" => Length(value),
        "" => Minus(value.ToString("0.###")),
        _ => $"{Minus(value.ToString("0.#"))} {unit}",
    };

    /// <summary>A length without its unit.</summary>
    /// <param name="metres">m.</param>
    /// <returns>Text, millimetres to a tenth.</returns>
    public static string Millimetres(double metres) => Minus((metres * 1000.0).ToString("0.#"));

    /// <summary>Three figures, or whole above a hundred.</summary>
    /// <param name="value">The value.</param>
    /// <returns>Text.</returns>
    public static string Amount(double value) => Minus(value.ToString(Math.Abs(value) switch { >= 100.0 => "0", >= 10.0 => "0.0", _ => "0.00" }));

    private static string Minus(string figure) => figure.Replace('-', '−');
}
