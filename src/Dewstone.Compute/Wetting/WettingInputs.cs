using Dewstone.Model.Lattices;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Wetting;

/// <summary>Refuses a problem that no caller should build; what a user can get wrong is found before this.</summary>
internal static class WettingInputs
{
    /// <summary>Throws at the first fault.</summary>
    /// <param name="problem">The problem.</param>
    /// <exception cref="ArgumentException">What is wrong, with the position and the value.</exception>
    public static void Demand(WettingProblem problem)
    {
        Lattice lattice = problem.Lattice;
        DoseSchedule schedule = problem.Schedule;
        CellGrid grid = problem.Grid;
        Demand(grid.Nx == lattice.Columns * grid.CellsPerPitch && grid.Ny == lattice.Rows * grid.CellsPerPitch
            && grid.Nz == lattice.Layers * grid.CellsPerLayer, "The grid is not one over the lattice.");
        Demand(problem.DosesCubicMetres.Length == lattice.Count && schedule.DoseStartSeconds.Length == lattice.Count
            && schedule.PumpSeconds.Length == lattice.Count, $"Doses and their times must have {lattice.Count} entries, one a position.");
        Demand(schedule.LayerSpreadSeconds.Length == lattice.Layers, $"Spreading times must have {lattice.Layers} entries, one a layer.");
        Demand(problem.Bed.WindowSeconds > 0.0 && double.IsFinite(problem.Bed.WindowSeconds), "The window must be above 0 s.");
        Demand(!lattice.ShiftedLayers || grid.CellsPerPitch % 2 == 0, "Shifted layers need an even number of cells a pitch.");
        for (int k = 0; k < lattice.Layers; k++)
        {
            double spread = schedule.LayerSpreadSeconds[k];
            double before = k == 0 ? double.NegativeInfinity : schedule.LayerSpreadSeconds[k - 1];
            Demand(spread >= before && double.IsFinite(spread), $"Layer {k + 1} is spread at {spread} s, before the layer below.");
            DemandLayer(problem, k, spread, k + 1 < lattice.Layers ? schedule.LayerSpreadSeconds[k + 1] : double.PositiveInfinity);
        }
    }

    private static void DemandLayer(WettingProblem problem, int k, double spread, double nextSpread)
    {
        Lattice lattice = problem.Lattice;
        for (int j = 0; j < lattice.Rows; j++)
        {
            for (int i = 0; i < lattice.Columns; i++)
            {
                int index = lattice.Index(i, j, k);
                double dose = problem.DosesCubicMetres[index];
                if (dose == 0.0)
                {
                    continue;
                }

                double start = problem.Schedule.DoseStartSeconds[index];
                double pump = problem.Schedule.PumpSeconds[index];
                string place = $"position {i + 1}, {j + 1} of layer {k + 1}";
                Demand(dose > 0.0 && double.IsFinite(dose), $"The dose at {place} is {dose} m3.");
                Demand(pump >= 0.0 && double.IsFinite(pump), $"The pump time at {place} is {pump} s.");
                Demand(start >= spread, $"The dose at {place} starts at {start} s, before its layer lies spread at {spread} s.");
                Demand(start <= nextSpread || nextSpread == spread, $"The dose at {place} starts at {start} s, after the next layer was spread.");
                Demand(!lattice.IsShifted(k) || (i < lattice.Columns - 1 && j < lattice.Rows - 1), $"The voxel at {place} reaches over the window.");
            }
        }
    }

    // What fails is always some member of the one argument of the solver.
    private static void Demand(bool isMet, string message, string problem = "problem")
    {
        if (!isMet)
        {
            throw new ArgumentException(message, nameof(problem));
        }
    }
}
