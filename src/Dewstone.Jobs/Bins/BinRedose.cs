using Dewstone.Compute.Dosing;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Jobs.Bins;

/// <summary>Finds doses anew for the units of a bin that would not come out as designed.</summary>
internal static class BinRedose
{
    /// <summary>Finds them.</summary>
    /// <param name="frame">The bin.</param>
    /// <param name="units">All its units.</param>
    /// <param name="isOff">Which of them are off, in their order.</param>
    /// <param name="millilitres">Doses as solved, mL; index order of the lattice.</param>
    /// <param name="parallelism">Threads; no result depends on them.</param>
    /// <param name="progress">Told within; may be null.</param>
    /// <param name="cancellation">Looked at within.</param>
    /// <returns>Doses as rounded.</returns>
    public static DosePlan Solve(
        BinFrame frame, IReadOnlyList<StandingUnit> units, bool[] isOff, double[] millilitres, Parallelism parallelism, IProgress<Progress>? progress,
        CancellationToken cancellation)
    {
        Lattice lattice = frame.Lattice;
        bool[] theirs = new bool[lattice.Count];
        foreach (StandingUnit unit in units.Where((_, i) => isOff[i]))
        {
            foreach ((int column, int row, int layer, int _) in unit.Doses())
            {
                theirs[lattice.Index(column - lattice.FirstColumn, row - lattice.FirstRow, layer)] = true;
            }
        }

        CellGrid grid = CellGrid.Over(lattice, units[0].Placed.Solved.Cells.CellsPerPitch);
        (TargetField wanted, float[] weights) = Alone(frame.Description, grid, BinColumns.Of(grid, lattice, units), units, isOff, parallelism, cancellation);
        return BinDoseSolver.Solve(
            frame.Description, lattice, millilitres, BinDoseSolver.MayMove(frame.Description, lattice, theirs), wanted, weights, parallelism, progress, cancellation);
    }

    // What hardens when each unit that is off is printed alone, laid where it stands; the others weigh nothing.
    private static (TargetField Wanted, float[] Weights) Alone(
        JobDescription job, CellGrid grid, BinColumns columns, IReadOnlyList<StandingUnit> units, bool[] isOff, Parallelism parallelism,
        CancellationToken cancellation)
    {
        Dictionary<SolvedUnit, MoistureResult> alone = new(ReferenceEqualityComparer.Instance);
        foreach (SolvedUnit solved in units.Where((_, i) => isOff[i]).Select(unit => unit.Placed.Solved))
        {
            if (!alone.ContainsKey(solved))
            {
                alone.Add(solved, Wet(job, solved, parallelism, cancellation));
            }
        }

        MoistureResult?[] contents = [.. units.Select((unit, i) => isOff[i] ? alone[unit.Placed.Solved] : null)];
        float[] shares = new float[grid.Count], weights = new float[grid.Count];
        int plane = grid.Nx * grid.Ny;
        double sum = 0.0;
        for (int cell = 0; cell < shares.Length; cell++)
        {
            int column = cell % plane, z = cell / plane;
            if (contents[columns.Owner[column]] is { } moisture)
            {
                weights[cell] = 1f;
                shares[cell] = columns.Source[column] < 0 || z >= moisture.Grid.Nz
                    ? 0f
                    : BinDoseSolver.HardenedShare(
                        moisture.VolumetricWaterContent[z * moisture.Grid.Nx * moisture.Grid.Ny + columns.Source[column]], moisture.ThresholdContent);
                sum += shares[cell];
            }
        }

        return (new TargetField { Grid = grid, Fraction = shares, CubicMetres = sum * grid.CellCubicMetres }, weights);
    }

    private static MoistureResult Wet(JobDescription job, SolvedUnit solved, Parallelism parallelism, CancellationToken cancellation)
    {
        JobDescription ideal = job with { Printer = IdealHead.Of(job.Printer), Needles = null };
        DosePlan plan = new() { Lattice = solved.Lattice, Steps = solved.CentiMillilitres, CentiMillilitres = solved.CentiMillilitres };
        return new ForwardModel(ideal, solved.Lattice, parallelism).Wet(plan, solved.Cells, cancellation);
    }
}
