using Dewstone.Model.Description;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// Turns a wanted volume into pump steps of one needle, and steps into the volume it delivers: gain x (steps x step) + offset, rounded half away
/// from zero to 0.01 mL. Worked in decimal, so that the half is the half that a reader of the table would compute.
/// </summary>
public sealed class PumpSteps
{
    private readonly decimal step;
    private readonly decimal gain;
    private readonly decimal offset;

    /// <summary>A needle's pump.</summary>
    /// <param name="stepMillilitres">Asked volume of a step, mL; more than 0.</param>
    /// <param name="gain">Gain of the needle, 1; more than 0.</param>
    /// <param name="offsetMillilitres">Offset of the needle, mL.</param>
    public PumpSteps(double stepMillilitres, double gain = 1.0, double offsetMillilitres = 0.0)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(stepMillilitres);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gain);
        // Nine places: a nanolitre hundredth, far below any pump, but it cleans 1e-7 m3 x 1e6 into 0.1 mL.
        step = Math.Max(decimal.Round((decimal)stepMillilitres, 9), 0.000000001m);
        this.gain = (decimal)gain;
        offset = (decimal)offsetMillilitres;
    }

    /// <summary>The pump of a needle as calibrated.</summary>
    /// <param name="needle">What the printer's needles can do.</param>
    /// <param name="state">Calibration; null for a needle that gives what it is asked for.</param>
    /// <returns>Its steps.</returns>
    public static PumpSteps Of(Needle needle, NeedleState? state)
    {
        ArgumentNullException.ThrowIfNull(needle);
        return new PumpSteps(needle.Step.Millilitres, state?.Gain ?? 1.0, state?.OffsetMillilitres ?? 0.0);
    }

    /// <summary>Volume delivered by a number of steps.</summary>
    /// <param name="steps">Steps; 0 for none.</param>
    /// <returns>Hundredths of a millilitre; 0 for no steps, whatever the offset, and never negative.</returns>
    public int CentiMillilitres(int steps) =>
        steps <= 0 ? 0 : Math.Max(0, (int)decimal.Round((gain * (steps * step) + offset) * 100m, 0, MidpointRounding.AwayFromZero));

    /// <summary>Steps that deliver nearest to a wanted volume while keeping to the limits.</summary>
    /// <param name="wantedMillilitres">Wanted volume, mL; 0 or below for none.</param>
    /// <param name="limits">Limits of the delivered volume.</param>
    /// <returns>Steps; 0 when none are wanted or when no number of steps delivers within the limits.</returns>
    public int Steps(double wantedMillilitres, DoseLimits limits)
    {
        ArgumentNullException.ThrowIfNull(limits);
        double allowed = limits.Clamp(wantedMillilitres);
        if (allowed <= 0.0)
        {
            return 0;
        }

        int least = (int)Math.Ceiling(limits.LeastMillilitres * 100.0 - 1e-6);
        int upper = (int)Math.Floor(limits.UpperMillilitres * 100.0 + 1e-6);
        int steps = Math.Max(1, (int)decimal.Round(((decimal)allowed - offset) / (gain * step), 0, MidpointRounding.AwayFromZero));
        while (steps > 0 && CentiMillilitres(steps) > upper)
        {
            steps--;
        }

        // At most two steps up: rounding moved it at most half a step and half a hundredth below.
        for (int tries = 0; tries < 2 && CentiMillilitres(steps) < least; tries++)
        {
            steps++;
        }

        int delivered = CentiMillilitres(steps);
        return delivered >= least && delivered <= upper && delivered > 0 ? steps : 0;
    }
}
