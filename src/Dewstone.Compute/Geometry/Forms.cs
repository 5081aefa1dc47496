using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Distances and directions of the simple bodies, each about its own centre. Only + - * / and square roots.</summary>
internal static class Forms
{
    /// <summary>Distance to a box from q = |p| - half.</summary>
    /// <param name="qx">Excess along x, metres.</param>
    /// <param name="qy">Excess along y, metres.</param>
    /// <param name="qz">Excess along z, metres.</param>
    /// <returns>Metres, exact, negative inside.</returns>
    public static double BoxDistance(double qx, double qy, double qz)
    {
        double inner = Math.Max(qx, Math.Max(qy, qz));
        if (inner <= 0.0) { return inner; }
        double x = Math.Max(qx, 0.0), y = Math.Max(qy, 0.0), z = Math.Max(qz, 0.0);
        return Math.Sqrt(x * x + y * y + z * z);
    }

    /// <summary>Distance to a rectangle from q = |p| - half.</summary>
    /// <param name="qx">Excess along x, metres.</param>
    /// <param name="qy">Excess along y, metres.</param>
    /// <returns>Metres, exact, negative inside.</returns>
    public static double RectangleDistance(double qx, double qy)
    {
        double inner = Math.Max(qx, qy);
        if (inner <= 0.0) { return inner; }
        double x = Math.Max(qx, 0.0), y = Math.Max(qy, 0.0);
        return Math.Sqrt(x * x + y * y);
    }

    /// <summary>Outward direction at a point outside a core box; inside the core that of the nearest face.</summary>
    /// <param name="x">x from the centre, metres.</param>
    /// <param name="y">y from the centre, metres.</param>
    /// <param name="z">z from the centre, metres.</param>
    /// <param name="halfX">Half edge of the core along x, metres.</param>
    /// <param name="halfY">Along y.</param>
    /// <param name="halfZ">Along z.</param>
    /// <returns>Unit vector.</returns>
    public static Point3 BoxNormal(double x, double y, double z, double halfX, double halfY, double halfZ)
    {
        double qx = Math.Abs(x) - halfX, qy = Math.Abs(y) - halfY, qz = Math.Abs(z) - halfZ;
        double sx = x < 0.0 ? -1.0 : 1.0, sy = y < 0.0 ? -1.0 : 1.0, sz = z < 0.0 ? -1.0 : 1.0;
        if (Math.Max(qx, Math.Max(qy, qz)) <= 0.0)
        {
            return qx >= qy && qx >= qz ? new Point3(sx, 0.0, 0.0) : qy >= qz ? new Point3(0.0, sy, 0.0) : new Point3(0.0, 0.0, sz);
        }
        return Unit(new Point3(sx * Math.Max(qx, 0.0), sy * Math.Max(qy, 0.0), sz * Math.Max(qz, 0.0)));
    }

    /// <summary>Nearest point of an ellipsoid's surface, by Newton's method on the distance equation.</summary>
    /// <remarks>
    /// With half axes e and p in the first octant the nearest point is e^2 p / (t + e^2), where t is the root right of -min(e^2) of
    /// G(t) = sum (e p / (t + e^2))^2 - 1. G falls and is convex there, so Newton from the left climbs to the root. Source: Eberly 2013,
    /// Distance from a Point to an Ellipse, an Ellipsoid, or a Hyperellipsoid (from memory). A coordinate of 0 is nudged by 1e-12 of its
    /// axis: a picometre.
    /// </remarks>
    /// <param name="p">Point from the centre, metres.</param>
    /// <param name="half">Half axes, metres.</param>
    /// <returns>Nearest point from the centre, metres.</returns>
    public static Point3 NearestOnEllipsoid(Point3 p, Point3 half)
    {
        double px = Math.Max(Math.Abs(p.X), 1e-12 * half.X), py = Math.Max(Math.Abs(p.Y), 1e-12 * half.Y), pz = Math.Max(Math.Abs(p.Z), 1e-12 * half.Z);
        double ax = half.X * half.X, ay = half.Y * half.Y, az = half.Z * half.Z;
        // s = t + min(e^2), so that nothing cancels where the root lies close to the pole.
        double least = Math.Min(ax, Math.Min(ay, az)), overX = ax - least, overY = ay - least, overZ = az - least;
        double s = Math.Max(half.X * px - overX, Math.Max(half.Y * py - overY, half.Z * pz - overZ));
        for (int step = 0; step < 100; step++)
        {
            double rx = half.X * px / (s + overX), ry = half.Y * py / (s + overY), rz = half.Z * pz / (s + overZ);
            double g = rx * rx + ry * ry + rz * rz - 1.0;
            double slope = 2.0 * (rx * rx / (s + overX) + ry * ry / (s + overY) + rz * rz / (s + overZ));
            double next = s + g / slope;
            if (!(next > s)) { break; }
            s = next;
        }
        double nx = ax * px / (s + overX), ny = ay * py / (s + overY), nz = az * pz / (s + overZ);
        return new Point3(p.X < 0.0 ? -nx : nx, p.Y < 0.0 ? -ny : ny, p.Z < 0.0 ? -nz : nz);
    }

    /// <summary>Distance to an ellipsoid, exact to rounding, negative inside.</summary>
    /// <param name="p">Point from the centre, metres.</param>
    /// <param name="half">Half axes, metres.</param>
    /// <returns>Metres.</returns>
    public static double EllipsoidDistance(Point3 p, Point3 half)
    {
        double kx = p.X / half.X, ky = p.Y / half.Y, kz = p.Z / half.Z;
        double distance = (p - NearestOnEllipsoid(p, half)).Norm;
        return kx * kx + ky * ky + kz * kz < 1.0 ? -distance : distance;
    }

    /// <summary>Outward direction at the ellipsoid's point nearest to p.</summary>
    /// <param name="p">Point from the centre, metres.</param>
    /// <param name="half">Half axes, metres.</param>
    /// <returns>Unit vector.</returns>
    public static Point3 EllipsoidNormal(Point3 p, Point3 half)
    {
        Point3 foot = NearestOnEllipsoid(p, half);
        return Unit(new Point3(foot.X / (half.X * half.X), foot.Y / (half.Y * half.Y), foot.Z / (half.Z * half.Z)));
    }

    /// <summary>A vector made one long; up when it has no length.</summary>
    /// <param name="v">Vector.</param>
    /// <returns>Unit vector.</returns>
    public static Point3 Unit(Point3 v)
    {
        double norm = v.Norm;
        return norm > 0.0 ? v * (1.0 / norm) : new Point3(0.0, 0.0, 1.0);
    }
}
