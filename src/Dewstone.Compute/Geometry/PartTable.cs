using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>
/// Simple bodies as flat arrays, so that looking one up costs a switch and no virtual call. Distances are exact, metres, unit frame,
/// negative inside.
/// </summary>
internal sealed class PartTable
{
    private const int Stride = 17;
    private readonly List<PartKind> kinds = [];
    private readonly List<double> values = [];
    private PartKind[] kind = [];
    private double[] data = [];

    /// <summary>Number of parts.</summary>
    public int Count => kinds.Count;

    /// <summary>Adds a ball.</summary>
    /// <param name="centre">Centre, metres.</param>
    /// <param name="radius">Radius, metres.</param>
    public void AddBall(Point3 centre, double radius) => Add(PartKind.Ball, centre.X, centre.Y, centre.Z, radius);

    /// <summary>Adds an ellipsoid with its axes along x, y, z.</summary>
    /// <param name="centre">Centre, metres.</param>
    /// <param name="size">Full axes, metres.</param>
    public void AddEllipsoid(Point3 centre, Size3 size) =>
        Add(PartKind.Ellipsoid, centre.X, centre.Y, centre.Z, size.X / 2.0, size.Y / 2.0, size.Z / 2.0);

    /// <summary>Adds an upright block.</summary>
    /// <param name="centre">Centre, metres.</param>
    /// <param name="size">Full edges, metres.</param>
    /// <param name="rounding">Radius of its edges, metres; cut to half the smallest edge.</param>
    /// <param name="blend">Radius its directions turn by at least, metres.</param>
    public void AddBlock(Point3 centre, Size3 size, double rounding, double blend)
    {
        double most = Math.Min(size.X, Math.Min(size.Y, size.Z)) / 2.0;
        double r = Math.Min(rounding, most), turning = Math.Min(Math.Max(r, blend), most);
        Add(PartKind.Block, centre.X, centre.Y, centre.Z, size.X / 2.0, size.Y / 2.0, size.Z / 2.0, r, turning);
    }

    /// <summary>Adds a round bar with ball ends; infinite ends make it a cylinder.</summary>
    /// <param name="point">A point of its centre line, metres.</param>
    /// <param name="direction">Unit vector along it.</param>
    /// <param name="from">Where it begins along the direction, metres from the point; may be minus infinity.</param>
    /// <param name="to">Where it ends; may be infinity.</param>
    /// <param name="radius">Radius, metres.</param>
    public void AddBar(Point3 point, Point3 direction, double from, double to, double radius) =>
        Add(PartKind.Bar, point.X, point.Y, point.Z, direction.X, direction.Y, direction.Z, from, to, radius);

    /// <summary>Adds a straight piece of rectangular section.</summary>
    /// <param name="middle">Middle of its centre line, metres.</param>
    /// <param name="across">Unit vector along the width.</param>
    /// <param name="up">Unit vector along the height.</param>
    /// <param name="halfLength">Half its length, metres; may be infinity.</param>
    /// <param name="width">Width, metres.</param>
    /// <param name="height">Height, metres.</param>
    /// <param name="rounding">Radius of the section's corners, metres; cut to half the smaller side.</param>
    /// <param name="blend">Radius its directions turn by at least, metres.</param>
    public void AddPrism(
        Point3 middle, Point3 across, Point3 up, double halfLength, double width, double height, double rounding, double blend)
    {
        double most = Math.Min(width, height) / 2.0;
        double r = Math.Min(rounding, most), turning = Math.Min(Math.Max(r, blend), most);
        Point3 along = Point3.Cross(across, up);
        Add(
            PartKind.Prism, middle.X, middle.Y, middle.Z, across.X, across.Y, across.Z, up.X, up.Y, up.Z,
            along.X, along.Y, along.Z, halfLength, width / 2.0, height / 2.0, r, turning);
    }

    /// <summary>Ends the adding; must be called before distances are asked for, and again after more parts were added.</summary>
    public void Seal()
    {
        kind = [.. kinds];
        data = [.. values];
    }

