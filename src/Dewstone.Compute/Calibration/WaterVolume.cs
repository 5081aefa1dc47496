namespace Dewstone.Compute.Calibration;

/// <summary>Volume of weighed water.</summary>
/// <remarks>
/// volume = mass x Z; Z = 1/rho_w x (1 - rho_a/rho_b)/(1 - rho_a/rho_w), for a balance set with weights of rho_b = 8000 kg/m3. Water density rho_w:
/// Tanaka et al. 2001, Metrologia 38:301, equation 1 (air-free water, 0 to 40 degC); air density rho_a = (0.34848 p - 0.009 h exp(0.061 t))/(273.15 + t),
/// p in hPa, h in percent, at a relative humidity of 50 %. Form of ISO 4787 and ISO/TR 20461; equations from memory. For clean water only: what is
/// stirred into the liquid of a mix changes its density.
/// </remarks>
public static class WaterVolume
{
    private const double WeightsKilogramsPerCubicMetre = 8000.0;
    private const double HumidityPercent = 50.0;

    /// <summary>Millilitres a gram of weighed water takes up.</summary>
    /// <param name="celsius">Temperature of the water, degC, 0 to 40.</param>
    /// <param name="hectopascals">Pressure of the air, hPa.</param>
    /// <returns>Z, mL/g.</returns>
    public static double MillilitresPerGram(double celsius, double hectopascals)
    {
        double t = celsius;
        double air = (0.34848 * hectopascals - 0.009 * HumidityPercent * Math.Exp(0.061 * t)) / (273.15 + t);
        return 1000.0 * (1.0 - air / WeightsKilogramsPerCubicMetre) / (Density(t) - air);
    }

    /// <summary>Density of clean air-free water.</summary>
    /// <param name="celsius">Temperature, degC, 0 to 40.</param>
    /// <returns>Density, kg/m3.</returns>
    public static double Density(double celsius)
    {
        double t = celsius, off = t - 3.983035;
        return 999.974950 * (1.0 - off * off * (t + 301.797) / (522528.9 * (t + 69.34881)));
    }
}
