using Dewstone.Model.Description;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Turns tunnels into parts: an axis tunnel is one endless part, a path tunnel one part a stretch.</summary>
internal static class TunnelParts
{
    // An end that lies this far inside the box still counts as leaving it: a micrometre, the grain of lengths in files.
    internal const double EndTolerance = 1e-6;

    /// <summary>Adds a tunnel.</summary>
    /// <param name="table">Where to.</param>
    /// <param name="tunnel">The tunnel.</param>
    /// <param name="box">Outer box, metres.</param>
    /// <param name="blend">Blend radius, metres.</param>
    public static void Add(PartTable table, Tunnel tunnel, Size3 box, double blend)
    {
        if (tunnel is AxisTunnel axis) { AddAxis(table, axis, blend); }
        else if (tunnel is PathTunnel path) { AddPath(table, path, box, blend); }
        else { throw new ArgumentException($"A tunnel of type {tunnel.GetType().Name} has no distance.", nameof(tunnel)); }
    }

    /// <summary>Whether a point lies outside the box or on its faces.</summary>
    /// <param name="p">Metres, unit frame.</param>
    /// <param name="box">Outer box, metres.</param>
    /// <returns>True when it has left the box.</returns>
    public static bool Leaves(Point3 p, Size3 box) =>
        p.X <= EndTolerance || p.Y <= EndTolerance || p.Z <= EndTolerance
        || p.X >= box.X - EndTolerance || p.Y >= box.Y - EndTolerance || p.Z >= box.Z - EndTolerance;

    /// <summary>Corners of a path without those that repeat the one before.</summary>
    /// <param name="path">Corners, metres.</param>
    /// <returns>Corners at least a micrometre apart.</returns>
    public static List<Point3> Corners(IReadOnlyList<Point3> path)
    {
        List<Point3> corners = [];
        foreach (Point3 p in path)
        {
            if (corners.Count == 0 || (p - corners[^1]).Norm > EndTolerance) { corners.Add(p); }
        }
        return corners;
    }

    private static void AddAxis(PartTable table, AxisTunnel tunnel, double blend)
    {
        Point3 x = new(1.0, 0.0, 0.0), y = new(0.0, 1.0, 0.0), z = new(0.0, 0.0, 1.0);
        (Point3 along, Point3 across, Point3 up) = tunnel.Along switch { Axis.X => (x, y, z), Axis.Y => (y, x, z), _ => (z, x, y) };
        switch (tunnel.Section)
        {
            case RoundSection round:
                table.AddBar(tunnel.At, along, double.NegativeInfinity, double.PositiveInfinity, round.Diameter.Metres / 2.0);
                break;
            case RectangularSection r:
                table.AddPrism(
                    tunnel.At, across, up, double.PositiveInfinity, r.Width.Metres, r.Height.Metres, r.Rounding.Metres, blend);
                break;
            default:
                throw new ArgumentException($"A section of type {tunnel.Section.GetType().Name} has no distance.", nameof(tunnel));
        }
    }

    private static void AddPath(PartTable table, PathTunnel tunnel, Size3 box, double blend)
    {
        List<Point3> corners = Corners(tunnel.Path);
        int stretches = corners.Count - 1;
        if (stretches < 1) { return; }
        Point3[] along = new Point3[stretches];
        for (int i = 0; i < stretches; i++) { along[i] = Forms.Unit(corners[i + 1] - corners[i]); }
        Point3[] across = Widths(along);
        double reach = 2.0 * (Reach(tunnel.Section) + blend);
        for (int i = 0; i < stretches; i++)
        {
            double length = (corners[i + 1] - corners[i]).Norm;
            double before = i > 0 ? 0.0 : Leaves(corners[0], box) ? reach : 0.0;
            double after = i + 1 < stretches ? 0.0 : Leaves(corners[^1], box) ? reach : 0.0;
            if (tunnel.Section is RoundSection round)
            {
                table.AddBar(corners[i], along[i], -before, length + after, round.Diameter.Metres / 2.0);
            }
            else if (tunnel.Section is RectangularSection r)
            {
                Point3 up = Point3.Cross(along[i], across[i]);
                if (i > 0) { before = Mitre(along[i - 1], along[i], across[i], up, r); }
                if (i + 1 < stretches) { after = Mitre(along[i], along[i + 1], across[i], up, r); }
                Point3 middle = corners[i] + along[i] * ((length + after - before) / 2.0);
                table.AddPrism(
                    middle, across[i], up, (length + before + after) / 2.0, r.Width.Metres, r.Height.Metres, r.Rounding.Metres, blend);
            }
        }
    }

    // How far a stretch must run past a bend so that its outer side meets the next one's: half size in the bend's plane x tan(half the
    // turn).
    private static double Mitre(Point3 from, Point3 to, Point3 across, Point3 up, RectangularSection section)
    {
        double cosine = Math.Max(Point3.Dot(from, to), -0.9);
        Point3 bend = Forms.Unit(to - from);
        double half = Math.Abs(Point3.Dot(bend, across)) * section.Width.Metres / 2.0 + Math.Abs(Point3.Dot(bend, up)) * section.Height.Metres / 2.0;
        Point3 crossing = Forms.Unit(bend - (from * Point3.Dot(bend, from)));
        half = Math.Max(half, Math.Abs(Point3.Dot(crossing, across)) * section.Width.Metres / 2.0 + Math.Abs(Point3.Dot(crossing, up)) * section.Height.Metres / 2.0);
        return half * Math.Sqrt((1.0 - cosine) / (1.0 + cosine));
    }

    private static double Reach(Section section) => section switch
    {
        RoundSection round => round.Diameter.Metres / 2.0,
        RectangularSection r => Math.Max(r.Width.Metres, r.Height.Metres) / 2.0,
        _ => 0.0,
    };

    private static Point3[] Widths(Point3[] along)
    {
        Point3?[] found = new Point3?[along.Length];
        for (int i = 0; i < along.Length; i++)
        {
            // Level and across the way; an upright stretch (within a thousandth) has none of its own.
            double level = Math.Sqrt(along[i].X * along[i].X + along[i].Y * along[i].Y);
            if (level > 1e-3) { found[i] = new Point3(-along[i].Y / level, along[i].X / level, 0.0); }
            else if (i > 0) { found[i] = found[i - 1]; }
        }
        Point3 later = new(1.0, 0.0, 0.0);
        for (int i = along.Length - 1; i >= 0; i--)
        {
            if (found[i] is Point3 own) { later = own; }
            else { found[i] = later; }
        }
        // A borrowed width is made square to an almost upright stretch.
        return [.. found.Select((width, i) => Forms.Unit(width!.Value - along[i] * Point3.Dot(width.Value, along[i])))];
    }
}