    /// <summary>Signed distance to a part.</summary>
    /// <param name="part">Part, from 0.</param>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <returns>Metres, exact, negative inside the part.</returns>
    public double Distance(int part, double x, double y, double z)
    {
        ReadOnlySpan<double> d = data.AsSpan(part * Stride, Stride);
        x -= d[0];
        y -= d[1];
        z -= d[2];
        switch (kind[part])
        {
            case PartKind.Ball:
                return Math.Sqrt(x * x + y * y + z * z) - d[3];
            case PartKind.Ellipsoid:
                return Forms.EllipsoidDistance(new Point3(x, y, z), new Point3(d[3], d[4], d[5]));
            case PartKind.Block:
                return Forms.BoxDistance(Math.Abs(x) - (d[3] - d[6]), Math.Abs(y) - (d[4] - d[6]), Math.Abs(z) - (d[5] - d[6])) - d[6];
            case PartKind.Bar:
                double t = Math.Min(Math.Max(x * d[3] + y * d[4] + z * d[5], d[6]), d[7]);
                x -= t * d[3];
                y -= t * d[4];
                z -= t * d[5];
                return Math.Sqrt(x * x + y * y + z * z) - d[8];
            default:
                double across = Math.Abs(x * d[3] + y * d[4] + z * d[5]), up = Math.Abs(x * d[6] + y * d[7] + z * d[8]);
                double section = Forms.RectangleDistance(across - (d[13] - d[15]), up - (d[14] - d[15])) - d[15];
                if (double.IsPositiveInfinity(d[12])) { return section; }
                return Forms.RectangleDistance(section, Math.Abs(x * d[9] + y * d[10] + z * d[11]) - d[12]);
        }
    }

    /// <summary>Whether a part is a ball, and which.</summary>
    /// <param name="part">Part, from 0.</param>
    /// <param name="centre">Its centre, metres.</param>
    /// <param name="radius">Its radius, metres.</param>
    /// <returns>True for a ball.</returns>
    public bool IsBall(int part, out Point3 centre, out double radius)
    {
        ReadOnlySpan<double> d = data.AsSpan(part * Stride, Stride);
        centre = new Point3(d[0], d[1], d[2]);
        radius = d[3];
        return kind[part] == PartKind.Ball;
    }

    /// <summary>Nearest point of a part's surface and inside, by its exact distance and direction.</summary>
    /// <param name="part">Part, from 0.</param>
    /// <param name="p">Metres, unit frame.</param>
    /// <returns>The point itself when it lies inside.</returns>
    public Point3 Nearest(int part, Point3 p)
    {
        double distance = Distance(part, p.X, p.Y, p.Z);
        return distance <= 0.0 ? p : p - Normal(part, p.X, p.Y, p.Z, exact: true) * distance;
    }

    /// <summary>Outward direction of a part for fillets: at sharp edges it turns no faster than over the blend radius.</summary>
    /// <param name="part">Part, from 0.</param>
    /// <param name="x">x, metres, unit frame.</param>
    /// <param name="y">y, metres.</param>
    /// <param name="z">z, metres.</param>
    /// <param name="exact">The exact direction instead, which jumps where edges are sharp.</param>
    /// <returns>Unit vector away from the part.</returns>
    public Point3 Normal(int part, double x, double y, double z, bool exact = false)
    {
        ReadOnlySpan<double> d = data.AsSpan(part * Stride, Stride);
        x -= d[0];
        y -= d[1];
        z -= d[2];
        switch (kind[part])
        {
            case PartKind.Ball:
                return Forms.Unit(new Point3(x, y, z));
            case PartKind.Ellipsoid:
                return Forms.EllipsoidNormal(new Point3(x, y, z), new Point3(d[3], d[4], d[5]));
            case PartKind.Block:
                double edge = exact ? d[6] : d[7];
                return Forms.BoxNormal(x, y, z, d[3] - edge, d[4] - edge, d[5] - edge);
            case PartKind.Bar:
                double t = Math.Min(Math.Max(x * d[3] + y * d[4] + z * d[5], d[6]), d[7]);
                return Forms.Unit(new Point3(x - t * d[3], y - t * d[4], z - t * d[5]));
            default:
                double across = x * d[3] + y * d[4] + z * d[5], up = x * d[6] + y * d[7] + z * d[8], along = x * d[9] + y * d[10] + z * d[11];
                double length = double.IsPositiveInfinity(d[12]) ? double.MaxValue : d[12];
                double corner = exact ? d[15] : d[16];
                Point3 local = Forms.BoxNormal(across, up, along, d[13] - corner, d[14] - corner, length);
                return new Point3(d[3], d[4], d[5]) * local.X + new Point3(d[6], d[7], d[8]) * local.Y + new Point3(d[9], d[10], d[11]) * local.Z;
        }
    }

    private void Add(PartKind part, params ReadOnlySpan<double> numbers)
    {
        kinds.Add(part);
        for (int i = 0; i < Stride; i++) { values.Add(i < numbers.Length ? numbers[i] : 0.0); }
    }
}
