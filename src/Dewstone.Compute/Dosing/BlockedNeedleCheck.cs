using System.Globalization;
using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Diagnostics;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Says what the blocked needles still cost once their neighbours have taken over what they can: how much stays loose, and where.</summary>
public static class BlockedNeedleCheck
{
    private const int NeedlesNamed = 4;
    private const double LitresPerCubicMetre = 1000.0;

    /// <summary>Loss below which a needle is not worth a word, litres.</summary>
    private const double LeastLitres = 0.05;

    /// <summary>Measures the voxels of blocked needles on the predicted solid.</summary>
    /// <param name="job">Printer and needles.</param>
    /// <param name="shape">Wanted solid; names what is near.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="target">Wanted solid on the cells.</param>
    /// <param name="moisture">What hardens, on the same cells.</param>
    /// <returns>DW3015 when wanted solid in the voxels of blocked needles stays loose; empty otherwise.</returns>
    public static IReadOnlyList<Diagnostic> Check(
        JobDescription job, ReefShape shape, UnitPlacement placement, Lattice lattice, TargetField target, MoistureResult moisture)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(placement);
        ArgumentNullException.ThrowIfNull(lattice);
        ArgumentNullException.ThrowIfNull(target);
        ArgumentNullException.ThrowIfNull(moisture);
        DoseRounder rounder = new(job, lattice);
        Dictionary<(int Column, int Row), Loss> losses = [];
        for (int k = 0; k < lattice.Layers; k++)
        {
            for (int j = 0; j < lattice.Rows; j++)
            {
                for (int i = 0; i < lattice.Columns; i++)
                {
                    int index = lattice.Index(i, j, k);
                    if (rounder.IsBlocked(index) && VoxelFractions.HasVoxel(lattice, i, j, k))
                    {
                        (double wanted, double loose) = Voxel(lattice, target, moisture, i, j, k);
                        (int Column, int Row) needle = rounder.Needle(index);
                        losses[needle] = losses.GetValueOrDefault(needle, Loss.None).With(wanted, loose, lattice.Tip(i, j, k));
                    }
                }
            }
        }

        (int Column, int Row, Loss Loss)[] named =
        [
            .. losses.Where(n => n.Value.LooseLitres >= LeastLitres).OrderByDescending(n => n.Value.LooseLitres).ThenBy(n => n.Key.Row).ThenBy(n => n.Key.Column)
                .Select(n => (n.Key.Column, n.Key.Row, n.Value)),
        ];
        if (named.Length == 0)
        {
            return [];
        }

        string each = string.Join("; ", named.Take(NeedlesNamed).Select(n => Text(n.Column, n.Row, n.Loss, placement.ToUnit(n.Loss.Where), shape)));
        string rest = named.Length > NeedlesNamed ? $"; and {named.Length - NeedlesNamed} more needles" : "";
        return
        [
            WettingFindings.BlockedNeedleLoss.At(
                string.Create(CultureInfo.InvariantCulture, $"{named.Sum(n => n.Loss.LooseLitres):0.00} L of wanted solid at blocked needles stay loose though their neighbours give more: {each}{rest}"),
                "clear and calibrate the needles, or leave `place` free so that the unit can be turned or moved away from them",
                new KeyPath(DescriptionKind.Printer, "needles")) with
            { Where = placement.ToUnit(named[0].Loss.Where) },
        ];
    }

    private static string Text(int column, int row, Loss loss, Point3 at, ReefShape shape) => string.Create(
        CultureInfo.InvariantCulture,
        $"{column},{row} leaves {loss.LooseLitres:0.00} of {loss.WantedLitres:0.0} L, most at x {at.X * 1000.0:0}, y {at.Y * 1000.0:0}, z {at.Z * 1000.0:0} mm {Nearby(at, shape)}");

    // Openings first: a wall is known by what it stands beside.
    private static string Nearby(Point3 at, ReefShape shape)
    {
        (double distance, string name) = (double.PositiveInfinity, "");
        for (int n = 0; n < shape.Named.Count; n++)
        {
            ShapeOpening opening = shape.Named[n];
            double away = shape.OpeningDistance(n, at);
            if (away < distance)
            {
                distance = away;
                name = $"{(opening.Tunnel >= 0 ? "tunnel" : opening.Hollow >= 0 ? $"hollow {opening.Hollow + 1} of" : "cavity")} `{opening.Name}`";
            }
        }

        Size3 box = shape.Box;
        (double Distance, string Name)[] faces =
        [
            (at.X, "west face"), (box.X - at.X, "east face"), (at.Y, "south face"), (box.Y - at.Y, "north face"), (at.Z, "bottom"), (box.Z - at.Z, "top"),
        ];
        (double toFace, string face) = faces.MinBy(f => f.Distance);
        (string what, double near) = distance < toFace ? (name, distance) : ($"the {face}", toFace);
        return string.Create(CultureInfo.InvariantCulture, $"({Math.Max(0.0, near) * 1000.0:0} mm from {what})");
    }

    private static (double WantedLitres, double LooseLitres) Voxel(Lattice lattice, TargetField target, MoistureResult moisture, int i, int j, int k)
    {
        CellGrid grid = target.Grid;
        int half = lattice.IsShifted(k) ? grid.CellsPerPitch / 2 : 0;
        int x0 = i * grid.CellsPerPitch + half, y0 = j * grid.CellsPerPitch + half;
        double wanted = 0.0, loose = 0.0;
        for (int z = k * grid.CellsPerLayer; z < (k + 1) * grid.CellsPerLayer; z++)
        {
            for (int y = y0; y < y0 + grid.CellsPerPitch; y++)
            {
                for (int x = x0; x < x0 + grid.CellsPerPitch; x++)
                {
                    int cell = (z * grid.Ny + y) * grid.Nx + x;
                    wanted += target.Fraction[cell];
                    loose += moisture.Hardened[cell] == 0 ? target.Fraction[cell] : 0.0;
                }
            }
        }

        return (wanted * grid.CellCubicMetres * LitresPerCubicMetre, loose * grid.CellCubicMetres * LitresPerCubicMetre);
    }

    private sealed record Loss(double WantedLitres, double LooseLitres, double MostLitres, Point3 Where)
    {
        public static Loss None { get; } = new(0.0, 0.0, 0.0, default);

        public Loss With(double wanted, double loose, Point3 tip) =>
            new(WantedLitres + wanted, LooseLitres + loose, Math.Max(MostLitres, loose), loose > MostLitres ? tip : Where);
    }
}
