using Dewstone.Compute.Numerics;
using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Scatters hollows over faces or inside by throwing darts.</summary>
/// <remarks>
/// Frozen for version 1. A throw takes five draws of feature 1 + index of the cavity: throw t takes draws 5 t to 5 t + 4, counted through
/// the whole scatter. Draw 0: the face, by area of the named faces, in the order west, east, south, north, bottom, top. Draws 1 and 2: the
/// place on the face along its two axes in the order x, y, z (inside: draws 0, 1, 2 are x, y, z). Draw 3: the diameter, evenly between its
/// limits. Draw 4: depth of the centre below the face, radius x (0.2 + 0.3 draw), so that the mouth is 0.87 to 0.98 of the diameter and the
/// lip no sharper than 60 degrees. Places run over the box or the band, whichever is narrower; a throw is refused when the centre lies
/// outside a band, or the ball keeps less than 3/4 of the gap to a face it does not open to, less than the gap to a tunnel, a formed cavity
/// or a hollow placed before, or touches a keep zone. Inside, the ball keeps the gap to the outer body, relief at its deepest. A hollow has
/// 10,000 throws; the scatter ends at the first that finds no room.
/// </remarks>
internal sealed class ScatterPlacer(ReefUnit unit, int cavity, ScatteredCavities scatter, OuterBody body, PartTable openings, PartTable keep)
{
    /// <summary>Throws for each hollow.</summary>
    public const int ThrowsAHollow = 10_000;

    private const int DrawsAThrow = 5;

    // A whole gap to the other faces would leave the habitat block of the examples room for its niches with every other seed only.
    private const double FaceShare = 0.75;

    private static readonly FaceSet[] Order = [FaceSet.West, FaceSet.East, FaceSet.South, FaceSet.North, FaceSet.Bottom, FaceSet.Top];

    private readonly SeededDraws draws = new(scatter.Seed, cavity + 1);
    private readonly double gap = scatter.Gap.Metres;
    private readonly double[] edge = [unit.OuterBox.X, unit.OuterBox.Y, unit.OuterBox.Z];
    private readonly double[] from = [Low(scatter.BandX), Low(scatter.BandY), Low(scatter.BandZ)];
    private readonly double[] to =
        [High(scatter.BandX, unit.OuterBox.X), High(scatter.BandY, unit.OuterBox.Y), High(scatter.BandZ, unit.OuterBox.Z)];

    /// <summary>Places the hollows.</summary>
    /// <returns>As many as found room, at most the count.</returns>
    public IReadOnlyList<ScatteredHollow> Place()
    {
        List<ScatteredHollow> placed = [];
        int thrown = 0;
        while (placed.Count < scatter.Count)
        {
            ScatteredHollow? found = null;
            for (int tries = 0; tries < ThrowsAHollow && found is null; tries++, thrown++)
            {
                ScatteredHollow? hollow = Throw(thrown);
                if (hollow is not null && Fits(hollow, placed)) { found = hollow; }
            }
            if (found is null) { break; }
            placed.Add(found);
        }
        return placed;
    }

    private static double Low(Band? band) => band is null ? 0.0 : Math.Max(0.0, band.From.Metres);

    private static double High(Band? band, double edge) => band is null ? edge : Math.Min(edge, band.To.Metres);

    private ScatteredHollow? Throw(int number)
    {
        ulong draw = (ulong)number * DrawsAThrow;
        double diameter = Between(scatter.LeastDiameter.Metres, scatter.GreatestDiameter.Metres, draws.Fraction(draw + 3));
        double[] centre = new double[3];
        FaceSet face = FaceSet.None;
        if (scatter.Inside)
        {
            for (int axis = 0; axis < 3; axis++) { centre[axis] = Between(from[axis], to[axis], draws.Fraction(draw + (ulong)axis)); }
        }
        else
        {
            int chosen = Face(draws.Fraction(draw));
            if (chosen < 0) { return null; }
            face = Order[chosen];
            int normal = chosen / 2, taken = 1;
            for (int axis = 0; axis < 3; axis++)
            {
                if (axis != normal) { centre[axis] = Between(from[axis], to[axis], draws.Fraction(draw + (ulong)taken++)); }
            }
            double depth = diameter / 2.0 * (0.2 + 0.3 * draws.Fraction(draw + 4));
            centre[normal] = (chosen & 1) == 0 ? depth : edge[normal] - depth;
        }
        for (int axis = 0; axis < 3; axis++)
        {
            if (centre[axis] < from[axis] || centre[axis] > to[axis]) { return null; }
        }
        return new ScatteredHollow(cavity, new Point3(centre[0], centre[1], centre[2]), diameter, face, number);
    }

    private static double Between(double low, double high, double share) => low + (high - low) * share;

    // The areas are those of the whole faces, whatever the bands, so that a band does not move the hollows of other faces.
    private int Face(double share)
    {
        double total = 0.0;
        for (int i = 0; i < Order.Length; i++) { total += Area(i); }
        double at = share * total;
        int last = -1;
        for (int i = 0; i < Order.Length; i++)
        {
            double area = Area(i);
            if (area <= 0.0) { continue; }
            last = i;
            if (at < area) { return i; }
            at -= area;
        }
        return last;
    }

    private double Area(int face) => scatter.Faces.HasFlag(Order[face]) ? edge[0] * edge[1] * edge[2] / edge[face / 2] : 0.0;

    private bool Fits(ScatteredHollow hollow, List<ScatteredHollow> placed)
    {
        Point3 c = hollow.Centre;
        double radius = hollow.DiameterMetres / 2.0;
        if (scatter.Inside)
        {
            if (body.Plain(c.X, c.Y, c.Z) + body.AmplitudeMetres > -(radius + gap)) { return false; }
        }
        else if (!ClearOfOtherFaces(hollow, radius + FaceShare * gap))
        {
            return false;
        }
        foreach (ScatteredHollow other in placed)
        {
            if ((other.Centre - c).Norm < radius + other.DiameterMetres / 2.0 + gap) { return false; }
        }
        for (int part = 0; part < openings.Count; part++)
        {
            if (openings.Distance(part, c.X, c.Y, c.Z) < radius + gap) { return false; }
        }
        for (int zone = 0; zone < keep.Count; zone++)
        {
            if (keep.Distance(zone, c.X, c.Y, c.Z) < radius) { return false; }
        }
        return true;
    }

    private bool ClearOfOtherFaces(ScatteredHollow hollow, double least)
    {
        Point3 c = hollow.Centre;
        ReadOnlySpan<double> depth = [c.X, edge[0] - c.X, c.Y, edge[1] - c.Y, c.Z, edge[2] - c.Z];
        for (int i = 0; i < Order.Length; i++)
        {
            if (Order[i] != hollow.Face && depth[i] < least) { return false; }
        }
        return true;
    }
}
