using System.Globalization;
using Dewstone.Model.Results;

namespace Dewstone.Compute.Dosing;

/// <summary>Writes down every solve and tells of the least misfit so far on the cells in use.</summary>
/// <param name="expectedSolves">Solves that are planned.</param>
/// <param name="progress">Told after each solve; may be null.</param>
internal sealed class DoseHistory(int expectedSolves, IProgress<Progress>? progress)
{
    private readonly List<DoseStep> steps = [];
    private double least = double.PositiveInfinity;

    /// <summary>The solves so far.</summary>
    public IReadOnlyList<DoseStep> Steps => steps;

    /// <summary>Adds a solve.</summary>
    /// <param name="cellsPerPitch">Cells a pitch.</param>
    /// <param name="objective">Objective, litres.</param>
    /// <param name="plan">Doses judged.</param>
    /// <param name="kind">What was tried.</param>
    public void Add(int cellsPerPitch, double objective, DosePlan plan, DoseStepKind kind)
    {
        bool sameCells = steps.Count > 0 && steps[^1].CellsPerPitch == cellsPerPitch;
        least = sameCells ? Math.Min(least, objective) : objective;
        steps.Add(new DoseStep(steps.Count + 1, cellsPerPitch, objective, plan.TotalCentiMillilitres / 100.0, kind));
        string detail = string.Create(CultureInfo.InvariantCulture, $"misfit {least:0.0} L at {cellsPerPitch} cells a voxel");
        progress?.Report(new Progress("dosing", Math.Min(1.0, (double)steps.Count / expectedSolves), detail));
    }
}
