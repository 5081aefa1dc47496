using Dewstone.Model.Description;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Seabed;

/// <summary>Forces of the sea on a body at one phase, and its factors of safety then.</summary>
/// <remarks>
/// Assumes a body small against the wave's length and deep enough that no wave slams it; not for breaking waves. Morison: drag 0.5 rho CD A U^2 along the flow U of wave and
/// current together, at the middle of the area A seen along it; inertia rho CM V du/dt along the wave, at the middle of the solid; lift 0.5 rho CL Ap U^2 at the middle
/// of the area Ap seen from above. Sliding: mu (W' cos s - L) / (F + W' sin s), on clay the resistance not above su times the area in contact. Overturning: for each edge of the
/// footprint's outline, W' cos s b / (moments of drag, inertia, lift and W' sin s), the least. Source: Morison et al., 1950; Coastal Engineering Manual part VI chapter 5; factors from memory.
/// </remarks>
public static class WaveLoad
{
    private const double Degree = Math.PI / 180.0;

    /// <summary>Forces and factors.</summary>
    /// <param name="body">The body.</param>
    /// <param name="footing">What holds it.</param>
    /// <param name="sea">The water.</param>
    /// <param name="forces">Coefficients.</param>
    /// <param name="headingDegrees">Bearing of the unit's +y, degrees.</param>
    /// <param name="phaseDegrees">After the crest, degrees.</param>
    /// <returns>The row.</returns>
    public static StabilityRow At(
        StandingBody body, Footing footing, SeaState sea, ForceCoefficients forces, double headingDegrees, double phaseDegrees)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(forces);
        double phase = phaseDegrees * Degree, wave = sea.WaveTowards * Degree, current = sea.CurrentTowards * Degree;
        double speed = sea.WaveSpeed * Math.Cos(phase), acceleration = -sea.WaveAcceleration * Math.Sin(phase);
        double east = speed * Math.Sin(wave) + sea.CurrentSpeed * Math.Sin(current);
        double north = speed * Math.Cos(wave) + sea.CurrentSpeed * Math.Cos(current);
        double flow = Math.Sqrt(east * east + north * north), flowTowards = Math.Atan2(east, north);
        (double area, double dragHeight) = body.Seen(flowTowards / Degree - headingDegrees);
        double pressure = 0.5 * sea.WaterDensity * flow * flow;
        double drag = pressure * forces.Drag * area;
        double inertia = sea.WaterDensity * forces.Inertia * body.CubicMetres * acceleration;
        double lift = pressure * forces.Lift * body.PlanSquareMetres;
        double pushEast = drag * Math.Sin(flowTowards) + inertia * Math.Sin(wave), pushNorth = drag * Math.Cos(flowTowards) + inertia * Math.Cos(wave);
        StabilityRow row = new()
        {
            HeadingDegrees = headingDegrees,
            PhaseDegrees = phaseDegrees,
            WaveSpeed = speed,
            WaveAcceleration = acceleration,
            FlowSpeed = flow,
            FlowDegrees = (flowTowards / Degree + 360.0) % 360.0,
            SquareMetres = area,
            DragNewtons = drag,
            DragHeightMetres = dragHeight,
            InertiaNewtons = inertia,
            LiftNewtons = lift,
            HorizontalNewtons = Math.Sqrt(pushEast * pushEast + pushNorth * pushNorth),
            SubmergedNewtons = footing.SubmergedNewtons,
            Sliding = 0.0,
            EdgeDegrees = 0.0,
            WeightArmMetres = 0.0,
            LiftArmMetres = 0.0,
            Overturning = StabilityReport.MostFactor,
        };
        row = row with { Sliding = Sliding(footing, row.HorizontalNewtons, lift) };
        return Overturning(
            body, footing, row,
            drag * dragHeight * Math.Sin(flowTowards) + inertia * body.Centre.Z * Math.Sin(wave),
            drag * dragHeight * Math.Cos(flowTowards) + inertia * body.Centre.Z * Math.Cos(wave));
    }

    /// <summary>Least weight under water with which a row would have its factors.</summary>
    /// <param name="row">Forces and the edge it would turn over.</param>
    /// <param name="footing">Friction and slope; its weight does not matter.</param>
    /// <param name="body">The body.</param>
    /// <param name="sliding">Factor against sliding asked for.</param>
    /// <param name="overturning">Factor against overturning asked for.</param>
    /// <returns>N; infinite when no weight would do.</returns>
    public static double LeastNewtons(StabilityRow row, Footing footing, StandingBody body, double sliding, double overturning)
    {
        ArgumentNullException.ThrowIfNull(body);
        double cos = Math.Cos(footing.SlopeRadians), sin = Math.Sin(footing.SlopeRadians);
        double grip = footing.Friction * cos - sliding * sin, arm = cos * row.WeightArmMetres - overturning * sin * body.Centre.Z;
        if (grip <= 0.0 || row.WeightArmMetres <= 0.0 || sliding * row.HorizontalNewtons > footing.MostNewtons)
        {
            return double.PositiveInfinity;
        }

        double held = (sliding * row.HorizontalNewtons + footing.Friction * row.LiftNewtons) / grip;
        double moment = row.Overturning >= StabilityReport.MostFactor
            ? 0.0
            : footing.SubmergedNewtons * cos * row.WeightArmMetres / row.Overturning - footing.SubmergedNewtons * sin * body.Centre.Z;
        return Math.Max(held, moment <= 0.0 ? 0.0 : arm <= 0.0 ? double.PositiveInfinity : overturning * moment / arm);
    }

    private static double Sliding(Footing footing, double horizontal, double lift)
    {
        double normal = footing.SubmergedNewtons * Math.Cos(footing.SlopeRadians) - lift;
        double resistance = Math.Min(footing.Friction * Math.Max(0.0, normal), footing.MostNewtons);
        double drive = horizontal + footing.SubmergedNewtons * Math.Sin(footing.SlopeRadians);
        return resistance >= StabilityReport.MostFactor * drive ? StabilityReport.MostFactor : resistance / drive;
    }

    // Moments are given as vectors: east and north parts of force times height.
    private static StabilityRow Overturning(StandingBody body, Footing footing, StabilityRow row, double momentEast, double momentNorth)
    {
        double heading = row.HeadingDegrees * Degree, sin = Math.Sin(heading), cos = Math.Cos(heading);
        // Into the unit frame: x is 90 degrees clockwise from +y.
        double momentX = momentEast * cos - momentNorth * sin, momentY = momentEast * sin + momentNorth * cos;
        double weight = footing.SubmergedNewtons * Math.Cos(footing.SlopeRadians);
        double downhill = footing.SubmergedNewtons * Math.Sin(footing.SlopeRadians) * body.Centre.Z;
        IReadOnlyList<(double X, double Y)> outline = body.Footprint;
        double least = double.PositiveInfinity;
        for (int i = 0; i < outline.Count; i++)
        {
            (double X, double Y) a = outline[i], b = outline[i + 1 == outline.Count ? 0 : i + 1];
            double dx = b.X - a.X, dy = b.Y - a.Y, length = Math.Sqrt(dx * dx + dy * dy);
            double nx = dy / length, ny = -dx / length;
            double weightArm = (a.X - body.Centre.X) * nx + (a.Y - body.Centre.Y) * ny;
            double liftArm = (a.X - body.PlanCentre.X) * nx + (a.Y - body.PlanCentre.Y) * ny;
            double turning = momentX * nx + momentY * ny + row.LiftNewtons * liftArm + downhill;
            double restoring = Math.Max(0.0, weight * weightArm);
            double factor = turning <= 0.0 || restoring >= StabilityReport.MostFactor * turning ? StabilityReport.MostFactor : restoring / turning;
            if (factor < least)
            {
                least = factor;
                double edge = Math.Atan2(nx * cos + ny * sin, ny * cos - nx * sin) / Degree;
                row = row with { EdgeDegrees = (edge + 360.0) % 360.0, WeightArmMetres = weightArm, LiftArmMetres = liftArm, Overturning = factor };
            }
        }

        return row;
    }
}
