namespace Dewstone.Model.Quantities;

/// <summary>A point or vector in space, metres, right-handed with z up; which frame (unit or printer) is said where it is used.</summary>
/// <param name="X">x in metres.</param>
/// <param name="Y">y in metres.</param>
/// <param name="Z">z in metres.</param>
public readonly record struct Point3(double X, double Y, double Z)
{
    /// <summary>Component-wise sum.</summary>
    /// <param name="a">First vector.</param>
    /// <param name="b">Second vector.</param>
    /// <returns>a + b.</returns>
    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    /// <summary>Component-wise difference.</summary>
    /// <param name="a">First vector.</param>
    /// <param name="b">Second vector.</param>
    /// <returns>a - b.</returns>
    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    /// <summary>Scaled vector.</summary>
    /// <param name="a">Vector.</param>
    /// <param name="factor">Factor, 1.</param>
    /// <returns>a times factor.</returns>
    public static Point3 operator *(Point3 a, double factor) => new(a.X * factor, a.Y * factor, a.Z * factor);

    /// <summary>Euclidean length in metres.</summary>
    public double Norm => Math.Sqrt(X * X + Y * Y + Z * Z);

    /// <summary>Scalar product.</summary>
    /// <param name="a">First vector.</param>
    /// <param name="b">Second vector.</param>
    /// <returns>a . b, square metres.</returns>
    public static double Dot(Point3 a, Point3 b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    /// <summary>Vector product.</summary>
    /// <param name="a">First vector.</param>
    /// <param name="b">Second vector.</param>
    /// <returns>a x b, square metres.</returns>
    public static Point3 Cross(Point3 a, Point3 b) => new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);
}
