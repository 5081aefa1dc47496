using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Survey;

/// <summary>A turn followed by a shift: p to R p + t. The rows of R are <see cref="X"/>, <see cref="Y"/> and <see cref="Z"/>.</summary>
/// <param name="X">First row of R.</param>
/// <param name="Y">Second row.</param>
/// <param name="Z">Third row.</param>
/// <param name="Shift">t, metres.</param>
public readonly record struct RigidMotion(Point3 X, Point3 Y, Point3 Z, Point3 Shift)
{
    /// <summary>Nothing moves.</summary>
    public static RigidMotion None => new(new Point3(1.0, 0.0, 0.0), new Point3(0.0, 1.0, 0.0), new Point3(0.0, 0.0, 1.0), default);

    /// <summary>Angle of the turn, radians, 0 to pi.</summary>
    public double Radians
    {
        get
        {
            // Of the antisymmetric part as well, which stays exact for small angles.
            double cosine = (X.X + Y.Y + Z.Z - 1.0) / 2.0;
            double sine = new Point3(Z.Y - Y.Z, X.Z - Z.X, Y.X - X.Y).Norm / 2.0;
            return Math.Atan2(sine, cosine);
        }
    }

    /// <summary>A turn about the origin, then a shift.</summary>
    /// <param name="turn">Axis times angle, radians (Rodrigues).</param>
    /// <param name="shift">Shift, metres.</param>
    /// <returns>The motion.</returns>
    public static RigidMotion Of(Point3 turn, Point3 shift)
    {
        double angle = turn.Norm;
        if (angle < 1e-15)
        {
            return None with { Shift = shift };
        }

        (double x, double y, double z) = (turn.X / angle, turn.Y / angle, turn.Z / angle);
        (double s, double c) = Math.SinCos(angle);
        double v = 1.0 - c;
        return new RigidMotion(
            new Point3(c + x * x * v, x * y * v - z * s, x * z * v + y * s), new Point3(y * x * v + z * s, c + y * y * v, y * z * v - x * s),
            new Point3(z * x * v - y * s, z * y * v + x * s, c + z * z * v), shift);
    }

    /// <summary>Moves a point.</summary>
    /// <param name="p">The point, metres.</param>
    /// <returns>R p + t.</returns>
    public Point3 Apply(Point3 p) => Turn(p) + Shift;

    /// <summary>Turns a direction.</summary>
    /// <param name="p">The direction.</param>
    /// <returns>R p.</returns>
    public Point3 Turn(Point3 p) => new(Point3.Dot(X, p), Point3.Dot(Y, p), Point3.Dot(Z, p));

    /// <summary>This motion, then another.</summary>
    /// <param name="next">The other.</param>
    /// <returns>Both in one.</returns>
    public RigidMotion Then(RigidMotion next)
    {
        Point3 a = new(X.X, Y.X, Z.X), b = new(X.Y, Y.Y, Z.Y), c = new(X.Z, Y.Z, Z.Z);
        Point3 first = next.Turn(a), second = next.Turn(b), third = next.Turn(c);
        return new RigidMotion(
            new Point3(first.X, second.X, third.X), new Point3(first.Y, second.Y, third.Y), new Point3(first.Z, second.Z, third.Z), next.Apply(Shift));
    }

    /// <summary>The motion back.</summary>
    /// <returns>Its inverse.</returns>
    public RigidMotion Back()
    {
        RigidMotion turned = new(new Point3(X.X, Y.X, Z.X), new Point3(X.Y, Y.Y, Z.Y), new Point3(X.Z, Y.Z, Z.Z), default);
        return turned with { Shift = turned.Turn(Shift) * -1.0 };
    }
}
