using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>The wanted solid of a reef unit as a signed distance. Made by <see cref="ReefShapeBuilder"/>; never changes.</summary>
/// <remarks>
/// solid = (outer body with relief, less all openings, edges filleted) or (keep zones and outer body with relief).
/// The parts (outer box, openings, keep zones) have exact distances. The value of the whole: its sign and zero are exact; where one surface
/// is near it is the exact distance to that surface; near a fillet of flat surfaces it is exact too, near a fillet of curved ones it bends
/// by at most
/// <see cref="Lipschitz"/>; under relief it is the distance plus the depth removed. In the void it is at least the greatest part's
/// distance, so a ball of that radius is free, and at most one blend radius more.
/// Computed with + - * / and square roots in one order only: the same bits on every machine.
/// </remarks>
public sealed class ReefShape
{
    private readonly Lazy<ShapeCubes> cubes;

    internal ReefShape(OuterBody body, PartTable openings, PartTable keep, double blendMetres, Size3 box, IReadOnlyList<ShapeOpening> named)
    {
        Body = body;
        Openings = openings;
        Keep = keep;
        BlendMetres = blendMetres;
        Box = box;
        Named = named;
        cubes = new Lazy<ShapeCubes>(() => new ShapeCubes(this));
    }

    /// <summary>Outer box, metres; the solid lies inside it.</summary>
    public Size3 Box { get; }

    /// <summary>Radius of the fillets, metres.</summary>
    public double BlendMetres { get; }

    /// <summary>Tunnels, then cavities, in the order of the file; scattered hollows one by one.</summary>
    public IReadOnlyList<ShapeOpening> Named { get; }

    /// <summary>
    /// Bound of the slope of <see cref="SignedDistance"/> in the solid, 1: 1 for plain surfaces, plus the slope of the relief, plus 2 with
    /// a blend radius (derived for two surfaces that meet; three that meet in a corner are held to it by test).
    /// </summary>
    public double Lipschitz => 1.0 + Body.ReliefSlope + (BlendMetres > 0.0 ? 2.0 : 0.0);

    internal OuterBody Body { get; }

    internal PartTable Openings { get; }

    internal PartTable Keep { get; }

    /// <summary>Signed distance to the wanted solid; see the remarks of the type for what is exact.</summary>
    /// <param name="point">Metres, unit frame.</param>
    /// <returns>Metres, negative in the solid.</returns>
    public double SignedDistance(Point3 point) => cubes.Value.Distance(point.X, point.Y, point.Z);

    /// <summary>Distance to one opening as described: no fillet, no relief, keep zones not heeded.</summary>
    /// <param name="opening">Index in <see cref="Named"/>.</param>
    /// <param name="point">Metres, unit frame.</param>
    /// <returns>Metres, negative inside the opening; positive infinity when it has no part.</returns>
    public double OpeningDistance(int opening, Point3 point)
    {
        ShapeOpening named = Named[opening];
        double least = double.PositiveInfinity;
        for (int part = named.FirstPart; part < named.FirstPart + named.Parts; part++)
        {
            least = Math.Min(least, Openings.Distance(part, point.X, point.Y, point.Z));
        }
        return least;
    }

    /// <summary>
    /// Signed distance from the parts that matter near a point; the caller has made sure that the others are out of reach.
    /// </summary>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <param name="openings">Parts of openings in reach, in their order.</param>
    /// <param name="keep">Keep zones in reach.</param>
    /// <returns>Metres, negative in the solid.</returns>
    internal double Value(double x, double y, double z, ReadOnlySpan<int> openings, ReadOnlySpan<int> keep)
    {
        double value = Cut(x, y, z, openings);
        if (value <= 0.0 || keep.IsEmpty) { return value; }
        double body = Body.Relieved(x, y, z);
        foreach (int zone in keep) { value = Math.Min(value, Math.Max(body, Keep.Distance(zone, x, y, z))); }
        return value;
    }

    private double Cut(double x, double y, double z, ReadOnlySpan<int> openings)
    {
        double far = -Fillet.Reach * BlendMetres, greatest = double.NegativeInfinity, joined = double.NegativeInfinity;
        Point3 normal = default;
        int first = -1;
        bool turned = false;
        foreach (int part in openings)
        {
            double a = -Openings.Distance(part, x, y, z);
            if (BlendMetres <= 0.0 || a <= far)
            {
                greatest = Math.Max(greatest, a);
            }
            else if (first < 0)
            {
                first = part;
                joined = a;
            }
            else
            {
                if (!turned) { normal = Inward(first, x, y, z); }
                turned = true;
                joined = Fillet.Join(joined, ref normal, a, Inward(part, x, y, z), BlendMetres);
            }
        }
        greatest = Math.Max(greatest, joined);
        // The noise of the relief is dear: where the body, relief at its deepest, is out of reach, nobody asks for it.
        double plain = Body.Plain(x, y, z), deepest = plain + Body.AmplitudeMetres;
        if (deepest <= far && deepest <= greatest) { return greatest; }
        double body = Body.Relieved(x, y, z, plain);
        if (first < 0 || body <= far) { return Math.Max(greatest, body); }
        if (!turned) { normal = Inward(first, x, y, z); }
        return Math.Max(greatest, Fillet.Join(joined, ref normal, body, Body.Normal(x, y, z), BlendMetres));
    }

    private Point3 Inward(int part, double x, double y, double z) => Openings.Normal(part, x, y, z) * -1.0;
}
