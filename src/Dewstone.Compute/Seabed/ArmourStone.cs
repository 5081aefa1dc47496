namespace Dewstone.Compute.Seabed;

/// <summary>What formulas for loose stones would ask: a cross-check of the order of size, no more, since none was made for a unit of its own shape.</summary>
/// <remarks>
/// Hudson, 1959: W = gr H^3 / (KD (Sr - 1)^3 cot); KD of one-off reef units is not tabulated. Isbash, 1936: V = C sqrt(2 g Delta D), C = 0.86 for a stone that lies open;
/// from memory.
/// </remarks>
public static class ArmourStone
{
    /// <summary>Isbash's factor C of a stone that lies open, 1.</summary>
    private const double Exposed = 0.86;

    /// <summary>Weight that Hudson asks of a stone on a slope.</summary>
    /// <param name="unitWeight">Of the stone, N/m3.</param>
    /// <param name="waterUnitWeight">Of the water, N/m3.</param>
    /// <param name="heightMetres">Wave height, m.</param>
    /// <param name="stability">KD, 1.</param>
    /// <param name="cotangent">Of the slope, 1.</param>
    /// <returns>N.</returns>
    public static double HudsonNewtons(double unitWeight, double waterUnitWeight, double heightMetres, double stability, double cotangent)
    {
        double relative = unitWeight / waterUnitWeight - 1.0;
        return unitWeight * heightMetres * heightMetres * heightMetres / (stability * relative * relative * relative * cotangent);
    }

    /// <summary>Size that Isbash asks of a stone that lies open in a stream.</summary>
    /// <param name="speed">Of the water, m/s.</param>
    /// <param name="relativeDensity">(stone - water) / water, 1, more than 0.</param>
    /// <returns>Diameter of the ball of the same volume, m.</returns>
    public static double IsbashMetres(double speed, double relativeDensity) =>
        speed * speed / (Exposed * Exposed * 2.0 * AiryWave.Gravity * relativeDensity);
}
