using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Quantities;

namespace Dewstone.Compute.Geometry;

/// <summary>Finds features that lie where they do nothing or where they must not.</summary>
internal static class FeaturePlaceCheck
{
    /// <summary>Checks the places.</summary>
    /// <param name="unit">The description.</param>
    /// <param name="shape">The shape.</param>
    /// <param name="gaps">Its gaps.</param>
    /// <param name="findings">Where findings go.</param>
    public static void Check(ReefUnit unit, ReefShape shape, OpeningGaps gaps, DiagnosticBag findings)
    {
        for (int i = 0; i < unit.Tunnels.Count; i++)
        {
            if (unit.Tunnels[i] is PathTunnel path) { Path(path, i, unit.OuterBox, findings); }
        }
        bool[] open = Open(shape, gaps);
        for (int i = 0; i < shape.Named.Count; i++) { Opening(unit, shape, i, open[i], findings); }
        for (int i = 0; i < unit.Keep.Count; i++) { Keep(unit, shape, i, findings); }
    }

    private static void Path(PathTunnel tunnel, int index, Size3 box, DiagnosticBag findings)
    {
        KeyPath key = UnitKeys.Tunnel(index).Key("path");
        List<Point3> corners = TunnelParts.Corners(tunnel.Path);
        if (corners.Count < 2)
        {
            findings.Add(ShapeFindings.PathFoldsBack.At(
                $"the path of the tunnel \"{tunnel.Name}\" has no length", "give two or more different corners", key));
            return;
        }
        for (int i = 1; i + 1 < corners.Count; i++)
        {
            Point3 before = Forms.Unit(corners[i] - corners[i - 1]), after = Forms.Unit(corners[i + 1] - corners[i]);
            if (Point3.Dot(before, after) >= -0.5 - 1e-9) { continue; }
            findings.Add(ShapeFindings.PathFoldsBack.At(
                $"the path of the tunnel \"{tunnel.Name}\" turns by more than 120 degrees", "spread the bend over two corners or more", key)
                with
            { Where = corners[i] });
        }
        End(tunnel, corners[0], key.Item(0), box, findings);
        End(tunnel, corners[^1], key.Item(tunnel.Path.Count - 1), box, findings);
    }

    private static void Groove(AxisTunnel tunnel, int index, Size3 box, DiagnosticBag findings)
    {
        foreach ((Axis axis, double at, double edge) in (ReadOnlySpan<(Axis, double, double)>)
            [(Axis.X, tunnel.At.X, box.X), (Axis.Y, tunnel.At.Y, box.Y), (Axis.Z, tunnel.At.Z, box.Z)])
        {
            if (axis == tunnel.Along || (at >= 0.0 && at <= edge)) { continue; }
            string name = axis.ToString().ToLowerInvariant();
            findings.Add(ShapeFindings.TunnelIsGroove.At(
                $"the centre line of the tunnel \"{tunnel.Name}\" runs outside the outer box, at {name} {UnitKeys.Millimetres(at)} of 0 to {UnitKeys.Millimetres(edge)}: it cuts a groove into the face",
                "bring it into the box, unless a groove is meant; coordinates run from its lower corner",
                UnitKeys.Tunnel(index).Key("at")));
        }
    }

    private static void End(PathTunnel tunnel, Point3 end, KeyPath key, Size3 box, DiagnosticBag findings)
    {
        if (TunnelParts.Leaves(end, box)) { return; }
        findings.Add(ShapeFindings.TunnelEndsInside.At(
            $"the tunnel \"{tunnel.Name}\" ends inside the unit at [{UnitKeys.Millimetres(end.X)}, {UnitKeys.Millimetres(end.Y)}, {UnitKeys.Millimetres(end.Z)}]",
            "move the end to a face of the outer box or beyond, or describe a blind hollow as a cavity",
            key) with
        { Where = end });
    }

