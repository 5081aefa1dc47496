using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Numerics;

/// <summary>Sum of squared distances to planes, each times an area: p' A p + 2 b' p + c.</summary>
internal struct PlaneQuadric
{
    // Weighs the distance to the edge's middle, squared, against those to the planes: small, but it decides where the planes do not.
    private const double MiddleShare = 1e-3;

    // Weighs the edge's length, squared: a hundredth of it counts as a distance does, so that where all is flat the short edges go first.
    private const double LengthShare = 1e-4;

    private double xx, xy, xz, yy, yz, zz, bx, by, bz, c, area;

    /// <summary>The plane of a triangle.</summary>
    /// <param name="p">First corner.</param>
    /// <param name="q">Second corner.</param>
    /// <param name="r">Third corner.</param>
    /// <returns>The distances to it times the triangle's area; nothing for a triangle without area.</returns>
    public static PlaneQuadric Of(Point3 p, Point3 q, Point3 r)
    {
        Point3 n = Point3.Cross(q - p, r - p);
        double length = n.Norm;
        if (length <= 0.0)
        {
            return default;
        }

        double w = 0.5 * length;
        n *= 1.0 / length;
        double d = -Point3.Dot(n, p);
        return new PlaneQuadric
        {
            xx = w * n.X * n.X,
            xy = w * n.X * n.Y,
            xz = w * n.X * n.Z,
            yy = w * n.Y * n.Y,
            yz = w * n.Y * n.Z,
            zz = w * n.Z * n.Z,
            bx = w * n.X * d,
            by = w * n.Y * d,
            bz = w * n.Z * d,
            c = w * d * d,
            area = w,
        };
    }

    /// <summary>Adds more planes.</summary>
    /// <param name="other">The planes.</param>
    public void Add(in PlaneQuadric other)
    {
        xx += other.xx;
        xy += other.xy;
        xz += other.xz;
        yy += other.yy;
        yz += other.yz;
        zz += other.zz;
        bx += other.bx;
        by += other.by;
        bz += other.bz;
        c += other.c;
        area += other.area;
    }

    /// <summary>The point to which an edge is best drawn together.</summary>
    /// <param name="planes">Planes of both ends.</param>
    /// <param name="a">One end.</param>
    /// <param name="b">The other.</param>
    /// <param name="cost">Mean squared distance to the planes, with something for the edge's length; 0 or more.</param>
    /// <returns>The point.</returns>
    public static Point3 Best(in PlaneQuadric planes, Point3 a, Point3 b, out double cost)
    {
        // (A + m I) p = m middle - b by cofactors; m > 0 makes it solvable.
        Point3 middle = (a + b) * 0.5, edge = b - a;
        double m = MiddleShare * planes.area;
        if (m <= 0.0)
        {
            cost = 0.0;
            return middle;
        }

        double sxx = planes.xx + m, syy = planes.yy + m, szz = planes.zz + m, sxy = planes.xy, sxz = planes.xz, syz = planes.yz;
        double rx = m * middle.X - planes.bx, ry = m * middle.Y - planes.by, rz = m * middle.Z - planes.bz;
        double cxx = syy * szz - syz * syz, cxy = sxz * syz - sxy * szz, cxz = sxy * syz - sxz * syy;
        double cyy = sxx * szz - sxz * sxz, cyz = sxy * sxz - sxx * syz, czz = sxx * syy - sxy * sxy;
        double scale = 1.0 / (sxx * cxx + sxy * cxy + sxz * cxz);
        Point3 best = new(scale * (cxx * rx + cxy * ry + cxz * rz), scale * (cxy * rx + cyy * ry + cyz * rz), scale * (cxz * rx + cyz * ry + czz * rz));
        cost = Math.Max(0.0, planes.At(best) / planes.area) + LengthShare * Point3.Dot(edge, edge);
        return best;
    }

    private readonly double At(Point3 p) =>
        p.X * (xx * p.X + 2.0 * (xy * p.Y + xz * p.Z + bx)) + p.Y * (yy * p.Y + 2.0 * (yz * p.Z + by)) + p.Z * (zz * p.Z + 2.0 * bz) + c;
}
