namespace Dewstone.Compute.Seabed;

/// <summary>Whether the sea moves the sand of its bed, and how deep it may scour beside a body.</summary>
/// <remarks>
/// Threshold: theta = 0.30 / (1 + 1.2 D*) + 0.055 (1 - exp(-0.020 D*)), D* = d (g (s - 1) / nu^2)^(1/3); Soulsby, 1997, "Dynamics of marine sands", equation 77. Stress of waves
/// fw = 1.39 (A / z0)^-0.52, z0 = d / 12, of a current CD = (0.40 / (1 + ln(z0 / h)))^2, of both tau_m = tau_c (1 + 1.2 (tau_w / (tau_c + tau_w))^3.2), the greatest
/// sqrt((tau_m + tau_w cos)^2 + (tau_w sin)^2); the same book; from memory. Depth beside a round pile in waves 1.3 D (1 - exp(-0.03 (KC - 6))): Sumer, Fredsoe and Christiansen,
/// 1992; from memory. A unit that stands on the seabed scours and sinks at lower KC: an order of size only.
/// </remarks>
public static class Scour
{
    /// <summary>Density of quartz, kg/m3.</summary>
    public const double GrainKilogramsPerCubicMetre = 2650.0;

    /// <summary>Grain size made free of units.</summary>
    /// <param name="grainMetres">d50, m.</param>
    /// <param name="waterDensity">kg/m3.</param>
    /// <param name="viscosity">m2/s.</param>
    /// <returns>D*, 1.</returns>
    public static double DimensionlessGrain(double grainMetres, double waterDensity, double viscosity) =>
        grainMetres * Math.Cbrt(AiryWave.Gravity * (GrainKilogramsPerCubicMetre / waterDensity - 1.0) / (viscosity * viscosity));

    /// <summary>Shields parameter at which grains begin to move.</summary>
    /// <param name="dimensionlessGrain">D*, 1.</param>
    /// <returns>1.</returns>
    public static double ThresholdShields(double dimensionlessGrain) =>
        0.30 / (1.0 + 1.2 * dimensionlessGrain) + 0.055 * (1.0 - Math.Exp(-0.020 * dimensionlessGrain));

    /// <summary>Bed stress at which grains begin to move.</summary>
    /// <param name="grainMetres">d50, m.</param>
    /// <param name="waterDensity">kg/m3.</param>
    /// <param name="viscosity">m2/s.</param>
    /// <returns>Pa.</returns>
    public static double ThresholdPascals(double grainMetres, double waterDensity, double viscosity) =>
        ThresholdShields(DimensionlessGrain(grainMetres, waterDensity, viscosity))
        * AiryWave.Gravity * (GrainKilogramsPerCubicMetre - waterDensity) * grainMetres;

    /// <summary>Greatest bed stress of waves over sand.</summary>
    /// <param name="speed">Greatest speed at the seabed, m/s.</param>
    /// <param name="excursion">Half of the water's way, m.</param>
    /// <param name="grainMetres">d50, m.</param>
    /// <param name="waterDensity">kg/m3.</param>
    /// <returns>Pa; 0 without waves.</returns>
    public static double WavePascals(double speed, double excursion, double grainMetres, double waterDensity) =>
        excursion <= 0.0 ? 0.0 : 0.5 * waterDensity * 1.39 * Math.Pow(12.0 * excursion / grainMetres, -0.52) * speed * speed;

    /// <summary>Bed stress of a current over sand.</summary>
    /// <param name="speed">Mean over the depth, m/s.</param>
    /// <param name="depthMetres">Depth, m.</param>
    /// <param name="grainMetres">d50, m.</param>
    /// <param name="waterDensity">kg/m3.</param>
    /// <returns>Pa.</returns>
    public static double CurrentPascals(double speed, double depthMetres, double grainMetres, double waterDensity)
    {
        double root = 0.40 / (1.0 + Math.Log(grainMetres / 12.0 / depthMetres));
        return waterDensity * root * root * speed * speed;
    }

    /// <summary>Mean bed stress of waves and a current together.</summary>
    /// <param name="wavePascals">Of the waves, Pa.</param>
    /// <param name="currentPascals">Of the current, Pa.</param>
    /// <returns>Pa.</returns>
    public static double MeanPascals(double wavePascals, double currentPascals) =>
        currentPascals <= 0.0 ? 0.0 : currentPascals * (1.0 + 1.2 * Math.Pow(wavePascals / (currentPascals + wavePascals), 3.2));

    /// <summary>Greatest bed stress of waves and a current together.</summary>
    /// <param name="wavePascals">Of the waves, Pa.</param>
    /// <param name="currentPascals">Of the current, Pa.</param>
    /// <param name="angleRadians">Between their directions, rad.</param>
    /// <returns>Pa.</returns>
    public static double GreatestPascals(double wavePascals, double currentPascals, double angleRadians)
    {
        double along = MeanPascals(wavePascals, currentPascals) + wavePascals * Math.Abs(Math.Cos(angleRadians));
        double across = wavePascals * Math.Sin(angleRadians);
        return Math.Sqrt(along * along + across * across);
    }

    /// <summary>Scour beside a round pile in waves.</summary>
    /// <param name="keuleganCarpenter">KC = u T / D, 1.</param>
    /// <returns>Depth over width, 1; 0 up to KC 6.</returns>
    public static double DepthOverWidth(double keuleganCarpenter) =>
        keuleganCarpenter <= 6.0 ? 0.0 : 1.3 * (1.0 - Math.Exp(-0.03 * (keuleganCarpenter - 6.0)));
}
