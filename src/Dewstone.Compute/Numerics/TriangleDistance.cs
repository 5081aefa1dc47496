namespace Dewstone.Compute.Numerics;

/// <summary>Squared distance from a point to a triangle, exact.</summary>
internal static class TriangleDistance
{
    /// <summary>Squared distance to the nearest point of a triangle.</summary>
    /// <param name="x">x of the point.</param>
    /// <param name="y">y of the point.</param>
    /// <param name="z">z of the point.</param>
    /// <param name="a">First corner, x y z.</param>
    /// <param name="b">Second corner, x y z.</param>
    /// <param name="c">Third corner, x y z.</param>
    /// <returns>Unit of the coordinates, squared.</returns>
    public static double Squared(double x, double y, double z, ReadOnlySpan<float> a, ReadOnlySpan<float> b, ReadOnlySpan<float> c)
    {
        double abX = (double)b[0] - a[0], abY = (double)b[1] - a[1], abZ = (double)b[2] - a[2];
        double acX = (double)c[0] - a[0], acY = (double)c[1] - a[1], acZ = (double)c[2] - a[2];
        double apX = x - a[0], apY = y - a[1], apZ = z - a[2];
        double abAb = abX * abX + abY * abY + abZ * abZ, acAc = acX * acX + acY * acY + acZ * acZ, abAc = abX * acX + abY * acY + abZ * acZ;
        double abAp = abX * apX + abY * apY + abZ * apZ, acAp = acX * apX + acY * apY + acZ * apZ;
        double determinant = abAb * acAc - abAc * abAc;
        double s = acAc * abAp - abAc * acAp, t = abAb * acAp - abAc * abAp;
        if (determinant > 0.0 && s >= 0.0 && t >= 0.0 && s + t <= determinant)
        {
            s /= determinant;
            t /= determinant;
            return Square(apX - s * abX - t * acX, apY - s * abY - t * acY, apZ - s * abZ - t * acZ);
        }

        double bcX = acX - abX, bcY = acY - abY, bcZ = acZ - abZ;
        return Math.Min(
            Math.Min(Edge(apX, apY, apZ, abX, abY, abZ), Edge(apX, apY, apZ, acX, acY, acZ)),
            Edge(apX - abX, apY - abY, apZ - abZ, bcX, bcY, bcZ));
    }

    // Squared distance of p to the stretch from the origin to e.
    private static double Edge(double pX, double pY, double pZ, double eX, double eY, double eZ)
    {
        double length = eX * eX + eY * eY + eZ * eZ;
        double share = length > 0.0 ? Math.Clamp((pX * eX + pY * eY + pZ * eZ) / length, 0.0, 1.0) : 0.0;
        return Square(pX - share * eX, pY - share * eY, pZ - share * eZ);
    }

    private static double Square(double x, double y, double z) => x * x + y * y + z * z;
}