    private static void Opening(ReefUnit unit, ReefShape shape, int index, bool open, DiagnosticBag findings)
    {
        ShapeOpening opening = shape.Named[index];
        if (opening.Parts == 0 || opening.Hollow >= 0) { return; }
        bool touches = false;
        for (int part = opening.FirstPart; part < opening.FirstPart + opening.Parts && !touches; part++)
        {
            touches = OpeningGaps.Overlaps(shape.Openings, part, shape.Box);
        }
        if (opening.Tunnel >= 0)
        {
            if (touches)
            {
                if (unit.Tunnels[opening.Tunnel] is AxisTunnel axis) { Groove(axis, opening.Tunnel, shape.Box, findings); }
                return;
            }
            string where = unit.Tunnels[opening.Tunnel] is AxisTunnel ? "at" : "path";
            findings.Add(ShapeFindings.TunnelMisses.At(
                $"the tunnel \"{opening.Name}\" passes beside the outer box",
                "bring its centre line into the box; coordinates run from its lower corner",
                UnitKeys.Tunnel(opening.Tunnel).Key(where)));
            return;
        }
        KeyPath key = UnitKeys.Cavity(opening.Cavity).Key(UnitKeys.Kind(unit.Cavities[opening.Cavity]));
        if (!touches)
        {
            findings.Add(ShapeFindings.CavityOutside.At(
                $"the cavity \"{opening.Name}\" lies outside the outer box",
                "bring its centre into the box or onto a face; coordinates run from its lower corner",
                key.Key("centre")));
        }
        else if (!open)
        {
            findings.Add(ShapeFindings.CavityClosed.At(
                $"the cavity \"{opening.Name}\" opens nowhere: it keeps its loose mix",
                "move it to a face or let a tunnel cut it, or accept that the loose mix stays",
                key.Key("centre")));
        }
    }

    // Openings that meet share their way out. Spread from those that break a face until nothing changes.
    private static bool[] Open(ReefShape shape, OpeningGaps gaps)
    {
        bool[] open = new bool[shape.Named.Count];
        Queue<int> next = new();
        for (int i = 0; i < open.Length; i++)
        {
            open[i] = gaps.IsOpen(i);
            if (open[i]) { next.Enqueue(i); }
        }
        while (next.TryDequeue(out int from))
        {
            for (int i = 0; i < open.Length; i++)
            {
                if (open[i] || gaps.Between(from, i).Gap >= OpeningGaps.Meeting) { continue; }
                open[i] = true;
                next.Enqueue(i);
            }
        }
        return open;
    }

    private static void Keep(ReefUnit unit, ReefShape shape, int index, DiagnosticBag findings)
    {
        KeepZone zone = unit.Keep[index];
        if (!OpeningGaps.Overlaps(shape.Keep, index, shape.Box))
        {
            findings.Add(ShapeFindings.KeepOutside.At(
                $"the keep zone \"{zone.Name}\" lies outside the outer box and keeps nothing",
                "bring it into the box; coordinates run from its lower corner",
                UnitKeys.Keep(index).Key(UnitKeys.Form(zone.Form)).Key("centre")));
            return;
        }
        for (int i = 0; i < unit.Tunnels.Count; i++)
        {
            if (Blocked(CentreLine(unit.Tunnels[i], shape.Box), shape, index) is not Point3 place) { continue; }
            findings.Add(ShapeFindings.KeepBlocksTunnel.At(
                $"the keep zone \"{zone.Name}\" lies across the tunnel \"{unit.Tunnels[i].Name}\"",
                "move one of them, or make the keep zone smaller",
                UnitKeys.Keep(index)) with
            {
                Where = place,
                Related = [new RelatedPlace(null, UnitKeys.Tunnel(i), "the tunnel")],
            });
        }
    }

    private static IReadOnlyList<Point3> CentreLine(Tunnel tunnel, Size3 box)
    {
        if (tunnel is PathTunnel path) { return TunnelParts.Corners(path.Path); }
        AxisTunnel axis = (AxisTunnel)tunnel;
        return axis.Along switch
        {
            Axis.X => [axis.At with { X = 0.0 }, axis.At with { X = box.X }],
            Axis.Y => [axis.At with { Y = 0.0 }, axis.At with { Y = box.Y }],
            _ => [axis.At with { Z = 0.0 }, axis.At with { Z = box.Z }],
        };
    }

    private static Point3? Blocked(IReadOnlyList<Point3> line, ReefShape shape, int zone)
    {
        const int Steps = 200;
        for (int i = 0; i + 1 < line.Count; i++)
        {
            for (int step = 0; step <= Steps; step++)
            {
                Point3 p = line[i] + (line[i + 1] - line[i]) * ((double)step / Steps);
                if (shape.Body.Plain(p.X, p.Y, p.Z) < 0.0 && shape.Keep.Distance(zone, p.X, p.Y, p.Z) < 0.0) { return p; }
            }
        }
        return null;
    }
}
