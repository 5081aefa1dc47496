using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Wetting;

/// <summary>One job to wet: positions, cells, doses, the machine's times and the bed.</summary>
public sealed record WettingProblem
{
    /// <summary>The needle positions.</summary>
    public required Lattice Lattice { get; init; }

    /// <summary>The cells over the lattice, from <see cref="CellGrid.Over"/>.</summary>
    public required CellGrid Grid { get; init; }

    /// <summary>Dose of every position, m3; 0 for none. Index order of the lattice.</summary>
    public required double[] DosesCubicMetres { get; init; }

    /// <summary>When layers are spread and doses run.</summary>
    public required DoseSchedule Schedule { get; init; }

    /// <summary>The loose mix.</summary>
    public required BedProperties Bed { get; init; }

    /// <summary>The problem of a dose plan as rounded in its tables.</summary>
    /// <param name="plan">Doses.</param>
    /// <param name="grid">Cells over the plan's lattice.</param>
    /// <param name="schedule">The machine's times for these doses.</param>
    /// <param name="bed">The loose mix.</param>
    /// <returns>The problem.</returns>
    public static WettingProblem Of(DosePlan plan, CellGrid grid, DoseSchedule schedule, BedProperties bed)
    {
        ArgumentNullException.ThrowIfNull(plan);
        double[] doses = new double[plan.CentiMillilitres.Length];
        for (int i = 0; i < doses.Length; i++)
        {
            doses[i] = plan.CentiMillilitres[i] / 1e8;
        }

        return new WettingProblem { Lattice = plan.Lattice, Grid = grid, DosesCubicMetres = doses, Schedule = schedule, Bed = bed };
    }
}
