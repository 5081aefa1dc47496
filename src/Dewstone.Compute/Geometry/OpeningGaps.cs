using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Distances between openings, and between openings and outer faces, within the outer box.</summary>
/// <remarks>
/// The parts of openings are convex, so going to and fro between the nearest points of two of them, kept in the box, ends at their least
/// distance (Cheney, Goldstein 1959, Proximity Maps for Convex Sets, for two sets; the box as a third makes it an estimate from above).
/// Fillets and relief are not heeded.
/// </remarks>
internal sealed class OpeningGaps
{
    /// <summary>What is nearer than this meets: a tenth of a millimetre.</summary>
    public const double Meeting = 1e-4;

    private const int Rounds = 200;
    private readonly ReefShape shape;

    /// <summary>The gaps of a shape.</summary>
    /// <param name="shape">The shape.</param>
    public OpeningGaps(ReefShape shape)
    {
        this.shape = shape;
        Faces = [];
        foreach (ShapeOpening opening in shape.Named)
        {
            (double, Point3)[] faces = new (double, Point3)[6];
            for (int face = 0; face < 6; face++) { faces[face] = ToFace(opening, face); }
            Faces.Add(faces);
        }
    }

    /// <summary>
    /// For each opening the gap to west, east, south, north, bottom and top, metres, and its middle; 0 when it reaches that face.
    /// </summary>
    public List<(double Gap, Point3 Middle)[]> Faces { get; }

    /// <summary>Whether an opening breaks a face.</summary>
    /// <param name="opening">Opening, from 0.</param>
    /// <returns>True when it does.</returns>
    public bool IsOpen(int opening) => Array.Exists(Faces[opening], face => face.Gap < Meeting);

    /// <summary>Whether a part of a table and the box overlap by more than a tenth of a millimetre.</summary>
    /// <param name="table">Table.</param>
    /// <param name="part">Part, from 0.</param>
    /// <param name="box">Outer box, metres.</param>
    /// <returns>False when they are apart or only touch.</returns>
    public static bool Overlaps(PartTable table, int part, Size3 box)
    {
        Point3 p = new(box.X / 2.0, box.Y / 2.0, box.Z / 2.0);
        for (int round = 0; round < Rounds; round++)
        {
            double distance = table.Distance(part, p.X, p.Y, p.Z);
            if (distance <= -Meeting) { return true; }
            // A little past the surface, so that a part that only touches the box is told from one that reaches in.
            p = Clamp(p - table.Normal(part, p.X, p.Y, p.Z, exact: true) * (distance + 1.5 * Meeting), box);
        }
        return false;
    }

    /// <summary>Least distance between two openings.</summary>
    /// <param name="first">First, from 0.</param>
    /// <param name="second">Second, from 0.</param>
    /// <returns>Metres, and the middle of the gap; 0 when they meet.</returns>
    public (double Gap, Point3 Middle) Between(int first, int second)
    {
        (double Gap, Point3 Middle) least = (double.PositiveInfinity, default);
        ShapeOpening a = shape.Named[first], b = shape.Named[second];
        for (int i = a.FirstPart; i < a.FirstPart + a.Parts; i++)
        {
            for (int j = b.FirstPart; j < b.FirstPart + b.Parts; j++)
            {
                int other = j;
                (double Gap, Point3 Middle) gap = Balls(i, j) ?? Gap(i, p => shape.Openings.Nearest(other, p));
                if (gap.Gap < least.Gap) { least = gap; }
            }
        }
        return least;
    }

    // Most pairs are balls of scatters, whose gap needs no search; both have their centres in the box or near it.
    private (double Gap, Point3 Middle)? Balls(int first, int second)
    {
        if (!shape.Openings.IsBall(first, out Point3 a, out double r) || !shape.Openings.IsBall(second, out Point3 b, out double s)) { return null; }
        double apart = (b - a).Norm, gap = apart - r - s;
        return gap <= 0.0 ? (0.0, a) : (gap, a + (b - a) * ((r + gap / 2.0) / apart));
    }

    private static Point3 Clamp(Point3 p, Size3 box) =>
        new(Math.Min(Math.Max(p.X, 0.0), box.X), Math.Min(Math.Max(p.Y, 0.0), box.Y), Math.Min(Math.Max(p.Z, 0.0), box.Z));

    private static Point3 OnFace(Point3 p, int face, Size3 box) => face switch
    {
        0 => p with { X = 0.0 },
        1 => p with { X = box.X },
        2 => p with { Y = 0.0 },
        3 => p with { Y = box.Y },
        4 => p with { Z = 0.0 },
        _ => p with { Z = box.Z },
    };

    private (double Gap, Point3 Middle) ToFace(ShapeOpening opening, int face)
    {
        (double Gap, Point3 Middle) least = (double.PositiveInfinity, default);
        for (int i = opening.FirstPart; i < opening.FirstPart + opening.Parts; i++)
        {
            (double Gap, Point3 Middle) gap = Gap(i, p => OnFace(p, face, shape.Box));
            if (gap.Gap < least.Gap) { least = gap; }
        }
        return least;
    }

    private (double Gap, Point3 Middle) Gap(int part, Func<Point3, Point3> nearestOther)
    {
        Size3 box = shape.Box;
        Point3 p = new(box.X / 2.0, box.Y / 2.0, box.Z / 2.0), there = p;
        for (int round = 0; round < Rounds; round++)
        {
            there = Clamp(nearestOther(p), box);
            Point3 here = Clamp(shape.Openings.Nearest(part, there), box);
            bool settled = (here - p).Norm < 1e-7;
            p = here;
            if (settled) { break; }
        }
        double gap = Math.Max(0.0, shape.Openings.Distance(part, there.X, there.Y, there.Z));
        return (gap, (p + there) * 0.5);
    }
}
