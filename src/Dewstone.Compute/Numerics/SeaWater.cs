namespace Dewstone.Compute.Numerics;

/// <summary>Density of sea water by the international equation of state of 1980 (EOS-80).</summary>
/// <remarks>
/// Assumes standard sea water; not for brackish water of unusual salts. Practical salinity 0 to 42, temperature -2 to 40 degC on the scale of 1968 (it
/// differs from today's by 0.01 K at most in that range), pressure above the atmosphere 0 to 1000 bar. Mind that oceanographers give decibars: 1 bar = 10 dbar.
/// Equation: rho(S, t, p) = rho(S, t, 0) / (1 - p / K(S, t, p)). Source: Fofonoff and Millard, 1983, "Algorithms for computation of fundamental properties
/// of seawater", UNESCO Technical Papers in Marine Science 44; coefficients also in Gill, 1982, "Atmosphere-Ocean Dynamics", appendix 3.
/// </remarks>
public static class SeaWater
{
    /// <summary>Density taken when no site is given, kg/m3; within 3 of the equation for salinity 35 and 5 to 25 degC.</summary>
    public const double UsualKilogramsPerCubicMetre = 1025.0;

    /// <summary>Density of sea water.</summary>
    /// <param name="salinity">Practical salinity, 1, 0 to 42.</param>
    /// <param name="celsius">Temperature, degC, -2 to 40.</param>
    /// <param name="bar">Pressure above the atmosphere, bar (not decibar), 0 to 1000.</param>
    /// <returns>Density, kg/m3.</returns>
    public static double KilogramsPerCubicMetre(double salinity, double celsius, double bar = 0.0)
    {
        double atSurface = AtSurface(salinity, celsius);
        return bar == 0.0 ? atSurface : atSurface / (1.0 - bar / SecantBulkModulusBar(salinity, celsius, bar));
    }

    /// <summary>Secant bulk modulus K of sea water.</summary>
    /// <param name="salinity">Practical salinity, 1, 0 to 42.</param>
    /// <param name="celsius">Temperature, degC, -2 to 40.</param>
    /// <param name="bar">Pressure above the atmosphere, bar, 0 to 1000.</param>
    /// <returns>K, bar.</returns>
    public static double SecantBulkModulusBar(double salinity, double celsius, double bar)
    {
        double s = salinity, t = celsius;
        double root = s * Math.Sqrt(s);
        double pure = 19652.21 + t * (148.4206 + t * (-2.327105 + t * (1.360477e-2 - t * 5.155288e-5)));
        double surface = pure + s * (54.6746 + t * (-0.603459 + t * (1.09987e-2 - t * 6.1670e-5)))
            + root * (7.944e-2 + t * (1.6483e-2 - t * 5.3009e-4));
        double a = 3.239908 + t * (1.43713e-3 + t * (1.16092e-4 - t * 5.77905e-7))
            + s * (2.2838e-3 + t * (-1.0981e-5 - t * 1.6078e-6)) + root * 1.91075e-4;
        double b = 8.50935e-5 + t * (-6.12293e-6 + t * 5.2787e-8) + s * (-9.9348e-7 + t * (2.0816e-8 + t * 9.1697e-10));
        return surface + bar * (a + bar * b);
    }

    /// <summary>Kinematic viscosity of sea water at the surface.</summary>
    /// <remarks>
    /// Assumes standard sea water, 0 to 40 degC, salinity 0 to 60. Equation: mu = mu_w (1 + A S + B S^2) over the density, S in kg/kg. Source: Sharqawy,
    /// Lienhard and Zubair, 2010, "Thermophysical properties of seawater", Desalination and Water Treatment 16, equations 22 and 23; from memory.
    /// </remarks>
    /// <param name="salinity">Practical salinity, 1.</param>
    /// <param name="celsius">Temperature, degC.</param>
    /// <returns>Viscosity, m2/s.</returns>
    public static double KinematicViscosity(double salinity, double celsius)
    {
        double s = salinity / 1000.0, t = celsius;
        double pure = 4.2844e-5 + 1.0 / (0.157 * (t + 64.993) * (t + 64.993) - 91.296);
        double a = 1.541 + t * (1.998e-2 - t * 9.52e-5), b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
        return pure * (1.0 + s * (a + s * b)) / KilogramsPerCubicMetre(salinity, celsius);
    }

    private static double AtSurface(double salinity, double celsius)
    {
        double s = salinity, t = celsius;
        double pure = 999.842594 + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
        return pure + s * (0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9))))
            + s * Math.Sqrt(s) * (-5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6)) + s * s * 4.8314e-4;
    }
}
