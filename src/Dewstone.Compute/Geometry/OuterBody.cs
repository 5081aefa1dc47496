using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>The rounded outer box with its relief: what openings are cut from.</summary>
/// <remarks>
/// Plain box: exact distance. With q = |p - centre| - (half - r) it is |max(q, 0)| + min(max(qx, qy, qz), 0) - r (common knowledge; exact
/// inside and out). Relief (frozen for version 1) adds amplitude x noise x weight to that distance, so a point deeper than the amplitude
/// always stays. The weight is 0 on faces that are not named and grows, cubic-faded, to 1 where the nearest named face is nearer than every
/// other face by one shortest wavelength.
/// </remarks>
internal sealed class OuterBody
{
    private readonly Point3 centre;
    private readonly double coreX;
    private readonly double coreY;
    private readonly double coreZ;
    private readonly double rounding;
    private readonly double turning;
    private readonly Size3 box;
    private readonly FaceSet faces;
    private readonly double fadeMetres;
    private readonly ReliefNoise? noise;

    /// <summary>The outer body of a unit.</summary>
    /// <param name="unit">The unit.</param>
    public OuterBody(ReefUnit unit)
    {
        box = unit.OuterBox;
        double smallest = Math.Min(box.X, Math.Min(box.Y, box.Z));
        rounding = Math.Min(unit.Rounding.Metres, smallest / 2.0);
        turning = Math.Min(Math.Max(rounding, unit.Blend.Metres), smallest / 2.0);
        centre = new Point3(box.X / 2.0, box.Y / 2.0, box.Z / 2.0);
        coreX = box.X / 2.0 - rounding;
        coreY = box.Y / 2.0 - rounding;
        coreZ = box.Z / 2.0 - rounding;
        if (unit.Relief is Relief relief && relief.Amplitude.Metres > 0.0 && relief.ShortestLength.Metres > 0.0 && relief.Faces != FaceSet.None)
        {
            noise = new ReliefNoise(relief, box, ReefShapeBuilder.ReliefFeature);
            faces = relief.Faces;
            fadeMetres = relief.ShortestLength.Metres;
            AmplitudeMetres = relief.Amplitude.Metres;
            bool everywhere = faces == (FaceSet.Sides | FaceSet.Top | FaceSet.Bottom);
            ReliefSlope = AmplitudeMetres * (noise.Slope + (everywhere ? 0.0 : 3.0 / fadeMetres));
        }
    }

    /// <summary>Largest depth the relief removes, metres; 0 without relief.</summary>
    public double AmplitudeMetres { get; }

    /// <summary>Bound of the slope of what the relief adds, 1.</summary>
    public double ReliefSlope { get; }

    /// <summary>Signed distance to the box without relief, metres, exact; negative inside.</summary>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <returns>Metres.</returns>
    public double Plain(double x, double y, double z)
    {
        double qx = Math.Abs(x - centre.X) - coreX, qy = Math.Abs(y - centre.Y) - coreY, qz = Math.Abs(z - centre.Z) - coreZ;
        return Forms.BoxDistance(qx, qy, qz) - rounding;
    }

    /// <summary>Signed distance with relief: the plain one plus 0 to the amplitude.</summary>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <returns>Metres.</returns>
    public double Relieved(double x, double y, double z) => Relieved(x, y, z, Plain(x, y, z));

    /// <summary>As the other, with the plain distance at hand.</summary>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <param name="plain">Plain distance at the point, metres.</param>
    /// <returns>Metres.</returns>
    public double Relieved(double x, double y, double z, double plain)
    {
        if (noise is null) { return plain; }
        double weight = Weight(x, y, z);
        return weight > 0.0 ? plain + AmplitudeMetres * (noise.Value(x, y, z) * weight) : plain;
    }

    /// <summary>
    /// Outward direction used for fillets: that of a box rounded by at least the blend radius, so that it turns no faster than the fillet.
    /// </summary>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <returns>Unit vector.</returns>
    public Point3 Normal(double x, double y, double z) =>
        Forms.BoxNormal(x - centre.X, y - centre.Y, z - centre.Z, box.X / 2.0 - turning, box.Y / 2.0 - turning, box.Z / 2.0 - turning);

    private double Weight(double x, double y, double z)
    {
        double named = double.PositiveInfinity, plain = double.PositiveInfinity;
        Sort(FaceSet.West, x, ref named, ref plain);
        Sort(FaceSet.East, box.X - x, ref named, ref plain);
        Sort(FaceSet.South, y, ref named, ref plain);
        Sort(FaceSet.North, box.Y - y, ref named, ref plain);
        Sort(FaceSet.Bottom, z, ref named, ref plain);
        Sort(FaceSet.Top, box.Z - z, ref named, ref plain);
        double t = (plain - named) / fadeMetres;
        return t <= 0.0 ? 0.0 : t >= 1.0 ? 1.0 : t * t * (3.0 - 2.0 * t);
    }

    private void Sort(FaceSet face, double depth, ref double named, ref double plain)
    {
        if (faces.HasFlag(face)) { named = Math.Min(named, depth); }
        else { plain = Math.Min(plain, depth); }
    }
}
