using Dewstone.Compute.Sequencing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Weighs how much of a wanted solid lies under blocked and limited needles, wherever in the bin it stands.</summary>
/// <remarks>
/// Wanted solid in the voxel of a blocked needle, times 1 - <see cref="NeighboursCover"/> x (mean wanted share of the four voxels beside it that have a
/// sound needle): their water wins back most of a voxel inside a thick solid, and little of one in a thin wall or beside another blocked needle. The voxel of a
/// limited needle counts <see cref="LimitedShare"/>; one too little wanted to get water counts nothing. The shares are of our own choice; the first follows what the correction wins back around one dead
/// column of the cube (the contributors' guide); no source.
/// </remarks>
internal sealed class BlockedNeedles
{
    /// <summary>Share of a blocked voxel that four full neighbours win back, 1.</summary>
    public const double NeighboursCover = 0.6;

    /// <summary>Weight of the voxel of a limited needle against that of a blocked one, 1.</summary>
    public const double LimitedShare = 0.05;

    private const double LitresPerCubicMetre = 1000.0;

    private readonly NeedleCondition[] conditions;
    private readonly Raster raster;
    private readonly List<(int Column, int Row)> faulty = [];

    /// <summary>The needles over a printer's bin.</summary>
    /// <param name="job">Printer and needles.</param>
    /// <param name="window">Any lattice in its bin.</param>
    public BlockedNeedles(JobDescription job, Lattice window)
    {
        raster = Raster.Over(job.Printer);
        Lattice bin = window with { Columns = raster.Columns, Rows = raster.Rows, FirstColumn = 0, FirstRow = 0 };
        HeadNeedles needles = HeadNeedles.Of(job.Printer, job.Needles);
        Stations stations = Stations.Over(job.Printer);
        conditions = new NeedleCondition[raster.Columns * raster.Rows];
        for (int i = 0; i < conditions.Length; i++)
        {
            StationSeat seat = stations.Seat(bin, i % raster.Columns, i / raster.Columns);
            conditions[i] = needles.State(seat.Column, seat.Row)?.Condition ?? NeedleCondition.Ok;
            if (conditions[i] != NeedleCondition.Ok)
            {
                faulty.Add((i % raster.Columns, i / raster.Columns));
            }
        }
    }

    /// <summary>Whether every needle is sound.</summary>
    public bool AllSound => faulty.Count == 0;

    /// <summary>Weighs a place.</summary>
    /// <param name="lattice">Needle positions over the unit.</param>
    /// <param name="fractions">Wanted share of each voxel.</param>
    /// <param name="columns">Whole pitches that the unit is moved from there along x.</param>
    /// <param name="rows">The same along y.</param>
    /// <returns>Litres of wanted solid that may be lost.</returns>
    public double Weigh(Lattice lattice, double[] fractions, int columns, int rows)
    {
        double voxels = 0.0;
        foreach ((int column, int row) in faulty)
        {
            int i = column - lattice.FirstColumn - columns, j = row - lattice.FirstRow - rows;
            if (i < 0 || j < 0 || i >= lattice.Columns || j >= lattice.Rows)
            {
                continue;
            }

            bool limited = ConditionAt(column, row) == NeedleCondition.Limited;
            for (int k = 0; k < lattice.Layers; k++)
            {
                double share = fractions[lattice.Index(i, j, k)];
                voxels += share < PlainDoser.FractionCut ? 0.0 : limited ? LimitedShare * share : share * (1.0 - NeighboursCover * Beside(i, j, k) / 4.0);
            }
        }

        return voxels * VoxelLitres(lattice);

        double Beside(int i, int j, int k) => Sound(i - 1, j, k) + Sound(i + 1, j, k) + Sound(i, j - 1, k) + Sound(i, j + 1, k);

        double Sound(int i, int j, int k) =>
            i >= 0 && j >= 0 && i < lattice.Columns && j < lattice.Rows
            && ConditionAt(lattice.FirstColumn + columns + i, lattice.FirstRow + rows + j) != NeedleCondition.Blocked
                ? fractions[lattice.Index(i, j, k)]
                : 0.0;
    }

    /// <summary>Counts the solid under blocked needles.</summary>
    /// <param name="lattice">Needle positions over the unit.</param>
    /// <param name="fractions">Wanted share of each voxel.</param>
    /// <returns>Needles, litres and share.</returns>
    public BlockedSolid Count(Lattice lattice, double[] fractions)
    {
        var over = new HashSet<int>();
        double voxels = 0.0, all = 0.0;
        for (int i = 0; i < fractions.Length; i++)
        {
            int column = lattice.FirstColumn + i % lattice.Columns, row = lattice.FirstRow + i / lattice.Columns % lattice.Rows;
            all += fractions[i];
            if (fractions[i] >= PlainDoser.FractionCut && ConditionAt(column, row) == NeedleCondition.Blocked)
            {
                voxels += fractions[i];
                over.Add(row * raster.Columns + column);
            }
        }

        return new BlockedSolid(over.Count, voxels * VoxelLitres(lattice), all > 0.0 ? voxels / all : 0.0);
    }

    private static double VoxelLitres(Lattice lattice) => lattice.PitchMetres * lattice.PitchMetres * lattice.LayerMetres * LitresPerCubicMetre;

    private NeedleCondition ConditionAt(int column, int row) =>
        column < 0 || row < 0 || column >= raster.Columns || row >= raster.Rows ? NeedleCondition.Ok : conditions[row * raster.Columns + column];
}
