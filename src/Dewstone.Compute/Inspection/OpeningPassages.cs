using Dewstone.Compute.Geometry;
using Dewstone.Compute.Numerics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Inspection;

/// <summary>Clear opening of every tunnel and of the way into every cavity, in the wanted and in the hardened solid.</summary>
/// <remarks>
/// A ball keeps its centre in the opening as described. Through a tunnel it goes from the mouth at one end (all of the opening outside the box less one
/// cell) to that at the other; into a cavity from its mouth (outside the box, or in a tunnel or formed cavity that it meets) to its innermost cells.
/// </remarks>
internal sealed class OpeningPassages(ReefShape shape, UnitPlacement placement, SolidField wanted)
{
    /// <summary>Share of the greatest depth from which a cell is one of the innermost.</summary>
    private const float CoreShare = 0.75f;

    private readonly CellGrid grid = wanted.Grid;

    /// <summary>Measures all openings.</summary>
    /// <param name="hardened">The hardened solid, on the cells of the wanted one.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <returns>One an opening, in the shape's order.</returns>
    public OpeningPassage[] Measure(SolidField hardened, Parallelism parallelism)
    {
        var found = new OpeningPassage[shape.Named.Count];
        Chunks.Run(found.Length, 1, parallelism, (first, end) =>
        {
            for (int opening = first; opening < end; opening++)
            {
                found[opening] = Way(opening).Through(hardened);
            }
        });
        return found;
    }

    /// <summary>The way through an opening as drawn, ready to be measured in any hardened solid.</summary>
    /// <param name="opening">Index among the shape's openings.</param>
    /// <returns>The way.</returns>
    public OpeningWay Way(int opening)
    {
        ShapeOpening named = shape.Named[opening];
        bool isTunnel = named.Tunnel >= 0;
        ClearOpening clear = new()
        {
            Name = named.Name,
            Key = UnitKeys.Of(named),
            IsTunnel = isTunnel,
            Hollow = named.Hollow,
            WantedMetres = 0.0,
            PredictedMetres = 0.0,
        };
        if (RegionCells.Of(new OpeningRegion(shape, opening), placement, grid) is not { } cells)
        {
            return new OpeningWay(placement, new OpeningPassage(clear, 0, default, default, 0.0));
        }

        byte[] mouths = Mouths(opening, cells, isTunnel);
        ComponentMap pieces = Components.Label(mouths, cells.Window, Phase.Set, Connectivity.FacesEdgesCorners, new Parallelism(1));
        byte[] regions = isTunnel ? Ends(cells, mouths, pieces) : WithCore(cells, mouths);
        Passage? drawn = ClearWidth.Measure(cells, regions, wanted);
        clear = clear with
        {
            WantedMetres = drawn?.Width ?? 0.0,
            Narrowest = drawn is { } narrow ? UnitPoint(cells, narrow.NarrowestCell) : null,
        };
        OpeningPassage passage = new(
            clear, pieces.Pieces.Count, Mean(cells, mouths, 1), Mean(cells, regions, PercolatingWidth.To), double.PositiveInfinity);
        return new OpeningWay(placement, passage, cells, regions);
    }

    // 1 in the cells of the opening's mouths.
    private byte[] Mouths(int opening, RegionCells cells, bool isTunnel)
    {
        var mouths = new byte[cells.Depths.Length];
        for (int cell = 0; cell < mouths.Length; cell++)
        {
            if (cells.Depths[cell] > 0f)
            {
                Point3 point = UnitPoint(cells, cell);
                mouths[cell] = !IsInside(point) || (!isTunnel && MeetsAnother(opening, point)) ? (byte)1 : (byte)0;
            }
        }

        return mouths;
    }

    // Hollows of a scatter keep their gap to all others.
    private bool MeetsAnother(int opening, Point3 point)
    {
        for (int other = 0; other < shape.Named.Count; other++)
        {
            if (other != opening && shape.Named[other].Hollow < 0 && shape.OpeningDistance(other, point) < 0.0)
            {
                return true;
            }
        }

        return false;
    }

    private static byte[] WithCore(RegionCells cells, byte[] mouths)
    {
        float deepest = 0f;
        for (int cell = 0; cell < mouths.Length; cell++)
        {
            deepest = mouths[cell] == 0 ? Math.Max(deepest, cells.Depths[cell]) : deepest;
        }

        var regions = new byte[mouths.Length];
        for (int cell = 0; cell < mouths.Length; cell++)
        {
            bool core = mouths[cell] == 0 && deepest > 0f && cells.Depths[cell] >= CoreShare * deepest;
            regions[cell] = mouths[cell] != 0 ? PercolatingWidth.From : core ? PercolatingWidth.To : (byte)0;
        }

        return regions;
    }

    // A mouth that hangs together is one end, however wide; where both run into one along a face, a cell belongs to the end it is nearer to.
    private byte[] Ends(RegionCells cells, byte[] mouths, ComponentMap pieces)
    {
        var regions = new byte[mouths.Length];
        int start = Array.IndexOf(mouths, (byte)1);
        if (start < 0)
        {
            return regions;
        }

        Point3 from = UnitPoint(cells, start), to = from;
        for (int cell = start; cell < mouths.Length; cell++)
        {
            Point3 point = mouths[cell] != 0 ? UnitPoint(cells, cell) : from;
            to = (point - from).Norm > (to - from).Norm ? point : to;
        }

        for (int cell = start; cell < mouths.Length; cell++)
        {
            if (mouths[cell] != 0)
            {
                Point3 point = UnitPoint(cells, cell);
                bool first = pieces.Pieces.Count > 1 ? pieces.Labels[cell] == pieces.Labels[start] : (point - from).Norm <= (point - to).Norm;
                regions[cell] = first ? PercolatingWidth.From : PercolatingWidth.To;
            }
        }

        return regions;
    }

    private Point3 Mean(RegionCells cells, byte[] marks, byte mark)
    {
        Point3 sum = default;
        int count = 0;
        for (int cell = 0; cell < marks.Length; cell++)
        {
            if (marks[cell] == mark)
            {
                sum += UnitPoint(cells, cell);
                count++;
            }
        }

        return count == 0 ? default : sum * (1.0 / count);
    }

    private bool IsInside(Point3 p)
    {
        double level = grid.CellMetres, upright = grid.CellHeightMetres;
        return p.X >= level && p.Y >= level && p.Z >= upright
            && p.X <= shape.Box.X - level && p.Y <= shape.Box.Y - level && p.Z <= shape.Box.Z - upright;
    }

    private Point3 UnitPoint(RegionCells cells, int cell) => placement.ToUnit(cells.Centre(grid, cell));
}
