using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>The circular fillet: how two surfaces of the solid are joined where they meet in an edge.</summary>
/// <remarks>
/// Each surface bounds the solid by a distance a (negative in the solid) with outward direction n. Without a fillet the solid is max(a, b).
/// With radius r, both planes are set back by r and the distance to the edge of the set-back wedge, less r, is taken where that edge is the
/// nearest: with u = a + r, v = b + r, c = n_a . n_b it is sqrt((u^2 + v^2 - 2 u v c) / (1 - c^2)) - r as long as u > c v and v > c u, else
/// max(a, b). For planes this is the exact distance to an edge rounded by an arc of radius r, at any angle; parallel surfaces (c = 1), such
/// as the floors of two tunnels at one height, are left alone. At 90 degrees it takes away (1 - pi/4) r^2 per length. Derived here.
/// Limits: a curved surface counts as its tangent plane, which puts the surface off the true arc by about r^2 / (2 (R + r)) at most where R
/// is its radius (2 mm of 25 mm at the mouth of a 140 mm ball). c is taken as at least -0.5. A lip sharper than 60 degrees is cut back a
/// little less than the arc would, and a wall between two openings that do not meet stays as long as it is thicker than r (an arc through
/// both sides would eat walls under 2 r).
/// </remarks>
internal static class Fillet
{
    /// <summary>A surface farther inside the solid than this many radii takes no part in a fillet.</summary>
    public const double Reach = 2.0;

    private const double LeastCosine = -0.5;

    /// <summary>Joins a second surface to a first.</summary>
    /// <param name="a">Distance to the first, metres, negative in the solid.</param>
    /// <param name="normal">Its outward direction; on return that of the joined surface.</param>
    /// <param name="b">Distance to the second, metres.</param>
    /// <param name="second">Its outward direction.</param>
    /// <param name="radius">Radius of the fillet, metres, above 0.</param>
    /// <returns>Distance to the joined surface, metres, at least max(a, b).</returns>
    public static double Join(double a, ref Point3 normal, double b, Point3 second, double radius)
    {
        double greatest = Math.Max(a, b);
        double u = a + radius, v = b + radius;
        double c = Math.Max(Point3.Dot(normal, second), LeastCosine);
        double alongFirst = u - c * v, alongSecond = v - c * u, sine2 = 1.0 - c * c;
        if (greatest >= radius || alongFirst <= 0.0 || alongSecond <= 0.0 || sine2 < 1e-9)
        {
            if (b > a) { normal = second; }
            return greatest;
        }
        double extra = Math.Max(Math.Sqrt((u * alongFirst + v * alongSecond) / sine2) - Math.Max(u, v), 0.0);
        // In the void the fillet has nothing to say; it fades out so that deep inside an opening the value is the plain distance.
        if (greatest > 0.0) { extra *= 1.0 - greatest / radius; }
        normal = Forms.Unit(normal * alongFirst + second * alongSecond);
        return greatest + extra;
    }
}
