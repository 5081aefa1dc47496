namespace Dewstone.Compute.Strength;

/// <summary>What age and temperature make of a concrete: maturity and equivalent age.</summary>
/// <remarks>
/// Assumes curing water enough, 0 to 40 degC. Nurse-Saul: M = sum (Ta - T0) dt, nothing while Ta is below T0. Equivalent age: te = sum exp(-Q (1/Ta - 1/Ts)) dt, kelvin, Q
/// the activation energy over the gas constant. Source: ASTM C1074, "Standard practice for estimating concrete strength by the maturity method" (Nurse-Saul
/// looked up, Q = 5000 K from memory).
/// </remarks>
public static class Maturity
{
    /// <summary>Q where nothing better is known, K.</summary>
    public const double UsualActivationKelvin = 5000.0;

    /// <summary>Temperature at which strengths at 28 days are told, degC.</summary>
    public const double ReferenceCelsius = 20.0;

    private const double Zero = 273.15;

    /// <summary>Equivalent time a time.</summary>
    /// <param name="celsius">Curing temperature, degC.</param>
    /// <param name="activationKelvin">Q, K.</param>
    /// <param name="referenceCelsius">Ts, degC.</param>
    /// <returns>Rate, 1.</returns>
    public static double Rate(double celsius, double activationKelvin = UsualActivationKelvin, double referenceCelsius = ReferenceCelsius) =>
        Math.Exp(-activationKelvin * (1.0 / (celsius + Zero) - 1.0 / (referenceCelsius + Zero)));

    /// <summary>Nurse-Saul maturity gathered in a time.</summary>
    /// <param name="celsius">Temperature, degC.</param>
    /// <param name="hours">Time, h.</param>
    /// <param name="datumCelsius">T0, degC.</param>
    /// <returns>degC h.</returns>
    public static double NurseSaul(double celsius, double hours, double datumCelsius = 0.0) => Math.Max(0.0, celsius - datumCelsius) * hours;
}
