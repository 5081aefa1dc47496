namespace Dewstone.Compute.Tests.Wetting;

/// <summary>
/// The ball that a volume of water makes from a point in an endless dry bed, D = D1 (theta/porosity)^m.
/// Barenblatt (1952), "On some unsteady motions of a liquid and gas in a porous medium", Prikl. Mat. Mekh. 16, 67-78; Pattle (1959),
/// "Diffusion from an instantaneous point source with a concentration-dependent coefficient", Q. J. Mech. Appl. Math. 12, 407-409.
/// In these symbols (derived from their solution):
/// R^(3m+2) = (3m+2) (2/m) [3 V / (4 pi porosity C)]^m D1 t;  s(r) = sc (1 - r^2/R^2)^(1/m);  sc = 3 V / (4 pi porosity C R^3);
/// C = 3 integral over 0..1 of (1 - x^2)^(1/m) x^2 dx = 0.4, 0.589049, 0.749159 for m = 1, 2, 4.
/// </summary>
internal sealed class PointSource(int exponent, double porosity, double volume, double diffusivity)
{
    private readonly double contained = 3.0 * volume / (4.0 * Math.PI * porosity * Shape(exponent));

    public double Radius(double seconds) =>
        Math.Pow((3.0 * exponent + 2.0) * (2.0 / exponent) * Math.Pow(contained, exponent) * diffusivity * seconds, 1.0 / (3.0 * exponent + 2.0));

    public double CentreSaturation(double seconds) => contained / Math.Pow(Radius(seconds), 3.0);

    public double Saturation(double radius, double seconds)
    {
        double ratio = radius / Radius(seconds);
        return ratio >= 1.0 ? 0.0 : CentreSaturation(seconds) * Math.Pow(1.0 - ratio * ratio, 1.0 / exponent);
    }

    /// <summary>Time at which the front is at a radius, s.</summary>
    public double SecondsAtRadius(double radius) => Math.Pow(radius / Radius(1.0), 3.0 * exponent + 2.0);

    /// <summary>Radius inside which the saturation is at least a value, m.</summary>
    public double RadiusAtSaturation(double saturation, double seconds) =>
        Radius(seconds) * Math.Sqrt(Math.Max(0.0, 1.0 - Math.Pow(saturation / CentreSaturation(seconds), exponent)));

    // With x = sin(a) the integrand is smooth; the midpoint rule of 20,000 parts is good to 1e-9 for m = 1 and to 1e-6 for m = 12.
    private static double Shape(int m)
    {
        const int parts = 20_000;
        double sum = 0.0;
        for (int i = 0; i < parts; i++)
        {
            double a = (i + 0.5) * Math.PI / 2.0 / parts;
            sum += Math.Pow(Math.Cos(a), 2.0 / m) * Math.Sin(a) * Math.Sin(a) * Math.Cos(a);
        }

        return 3.0 * sum * Math.PI / 2.0 / parts;
    }
}
