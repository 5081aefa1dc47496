using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Strength;

/// <summary>An upward pressure that is straight over the plan: a + b x + c y from an origin. Stiff body on even ground.</summary>
/// <param name="Origin">Where x and y are counted from, metres, unit frame.</param>
/// <param name="A">At the origin, Pa (N/m3 for volumes).</param>
/// <param name="B">Growth along x, a metre.</param>
/// <param name="C">Growth along y, a metre.</param>
internal readonly record struct PlanPressure(Point3 Origin, double A, double B, double C)
{
    /// <summary>The pressure at a point.</summary>
    /// <param name="point">Metres, unit frame.</param>
    /// <returns>Pressure.</returns>
    public double At(Point3 point) => A + B * (point.X - Origin.X) + C * (point.Y - Origin.Y);

    /// <summary>The pressure on supports that carries a weight: forces and both moments in balance.</summary>
    /// <param name="supports">What bears.</param>
    /// <param name="newtons">Weight, N.</param>
    /// <param name="centre">Its centre of gravity, metres, unit frame.</param>
    /// <returns>The pressure; null when the supports lie in one line or are none.</returns>
    public static PlanPressure? Carrying(IReadOnlyList<Support> supports, double newtons, Point3 centre)
    {
        Span<double> s = stackalloc double[6];
        foreach (Support support in supports)
        {
            support.AddTo(s, centre);
        }

        // Cramer's rule on [s0 s1 s2; s1 s3 s4; s2 s4 s5] (a, b, c) = (newtons, 0, 0).
        double a = s[3] * s[5] - s[4] * s[4], b = s[2] * s[4] - s[1] * s[5], c = s[1] * s[4] - s[2] * s[3];
        double determinant = s[0] * a + s[1] * b + s[2] * c;
        double size = s[3] + s[5];
        return determinant <= 1e-9 * s[0] * size * size ? null : new PlanPressure(centre, newtons * a / determinant, newtons * b / determinant, newtons * c / determinant);
    }
}
