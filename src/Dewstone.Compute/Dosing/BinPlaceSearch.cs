using Dewstone.Compute.Geometry;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Quantities;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// Finds the turn and the whole pitches at which the least of the wanted solid may be lost under blocked and limited needles. The wetting does not tell turns
/// apart, nor whole pitches: only the needles and the bin's walls do, so that nothing is wetted here.
/// </summary>
/// <remarks>
/// Tried in a fixed order, simplest first: fewer pitches before more, then fewer turns, moved along x before y, forth before back. What comes later is taken only when
/// it loses less by more than <see cref="LeastGainVoxels"/>. Without faulty needles the unit stays in the middle, at the first turn that fits.
/// </remarks>
internal static class BinPlaceSearch
{
    /// <summary>Gain below which two places count as equal, full voxels: a sliver is no reason to move a unit. Of our own choice.</summary>
    public const double LeastGainVoxels = 0.25;

    /// <summary>Cells a pitch on which the solid under the needles is counted.</summary>
    public const int Cells = 2;

    /// <summary>Searches.</summary>
    /// <param name="job">Unit, printer and needles.</param>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>The place, turn, shift and layers all set; null when the unit fits nowhere.</returns>
    public static PlacementWish? Find(JobDescription job, ReefShape shape, Parallelism parallelism, CancellationToken cancellation)
    {
        PlacementWish? best = null;
        double least = double.PositiveInfinity;
        BlockedNeedles? needles = null;
        foreach ((PlacementWish wish, Standing at, int columns, int rows) in Places(job))
        {
            needles ??= new BlockedNeedles(job, at.Lattice);
            if (needles.AllSound)
            {
                return wish;
            }

            at.Fractions ??= Fractions(shape, at.Placement, at.Lattice, parallelism, cancellation);
            double litres = needles.Weigh(at.Lattice, at.Fractions, columns, rows);
            double gain = LeastGainVoxels * at.Lattice.PitchMetres * at.Lattice.PitchMetres * at.Lattice.LayerMetres * 1000.0;
            if (litres < least - gain)
            {
                (best, least) = (wish, litres);
            }
        }

        return best;
    }

    /// <summary>Wanted share of each voxel, on coarse cells.</summary>
    /// <param name="shape">Wanted solid.</param>
    /// <param name="placement">Where it stands.</param>
    /// <param name="lattice">Needle positions.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>Shares 0 to 1; index order of the lattice.</returns>
    public static double[] Fractions(ReefShape shape, UnitPlacement placement, Lattice lattice, Parallelism parallelism, CancellationToken cancellation) =>
        VoxelFractions.Average(lattice, Voxelizer.Voxelize(shape, placement, CellGrid.Over(lattice, Cells), parallelism, null, cancellation));

    // Every place that fits, in the order in which they are preferred.
    private static IEnumerable<(PlacementWish Wish, Standing At, int Columns, int Rows)> Places(JobDescription job)
    {
        PlacementWish asked = job.Unit.Place;
        var all = new List<(PlacementWish Wish, Standing At, int Columns, int Rows)>();
        foreach (int turn in asked.QuarterTurns is { } turned ? [turned] : (int[])[0, 1, 2, 3])
        {
            PlacementWish middle = new() { QuarterTurns = turn, Shift = asked.Shift ?? default(Point3), ShiftedLayers = asked.ShiftedLayers ?? false };
            if (Placer.Place(job, Cells, middle) is not { Placement: { } placement, Lattice: { } lattice })
            {
                continue;
            }

            Standing at = new(placement, lattice);
            double pitch = lattice.PitchMetres;
            int across = asked.Shift is null ? (int)(lattice.BinXMetres / pitch) : 0, deep = asked.Shift is null ? (int)(lattice.BinYMetres / pitch) : 0;
            int[] columns = [.. Enumerable.Range(-across, 2 * across + 1).Where(n => Fits(n, 0))];
            int[] rows = [.. Enumerable.Range(-deep, 2 * deep + 1).Where(n => Fits(0, n))];
            all.AddRange(
                from column in columns
                from row in rows
                select (middle with { Shift = middle.Shift + new Point3(column * pitch, row * pitch, 0.0) }, at, column, row));

            bool Fits(int column, int row) =>
                Placer.Place(job, Cells, middle with { Shift = middle.Shift + new Point3(column * pitch, row * pitch, 0.0) }).Lattice is not null;
        }

        return all.OrderBy(p => Math.Abs(p.Columns) + Math.Abs(p.Rows)).ThenBy(p => p.Wish.QuarterTurns).ThenBy(p => Math.Abs(p.Rows))
            .ThenByDescending(p => p.Columns).ThenByDescending(p => p.Rows);
    }

    private sealed class Standing(UnitPlacement placement, Lattice lattice)
    {
        public UnitPlacement Placement => placement;

        public Lattice Lattice => lattice;

        public double[]? Fractions { get; set; }
    }
}
