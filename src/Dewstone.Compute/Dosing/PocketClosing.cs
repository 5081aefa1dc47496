using Dewstone.Compute.Wetting;
using Dewstone.Model.Description;
using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>
/// The least dose that leaves no dry pocket at the corners between needles, where every voxel around gets the same dose. Water reaches a corner
/// last; below this dose the front stops short of it and loose mix stays inside the solid.
/// </summary>
/// <remarks>
/// Wets a column of one voxel by <see cref="Layers"/> layers between mirror walls with the real law, window and layer period, and looks at its
/// inner layers: with equal doses all around, the walls of a voxel are planes of symmetry. Found by halving between nothing and full pores.
/// </remarks>
public static class PocketClosing
{
    /// <summary>Layers of the column; the lowest and the top one are not judged.</summary>
    public const int Layers = 5;

    private const int CellsPerPitch = 8;
    private const double ToleranceMillilitres = 0.05;

    /// <summary>Finds the dose.</summary>
    /// <param name="job">Mix, printer and tonight.</param>
    /// <param name="lattice">Gives pitch, layer height and tip depth.</param>
    /// <returns>The dose in mL, above the true one by at most 0.05 mL; at the most the pores of a voxel, which leave no pocket.</returns>
    public static double Millilitres(JobDescription job, Lattice lattice)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(lattice);
        BedProperties bed = BedProperties.From(job.Mix, job.LooseDensity, job.BedTemperature);
        Lattice column = Column(lattice);
        double open = 0.0, closed = bed.Porosity * lattice.PitchMetres * lattice.PitchMetres * lattice.LayerMetres * 1e6;
        while (closed - open > ToleranceMillilitres)
        {
            double middle = (open + closed) / 2.0;
            if (Closes(job, column, bed, middle))
            {
                closed = middle;
            }
            else
            {
                open = middle;
            }
        }

        return closed;
    }

    private static bool Closes(JobDescription job, Lattice column, BedProperties bed, double millilitres)
    {
        double pump = millilitres / job.Printer.Needle.Flow.MillilitresPerSecond;
        MachineTiming timing = job.Printer.Timing;
        double toDose = timing.Spreading.Seconds + timing.Move.Seconds + timing.Plunge.Seconds;
        double period = toDose + pump + timing.Hold.Seconds + timing.Withdraw.Seconds;
        WettingProblem problem = new()
        {
            Lattice = column,
            Grid = CellGrid.Over(column, CellsPerPitch),
            DosesCubicMetres = [.. Enumerable.Repeat(millilitres / 1e6, Layers)],
            Schedule = new DoseSchedule
            {
                LayerSpreadSeconds = [.. Enumerable.Range(0, Layers).Select(k => k * period + timing.Spreading.Seconds)],
                DoseStartSeconds = [.. Enumerable.Range(0, Layers).Select(k => k * period + toDose)],
                PumpSeconds = [.. Enumerable.Repeat(pump, Layers)],
            },
            Bed = bed,
        };
        MoistureResult moisture = WettingSolver.Solve(problem, new Parallelism(1), progress: null, CancellationToken.None);
        int layer = moisture.Hardened.Length / Layers;
        return !moisture.Hardened.AsSpan(layer, layer * (Layers - 2)).Contains((byte)0);
    }

    private static Lattice Column(Lattice lattice) => lattice with
    {
        Columns = 1,
        Rows = 1,
        Layers = Layers,
        FirstColumn = 0,
        FirstRow = 0,
        OriginXMetres = lattice.PitchMetres / 2.0,
        OriginYMetres = lattice.PitchMetres / 2.0,
        BinXMetres = lattice.PitchMetres,
        BinYMetres = lattice.PitchMetres,
        UnderLayers = 0,
        ShiftedLayers = false,
    };
}
